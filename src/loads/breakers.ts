import type { Run } from '../facts/result';
import type { Circuit, HomeRun, Job } from '../job/schema';
import { byId, compareText } from '../units/order';
import { type Id, isKnown, type U } from '../units/types';

/** One breaker of the new panel: one circuit, or the two circuits of a shared neutral under one common trip. */
export interface Breaker {
  /** The circuit's id; of a pair, the smaller one. */
  readonly id: Id;
  readonly circuits: readonly Circuit[];
  readonly poles: 1 | 2;
  readonly amps: U<number>;
  readonly afci: boolean;
  readonly gfci: boolean;
}

/** Circuits that need no breaker: nothing is connected. */
const isIdle = (c: Circuit): boolean => c.flags.includes('dead') || c.flags.includes('spare');

const hadGfci = (c: Circuit) => c.protection === 'GFCI' || c.protection === 'AFCI and GFCI';
const hadAfci = (c: Circuit) => c.protection === 'AFCI' || c.protection === 'AFCI and GFCI';

/** Cables that stay where they are land nothing in the new panel. */
export const landsHere = (homeRun: Pick<HomeRun, 'id'>, runs: readonly Run[]): boolean =>
  runs.find((r) => r.homeRun === homeRun.id)?.way !== 'stays on old panel';

/** A circuit of which every cable stays on an old panel keeps its breaker there. */
const staysBehind = (job: Job, circuit: Circuit, runs: readonly Run[]): boolean => {
  const cables = job.homeRuns.filter((h) => h.circuits.includes(circuit.id));
  return cables.length > 0 && cables.every((h) => !landsHere(h, runs));
};

/**
 * Breakers by circuit, sorted by id. Protection that was there is provided again; `afci` and `gfci` name the circuits
 * that gain it. With the chosen runs, only what the new panel feeds.
 */
export const breakersOf = (
  job: Job,
  afci: readonly Id[] = [],
  gfci: readonly Id[] = [],
  runs: readonly Run[] = [],
): Breaker[] => {
  const circuits = byId(job.circuits).filter((c) => !isIdle(c) && !staysBehind(job, c, runs));
  const [gainAfci, gainGfci] = [new Set(afci), new Set(gfci)];
  const pairs = circuits.flatMap((c): Circuit[][] => {
    const partner = c.partner === null ? undefined : circuits.find((other) => other.id === c.partner);
    if (!partner) return [[c]];
    return compareText(c.id, partner.id) < 0 ? [[c, partner]] : [];
  });
  return pairs.map((pair) => {
    const amps = pair.map((c) => c.amps);
    return {
      id: pair[0]!.id,
      circuits: pair,
      poles: pair.length === 2 ? 2 : pair[0]!.poles,
      // two legs of one cable: the smaller rating protects both
      amps: amps.every(isKnown) ? Math.min(...(amps as number[])) : 'unknown',
      afci: pair.some((c) => hadAfci(c) || gainAfci.has(c.id)),
      gfci: pair.some((c) => hadGfci(c) || gainGfci.has(c.id)),
    };
  });
};

/** Price book item of a breaker, or null where its rating is not known. */
export const breakerItem = (b: Pick<Breaker, 'poles' | 'amps' | 'afci' | 'gfci'>): string | null => {
  if (!isKnown(b.amps)) return null;
  const kind = [b.afci ? 'AFCI' : '', b.gfci ? 'GFCI' : ''].filter(Boolean).join('+');
  return `breaker:${b.poles}p ${b.amps}${kind ? ` ${kind}` : ''}`;
};
