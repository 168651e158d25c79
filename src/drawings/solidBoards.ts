import type { Plan } from '../facts/result';
import type { In, Pt } from '../units/types';
import { stroke } from './items';
import { at, drawnOut, edge, prism, type Shape } from './solidShapes';
import type { Edge, Solid } from './solids';

/** A running board: nominal 1×4. Common practice, no source. */
const BOARD_WIDE_IN = 3.5;
const BOARD_THICK_IN = 0.75;
const LOOK = { surface: 'wood', stroke: stroke('thin', 'new') } as const;

/** Boards under or across the joists and on walls, each stretch once. */
export const solidBoards = (plan: Plan): Solid[] => {
  const seen = new Set<string>();
  return plan.runs.flatMap((run) =>
    run.legs.flatMap((leg, i): Solid[] => {
      if (leg.by !== 'running board' && leg.by !== 'wall board') return [];
      const key = [leg.from.join(), leg.to.join()].sort().join(' ');
      if (seen.has(key)) return [];
      seen.add(key);
      return [{ id: `board ${run.homeRun} ${i}`, kind: 'board', ...boardShape(leg.from, leg.to), body: null }];
    }),
  );
};

type Point = readonly [In, In, In];
const boardShape = (from: Point, to: Point): Shape => {
  const [a, b]: [Pt, Pt] = [
    [from[0], from[1]],
    [to[0], to[1]],
  ];
  const half = BOARD_WIDE_IN / 2;
  if (Math.hypot(b[0] - a[0], b[1] - a[1]) < 1 / 64)
    return prism(
      [
        [a[0] - half, a[1] - BOARD_THICK_IN / 2],
        [a[0] + half, a[1] - BOARD_THICK_IN / 2],
        [a[0] + half, a[1] + BOARD_THICK_IN / 2],
        [a[0] - half, a[1] + BOARD_THICK_IN / 2],
      ],
      Math.min(from[2], to[2]),
      Math.max(from[2], to[2]),
      LOOK,
    );
  const z = (from[2] + to[2]) / 2;
  return drawnOut(
    [
      [-half, z],
      [half, z],
      [half, z + BOARD_THICK_IN],
      [-half, z + BOARD_THICK_IN],
    ],
    a,
    b,
    LOOK,
  );
};

const ROUND = 12;
/** Holes bored for rows: a ring across the row, left out where it would be a dot. */
export const holeEdges = (plan: Plan): Edge[] =>
  plan.rows.flatMap((row) =>
    row.holes.flatMap(({ at: p, diameter }) => {
      const across = alongAt(row.path, p);
      const r = diameter / 2;
      const ring = Array.from({ length: ROUND }, (_, k) => {
        const turn = (2 * Math.PI * k) / ROUND;
        const side = Math.cos(turn) * r;
        return at([p[0] - across[1] * side, p[1] + across[0] * side], p[2] + Math.sin(turn) * r);
      });
      return ring.map((q, k) => edge(q, ring[(k + 1) % ROUND]!, stroke('object', 'new'), null, diameter));
    }),
  );
/** Plan direction of the stretch of a row nearest to a point on it. */
const alongAt = (path: readonly Point[], p: Point): Pt => {
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (long < 1 / 64) continue;
    const u: Pt = [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
    const s = (p[0] - a[0]) * u[0] + (p[1] - a[1]) * u[1];
    const off = Math.abs((p[0] - a[0]) * u[1] - (p[1] - a[1]) * u[0]);
    if (s > -0.1 && s < long + 0.1 && off < 0.1) return u;
  }
  return [1, 0];
};
