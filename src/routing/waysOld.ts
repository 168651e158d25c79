import type { Leg, Reach } from '../facts/result';
import type { WallFace } from '../job/site';
import { connectorToOrder } from '../standards/connectors';
import { formatFeetInches } from '../units/length';
import { isKnown, type Pt3 } from '../units/types';
import { routingWords as say } from '../words/en/routing';
import { besideSpliced, type Candidate, candidate, item, splices, type Terms } from './candidate';
import { mayBeReused } from './cutIn';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { faceFor, meetsAt, onFaceOf } from './panelPlace';
import { firstShort, neededInside, type ReachPart, reachOf, SHEATH_INSIDE_IN } from './reach';
import type { Behind, Routes, Way3 } from './routes';
import { oldKey } from './spurs';
import type { RunPoint } from './types';

/** Ways that keep the old cable to the new panel, and why there are none. */
export interface OldWays {
  readonly candidates: readonly Candidate[];
  /** Ways of which it cannot be told whether they reach: taken only where the user pins them. */
  readonly untold: readonly Candidate[];
  /** Why it is not reused; null = it is offered. */
  readonly because: string | null;
  /** The part that is short where the cable was measured. */
  readonly short: { readonly part: ReachPart; readonly by: string } | null;
}

/** Less to spare than this and a survey's tape does not tell whether it reaches. Common practice, no source. */
const THIN_IN = 6;
const inches = (x: number) => formatFeetInches(Math.abs(x), 8);
const spareOf = (r: Reach) => Math.min(r.jacket, r.hot, r.neutral, r.ground);

/** Conductors of a cable that do not reach their terminals; null reach = take them all. */
const shortOnes = (f: HomeRunFacts, reach: Reach | null): { readonly insulated: number; readonly ground: number } => {
  if (reach === null) return { insulated: f.conductors, ground: 1 };
  const neutrals = f.homeRun.cable.neutral === 'none' ? 0 : 1;
  const hots = f.conductors - neutrals;
  return {
    insulated: (reach.hot < 0 ? hots : 0) + (reach.neutral < 0 ? neutrals : 0),
    ground: reach.ground < 0 ? 1 : 0,
  };
};

const entered = (f: HomeRunFacts) => item(`connector:${connectorToOrder(f.homeRun.cable)}`, 1);

/**
 * Joined inside the new panel: only the conductors that are short, with a piece of new cable's conductors. A ground that
 * is lengthened alone counts as one conductor and as half a pair.
 */
const inPanel = (
  terms: Terms,
  f: HomeRunFacts,
  reach: Reach | null,
  stretches: readonly Way3[],
  old: readonly Leg[],
  drawn: boolean,
  part: ReachPart,
): Candidate => {
  const { insulated, ground } = shortOnes(f, reach);
  const joined = insulated > 0 ? insulated : ground;
  return candidate(terms, {
    id: `splice in new panel ${drawn ? 'drawn' : 'stays'}`,
    way: 'splice in new panel',
    reach,
    newCable: f.newCable,
    stretches,
    inside: old,
    free: terms.practice.freeInBox + terms.practice.tailInPanel,
    conductorsSpliced: joined,
    own: (_path, cut) => [...(drawn ? [item('reuse', 1)] : []), entered(f), splices(f, joined), item(f.type, cut / 12)],
    beside: besideSpliced(f),
    why: say.spliceInPanel({ part, short: reach ? inches(reach[part]) : null }),
  });
};

/** The cable already comes to where the new can will be. */
const staysWay = (terms: Terms, f: HomeRunFacts): OldWays | null => {
  const { site } = terms.job;
  const panel = terms.option.enclosure;
  const chain = meetsAt(site, panel, f.path, f.pathLength);
  if (chain === null) return null;
  const face = faceFor(site, panel)!;
  const at: Pt3 = pointAlong(f.path, chain);
  const inside: Leg[] = chain > 0 ? [{ from: at, to: f.path[0]!, cable: 'old', row: null, by: 'inside panel' }] : [];
  const make = (reach: Reach | null) =>
    candidate(terms, {
      id: 'stays',
      way: 'stays',
      reach,
      stretches: [],
      inside,
      own: () => [entered(f)],
      why: say.stays(),
    });
  if (!isKnown(f.tails))
    return {
      candidates: [inPanel(terms, f, null, [], inside, false, 'hot')],
      untold: [make(null)],
      because: say.becauseTailsUnknown(),
      short: null,
    };
  // The sheath already enters the old can by its connector's quarter inch where the run meets the new can's wall.
  const reach = reachOf({
    sheath: chain,
    sheathInside: 0,
    path: 0,
    tails: f.tails,
    need: neededInside(panel, onFaceOf(face, at)),
    cable: f.homeRun.cable,
  });
  const part = firstShort(reach);
  if (part === null) return { candidates: [make(reach)], untold: [], because: null, short: null };
  const short = { part, by: inches(reach[part]) };
  return {
    candidates: [inPanel(terms, f, reach, [], inside, false, part)],
    untold: [],
    because: say.becauseShort({ part, short: short.by }),
    short,
  };
};

const none = (because: string): OldWays => ({ candidates: [], untold: [], because, short: null });

/** Why a cable may not be drawn back and used again, or null. */
const barred = (f: HomeRunFacts): string | null => {
  if (f.homeRun.cable.kind === 'knob-and-tube') return say.becauseKnobAndTube();
  if (!mayBeReused(f.homeRun)) return say.becauseCondition({ condition: [...f.homeRun.condition].sort().join(', ') });
  if (f.runAnew === 'always') return say.becauseThreeWire();
  return null;
};

/** The same without the joints inside the panel where they would lengthen a cable that may not be. */
const notLengthened = (f: HomeRunFacts, ways: OldWays): OldWays =>
  f.runAnew === 'never'
    ? ways
    : { ...ways, candidates: ways.candidates.filter((c) => c.way !== 'splice in new panel') };

/** Where a cable swings from: its pivot, or, where that is not known, the end of what can be reached. */
const swingsFrom = (routes: Routes, f: HomeRunFacts): RunPoint | undefined => {
  const points = runPoints(routes.network, f.id);
  const { pivot } = f;
  if (isKnown(pivot)) return points.find((p) => Math.abs(p.chain - pivot) < 1e-6);
  const end = f.group.reachable.find(([from]) => from <= 0)?.[1] ?? 0;
  return points.filter((p) => p.chain <= end + 1e-6).at(-1);
};

/** What is not known and would have to be, or null. */
const notKnown = (f: HomeRunFacts): string | null => {
  if (!isKnown(f.group.drawsBack)) return say.becauseDrawBackUnknown();
  if (!isKnown(f.pivot) || f.pivot > f.pathLength) return say.becausePivotUnknown();
  if (!isKnown(f.tails)) return say.becauseTailsUnknown();
  return null;
};

interface Tried {
  readonly way: Way3;
  readonly reach: Reach;
}

/** The ways of an old cable from where it swings to the new panel, by what they may use of it. */
const triesOf = (terms: Terms, routes: Routes, f: HomeRunFacts, start: RunPoint, face: WallFace) => {
  const panel = terms.option.enclosure;
  const { cable } = f.homeRun;
  const tails = isKnown(f.tails) ? f.tails : { hot: 0, neutral: 0, ground: 0 };
  const key = oldKey(f);
  const tried = (way: Way3): Tried => ({
    way,
    reach: reachOf({
      sheath: start.chain,
      sheathInside: SHEATH_INSIDE_IN,
      path: way.length,
      tails,
      need: neededInside(panel, onFaceOf(face, way.end)),
      cable,
    }),
  });
  const one = (variant: 'cheap' | 'nearest'): Tried | null => {
    const way = routes.to(start.node, cable, key, 'old', variant);
    return way && tried(way);
  };
  /** The cheapest that leaves so much sheath behind each entry and passes. */
  const within = (behind: Behind, passes: (reach: Reach) => boolean): Tried | null => {
    const ways = routes.bounded(cable, key, 'old', Math.floor(start.chain * 64), behind);
    for (let label = ways.first[start.node]!; label >= 0; label = ways.next[label]!) {
      const found = tried(routes.along(ways, label, cable, key, 'old'));
      if (passes(found.reach)) return found;
    }
    return null;
  };
  const spare = (reach: Reach) => firstShort(reach) === null;
  const enters = (reach: Reach) => reach.jacket >= 0;
  const sheathFor: Behind = ({ point }) => {
    const need = neededInside(panel, onFaceOf(face, point));
    const neutral = cable.neutral === 'none' ? 0 : need.neutral - tails.neutral;
    const ground = cable.ground === false ? 0 : need.ground - tails.ground;
    return Math.max(SHEATH_INSIDE_IN, need.hot - tails.hot, neutral, ground);
  };
  const cheap = one('cheap');
  return {
    cheap,
    /** Cheapest of which every conductor comes to its terminal. */
    reaches: (): Tried | null => (cheap && spare(cheap.reach) ? cheap : within(sheathFor, spare)),
    /** Cheapest of which the sheath comes into the panel. */
    enters: (): Tried | null => (cheap && enters(cheap.reach) ? cheap : within(() => SHEATH_INSIDE_IN, enters)),
    /** The one that comes nearest to its terminals. */
    nearest: (): Tried | null => one('nearest'),
  };
};

/** Drawn back to its pivot and brought to the new panel another way. */
const reuseWays = (terms: Terms, routes: Routes, f: HomeRunFacts): OldWays => {
  if (f.homeRun.cable.kind === 'conductors in raceway') return none(say.becauseRaceway());
  if (f.group.drawsBack === false) return none(say.becauseNotDrawnBack());
  const unknown = notKnown(f);
  const start = swingsFrom(routes, f);
  const face = faceFor(terms.job.site, terms.option.enclosure);
  if (!start || !face) return none(unknown ?? say.becauseNoPath());
  const tries = triesOf(terms, routes, f, start, face);
  if (!tries.cheap) return none(unknown ?? say.becauseNoPath());
  const make = ({ way, reach }: Tried, told: boolean) =>
    candidate(terms, {
      id: 'reuse',
      way: 'reuse',
      reach: told ? reach : null,
      stretches: [way],
      own: () => [item('reuse', 1), entered(f)],
      why: told
        ? say.reuse({ spare: inches(spareOf(reach)), thin: spareOf(reach) < THIN_IN })
        : say.reuseUntold({ because: unknown! }),
    });
  const enters = tries.enters();
  if (unknown !== null) {
    // The jacket is measured from a known pivot; only the conductors behind it are not.
    const measured = isKnown(f.pivot) && f.group.drawsBack === true;
    if (measured && !enters) {
      const by = inches((tries.nearest() ?? tries.cheap).reach.jacket);
      return { ...none(say.becauseShort({ part: 'jacket', short: by })), short: { part: 'jacket', by } };
    }
    const joined = measured ? [inPanel(terms, f, null, [enters!.way], [], true, 'hot')] : [];
    return { candidates: joined, untold: [make(tries.cheap, false)], because: unknown, short: null };
  }
  const reaches = tries.reaches();
  if (reaches) return { candidates: [make(reaches, true)], untold: [], because: null, short: null };
  const { reach } = enters ?? tries.nearest() ?? tries.cheap;
  const part = firstShort(reach)!;
  const by = inches(reach[part]);
  const joined = enters ? [inPanel(terms, f, reach, [enters.way], [], true, part)] : [];
  return { candidates: joined, untold: [], because: say.becauseShort({ part, short: by }), short: { part, by } };
};

/** Stays, reuse and splice in the new panel, as far as each is possible. One that must pass pinned points cannot stay. */
export const oldWays = (terms: Terms, routes: Routes, f: HomeRunFacts, mustPass: boolean): OldWays => {
  const no = barred(f);
  if (no !== null) return none(no);
  const stays = mustPass ? null : staysWay(terms, f);
  if (!stays) return notLengthened(f, reuseWays(terms, routes, f));
  if (stays.because === null) return stays;
  const drawn = reuseWays(terms, routes, f);
  if (drawn.because === null) return drawn;
  return notLengthened(f, {
    ...stays,
    candidates: [...stays.candidates, ...drawn.candidates],
    untold: [...stays.untold, ...drawn.untold],
  });
};
