import { edges, insideOrOn, pointToSegment, SAME_PLACE_IN, strictlyInside } from '../geometry/polygon';
import type { In, Pt, U } from '../units/types';
import { tidy } from './refuse';
import type { SpaceBlocker, SpaceBox, SpacePanel, SpaceVerdict } from './spaceZone';

export type Hinge = 'left' | 'right' | 'lift-off';

/** The part of a segment strictly inside a rectangle, or undefined (Liang–Barsky). */
const clipToBox = (a: Pt, b: Pt, box: Pick<SpaceBox, 'along' | 'out'>): [Pt, Pt] | undefined => {
  let from = 0;
  let to = 1;
  for (const [axis, [low, high]] of [
    [0, box.along],
    [1, box.out],
  ] as const) {
    const d = b[axis] - a[axis];
    const inner: readonly [number, number] = [low + SAME_PLACE_IN, high - SAME_PLACE_IN];
    if (Math.abs(d) < SAME_PLACE_IN) {
      if (a[axis] <= inner[0] || a[axis] >= inner[1]) return undefined;
      continue;
    }
    const [t0, t1] = [(inner[0] - a[axis]) / d, (inner[1] - a[axis]) / d];
    from = Math.max(from, Math.min(t0, t1));
    to = Math.min(to, Math.max(t0, t1));
  }
  if (from >= to) return undefined;
  const at = (t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
  return [at(from), at(to)];
};

/** How near a thing comes to the hinge inside the square the door sweeps in. */
const nearest = (hinge: Pt, swept: SpaceBox, blocker: SpaceBlocker): number => {
  const parts = edges(blocker.outline).flatMap(([a, b]) => {
    const part = clipToBox(a, b, swept);
    return part ? [pointToSegment(hinge, ...part)] : [];
  });
  const center: Pt = [(swept.along[0] + swept.along[1]) / 2, (swept.out[0] + swept.out[1]) / 2];
  const covered = parts.length === 0 ? strictlyInside(center, blocker.outline) : insideHinge(hinge, swept, blocker);
  return covered ? 0 : tidy(Math.min(...parts));
};
/** Just inside the swept square at the hinge: a thing that stands there leaves no swing at all. */
const insideHinge = (hinge: Pt, swept: SpaceBox, blocker: SpaceBlocker): boolean => {
  const step = 4 * SAME_PLACE_IN;
  const into: Pt = [hinge[0] + (hinge[0] === swept.along[0] ? step : -step), hinge[1] + step];
  return insideOrOn(into, blocker.outline);
};

/**
 * Does the panel's door, as wide as the panel and hinged at its edge, open to 90°? It sweeps a quarter circle before the
 * panel's own front. Measured: the clear radius. Hinge not known: told only where both sides say the same.
 */
export const doorVerdict = (panel: SpacePanel, hinge: U<Hinge>, blockers: readonly SpaceBlocker[]): SpaceVerdict => {
  const radius: In = panel.right - panel.left;
  const shape: SpaceBox = {
    along: [panel.left, panel.right],
    out: [panel.out, panel.out + radius],
    z: [panel.bottom, panel.top],
  };
  if (hinge === 'lift-off') return { outcome: 'holds', measuredIn: null, requiredIn: 0, intruders: [], shape };
  const judge = (side: 'left' | 'right'): SpaceVerdict => {
    const clear = blockers.map((b) => ({ id: b.id, radius: nearest([panel[side], panel.out], shape, b) }));
    const intruders = clear
      .filter((c) => c.radius < radius - SAME_PLACE_IN)
      .map((c) => ({ id: c.id, byIn: tidy(radius - c.radius) }));
    const least = Math.min(...clear.map((c) => c.radius));
    return {
      outcome: intruders.length === 0 ? 'holds' : 'fails',
      measuredIn: Number.isFinite(least) ? least : null,
      requiredIn: radius,
      intruders,
      shape,
    };
  };
  if (hinge !== 'unknown') return judge(hinge);
  const [left, right] = [judge('left'), judge('right')];
  if (left.outcome === right.outcome) return (left.measuredIn ?? 0) <= (right.measuredIn ?? 0) ? left : right;
  return { ...(left.outcome === 'fails' ? left : right), outcome: 'cannot be told' };
};
