import { type Interval, overlap, slabProjection, stripProjection } from '../geometry/freeIntervals';
import { SAME_PLACE_IN } from '../geometry/polygon';
import { DWELLING_DEPTH_IN, HEIGHT_IN, WIDTH_IN } from '../standards/workingSpace';
import type { Id, In } from '../units/types';
import { intrudersIn, type SpaceBlocker, type SpaceBox, type SpacePanel, type SpaceVerdict } from './spaceZone';

/**
 * Hanging things are judged as headroom, standing ones as depth and width. A thing hangs when it starts above this
 * level, or starts above the floor and reaches past the headroom needed (our own line; the code draws none).
 */
const HANGS_FROM_IN = 60;
export const hangs = (b: SpaceBlocker, headroom: In): boolean =>
  b.fromZ >= HANGS_FROM_IN || (b.fromZ > 0 && b.toZ >= headroom);

export const windowWidth = (panel: Pick<SpacePanel, 'left' | 'right'>): In =>
  Math.max(WIDTH_IN, panel.right - panel.left);
export const headroomNeeded = (top: In): In => Math.max(HEIGHT_IN, top);

export const verdict = (holds: boolean, rest: Omit<SpaceVerdict, 'outcome'>): SpaceVerdict => ({
  outcome: holds ? 'holds' : 'fails',
  ...rest,
});
export const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

/** Clear depth before the panel's own front, to the first standing thing. */
export const judgeDepth = (panel: SpacePanel, standing: readonly SpaceBlocker[], z: Interval): SpaceVerdict => {
  const { left, right, out } = panel;
  const clear = standing.map((b) => ({
    id: b.id,
    depth: Math.min(
      ...stripProjection(b.outline, left, right)
        .filter((i) => i[1] > out + SAME_PLACE_IN)
        .map((i) => Math.max(i[0], out) - out),
    ),
  }));
  const intruders = clear
    .filter((c) => c.depth < DWELLING_DEPTH_IN - SAME_PLACE_IN)
    .map((c) => ({ id: c.id, byIn: DWELLING_DEPTH_IN - c.depth }));
  return verdict(intruders.length === 0, {
    measuredIn: finite(Math.min(...clear.map((c) => c.depth))),
    requiredIn: DWELLING_DEPTH_IN,
    intruders,
    shape: { along: [left, right], out: [out, out + DWELLING_DEPTH_IN], z },
  });
};

/** The free gap, at full depth, that the panel's front stands in, and what bounds it. */
export const gapAround = (panel: SpacePanel, standing: readonly SpaceBlocker[]) => {
  let left = { at: Number.NEGATIVE_INFINITY, id: null as Id | null };
  let right = { at: Number.POSITIVE_INFINITY, id: null as Id | null };
  for (const b of standing)
    for (const [from, to] of slabProjection(b.outline, panel.out, panel.out + DWELLING_DEPTH_IN)) {
      if (to <= panel.left + SAME_PLACE_IN && to > left.at) left = { at: to, id: b.id };
      if (from >= panel.right - SAME_PLACE_IN && from < right.at) right = { at: from, id: b.id };
    }
  return { left, right };
};

interface Hanging {
  readonly id: Id;
  readonly fromZ: In;
  readonly along: Interval;
}
/** Where the window gets the most headroom; where several places do, the one nearest to centered. */
export const bestWindow = (starts: Interval, width: In, centered: In, hanging: readonly Hanging[]) => {
  const within = (s: number) => Math.min(Math.max(s, starts[0]), starts[1]);
  const tries = [centered, ...starts, ...hanging.flatMap((h) => [h.along[1], h.along[0] - width])].map(within);
  const rated = tries.map((start) => {
    const under = hanging.filter((h) => overlap(h.along, [start, start + width]));
    return { start, under, headroom: Math.min(...under.map((h) => h.fromZ)) };
  });
  return rated.reduce((best, next) => {
    const off = Math.abs(next.start - centered) - Math.abs(best.start - centered);
    const better =
      next.headroom > best.headroom ||
      (next.headroom === best.headroom && (off < 0 || (off === 0 && next.start < best.start)));
    return better ? next : best;
  });
};

export const judgeZone = (blockers: readonly SpaceBlocker[], shape: SpaceBox): SpaceVerdict => {
  const empty = shape.z[1] <= shape.z[0] || shape.out[1] <= shape.out[0];
  const intruders = empty ? [] : intrudersIn(blockers, shape);
  return verdict(intruders.length === 0, {
    measuredIn: Math.max(0, ...intruders.map((i) => i.byIn)),
    requiredIn: 0,
    intruders,
    shape,
  });
};
