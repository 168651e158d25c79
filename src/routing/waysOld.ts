import type { Leg, Reach } from '../facts/result';
import { isKnown, type Pt3 } from '../units/types';
import { formatFeetInches } from '../units/length';
import { routingWords as say } from '../words/en/routing';
import { besideSpliced, type Candidate, candidate, item, splices, type Terms } from './candidate';
import { connectorSize } from './connectors';
import { mayBeReused } from './cutIn';
import { pointAlong, runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import { faceFor, meetsAt, onFaceOf } from './panelPlace';
import { firstShort, neededInside, reachOf, type ReachPart, SHEATH_INSIDE_IN } from './reach';
import type { Routes, Way3 } from './routes';

/** Ways that keep the old cable to the new panel, and why there are none. */
export interface OldWays {
  readonly candidates: readonly Candidate[];
  /** Why it is not reused; null = it is offered. */
  readonly because: string | null;
  /** The part that is short where the cable was measured. */
  readonly short: { readonly part: ReachPart; readonly by: string } | null;
}

const inches = (x: number) => formatFeetInches(Math.abs(x), 8);
const spareOf = (r: Reach) => Math.min(r.jacket, r.hot, r.neutral, r.ground);

const entered = (f: HomeRunFacts) => item(`connector:${connectorSize(f.homeRun.cable)}`, 1);

/** Joined inside the new panel: a short piece of new conductors from the joint to the terminals. */
const inPanel = (
  terms: Terms,
  f: HomeRunFacts,
  reach: Reach | null,
  stretches: readonly Way3[],
  old: readonly Leg[],
  drawn: boolean,
  part: ReachPart,
): Candidate =>
  candidate(terms, {
    id: `splice in new panel ${drawn ? 'drawn' : 'stays'}`,
    way: 'splice in new panel',
    reach,
    newCable: f.newCable,
    stretches,
    inside: old,
    free: terms.practice.freeInBox + terms.practice.tailInPanel,
    conductorsSpliced: f.conductors,
    own: (_path, cut) => [
      ...(drawn ? [item('reuse', 1)] : []),
      entered(f),
      splices(f),
      item(f.type, cut / 12),
    ],
    beside: besideSpliced(f),
    why: say.spliceInPanel({ part, short: reach ? inches(reach[part]) : '?' }),
  });

/** The cable already comes to where the new can will be. */
const staysWay = (terms: Terms, f: HomeRunFacts): OldWays | null => {
  const { site } = terms.job;
  const panel = terms.option.enclosure;
  const chain = meetsAt(site, panel, f.path, f.pathLength);
  if (chain === null) return null;
  const face = faceFor(site, panel)!;
  const at: Pt3 = pointAlong(f.path, chain);
  const inside: Leg[] =
    chain > 0 ? [{ from: at, to: f.path[0]!, cable: 'old', row: null, by: 'inside panel' }] : [];
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
  if (part === null) return { candidates: [make(reach)], because: null, short: null };
  const short = { part, by: inches(reach[part]) };
  return {
    candidates: [inPanel(terms, f, reach, [], inside, false, part)],
    because: say.becauseShort({ part, short: short.by }),
    short,
  };
};

const none = (because: string): OldWays => ({ candidates: [], because, short: null });

/** Why a cable may not be drawn back and used again, or null. */
const barred = (f: HomeRunFacts): string | null => {
  if (f.homeRun.cable.kind === 'knob-and-tube') return say.becauseKnobAndTube();
  if (!mayBeReused(f.homeRun)) return say.becauseCondition({ condition: [...f.homeRun.condition].sort().join(', ') });
  return null;
};

/** Drawn back to its pivot and brought to the new panel another way. */
const reuseWays = (terms: Terms, routes: Routes, f: HomeRunFacts): OldWays => {
  if (f.homeRun.cable.kind === 'conductors in raceway') return none(say.becauseRaceway());
  if (f.group.drawsBack === false) return none(say.becauseNotDrawnBack());
  if (!isKnown(f.group.drawsBack)) return none(say.becauseDrawBackUnknown());
  const { pivot, tails } = f;
  if (!isKnown(pivot) || pivot > f.pathLength) return none(say.becausePivotUnknown());
  const start = runPoints(routes.network, f.id).find((p) => Math.abs(p.chain - pivot) < 1e-6);
  if (!start) return none(say.becauseNoPath());
  const face = faceFor(terms.job.site, terms.option.enclosure);
  if (!face) return none(say.becauseNoPath());
  const panel = terms.option.enclosure;
  const key = `${f.homeRun.cable.kind} ${f.homeRun.cable.size} ${f.homeRun.cable.hots} ${f.homeRun.cable.neutral}`;
  let best: { reach: Reach; way: Way3 } | null = null;
  const found: Candidate[] = [];
  for (const variant of ['cheap', 'short', 'reach'] as const) {
    const way = routes.to(start.node, f.homeRun.cable, key, 'old', variant);
    if (!way) continue;
    const reach = reachOf({
      sheath: pivot,
      sheathInside: SHEATH_INSIDE_IN,
      path: way.length,
      tails: isKnown(tails) ? tails : { hot: 0, neutral: 0, ground: 0 },
      need: neededInside(panel, onFaceOf(face, way.end)),
      cable: f.homeRun.cable,
    });
    if (!best || spareOf(reach) > spareOf(best.reach)) best = { reach, way };
    if (!isKnown(tails) || firstShort(reach) !== null) continue;
    found.push(
      candidate(terms, {
        id: `reuse ${variant}`,
        way: 'reuse',
        reach,
        stretches: [way],
        own: () => [item('reuse', 1), entered(f)],
        why: say.reuse({ spare: inches(spareOf(reach)) }),
      }),
    );
  }
  if (!best) return none(say.becauseNoPath());
  if (found.length > 0) return { candidates: found, because: null, short: null };
  const { reach, way } = best;
  const part = isKnown(tails) ? firstShort(reach)! : reach.jacket < 0 ? 'jacket' : null;
  const short = part ? { part, by: inches(reach[part]) } : null;
  const because = short ? say.becauseShort({ part: short.part, short: short.by }) : say.becauseTailsUnknown();
  const joined = reach.jacket >= 0 ? [inPanel(terms, f, isKnown(tails) ? reach : null, [way], [], true, part ?? 'hot')] : [];
  return { candidates: joined, because, short };
};

/** Stays, reuse and splice in the new panel, as far as each is possible. */
export const oldWays = (terms: Terms, routes: Routes, f: HomeRunFacts): OldWays => {
  const no = barred(f);
  if (no !== null) return none(no);
  const stays = staysWay(terms, f);
  if (!stays) return reuseWays(terms, routes, f);
  if (stays.because === null) return stays;
  const drawn = reuseWays(terms, routes, f);
  if (drawn.because === null) return drawn;
  return { ...stays, candidates: [...stays.candidates, ...drawn.candidates] };
};
