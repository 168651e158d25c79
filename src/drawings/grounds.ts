import { insideOrOn } from '../geometry/polygon';
import type { Id, Pt } from '../units/types';
import type { Drawing, Line } from './items';
import type { Box, Paper } from './paper';

/** Where the name of a thing would stand: in its own outline, in its own where another lies over it, outside all, or in another's. */
export type Ground = 'own' | 'own, shared' | 'outside' | 'another';

/** Layers whose closed lines are outlines of things. */
const OF_THINGS: readonly Line['layer'][] = ['things', 'overhead', 'old work', 'new work'];
/** Points of the paper by which lettering may touch an outline. */
const TOUCH = 0.5;

const corners = ({ x, y, w, h }: Box): Pt[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

/** True where a line along a side of `a` parts the two: outlines of things are rectangles, however turned. */
const partedBy = (a: readonly Pt[], b: readonly Pt[]): boolean =>
  a.some((p, i) => {
    const q = a[(i + 1) % a.length]!;
    const l = Math.hypot(q[0] - p[0], q[1] - p[1]);
    if (l === 0) return false;
    const reach = (points: readonly Pt[]) => {
      const t = points.map((r) => ((q[1] - p[1]) * (r[0] - p[0]) - (q[0] - p[0]) * (r[1] - p[1])) / l);
      return { from: Math.min(...t), to: Math.max(...t) };
    };
    const [of, other] = [reach(a), reach(b)];
    return of.from >= other.to - TOUCH || other.from >= of.to - TOUCH;
  });

/**
 * Tells on whose ground a box of the paper lies, for the name of the thing with that id. In the wall drawing a thing in
 * a corner is drawn on both walls: its own ground is then the outline the name is about, where its thin line leads.
 */
export const groundsOf = (drawing: Drawing, { to }: Paper): ((id: Id, lead: Pt | null, box: Box) => Ground) => {
  const outlines = drawing.items.flatMap((item) =>
    item.item === 'line' && item.closed && item.stroke !== null && OF_THINGS.includes(item.layer)
      ? [{ id: item.id, points: item.points.map(to) }]
      : [],
  );
  return (id, lead, box) => {
    const block = corners(box);
    const about = lead && to(lead);
    const isOwn = (o: { readonly id: Id; readonly points: readonly Pt[] }) =>
      o.id === id && (about === null || insideOrOn(about, o.points));
    const under = outlines.filter(({ points }) => !partedBy(block, points) && !partedBy(points, block));
    const shared = under.some((o) => !isOwn(o));
    if (under.some((o) => isOwn(o) && block.every((p) => insideOrOn(p, o.points))))
      return shared ? 'own, shared' : 'own';
    return shared ? 'another' : 'outside';
  };
};
