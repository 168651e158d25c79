import type { NetFace } from './faces';

/**
 * How many lines a grid may have. A house never comes near these; a job file that asks for more is read coarsely
 * rather than never: without a line an edge that is barred in part is barred altogether, so that a path stays clear
 * and only the cheapest one may be missed.
 */
const MOST_CROSSINGS = 400_000;
const MOST_WALL_PLACES = 1_000_000;
/** Lines that may go are thinned up to this distance before the others are. */
const SOFT_STEP = 1024;
const LAST_STEP = 2 ** 20;

const sorted = (set: Iterable<number>) => [...set].sort((a, b) => a - b);

/** Keeps the first of what is closer than `step`; `held` stays in any case. */
const thinned = (list: readonly number[], held: ReadonlySet<number>, step: number): number[] => {
  const kept: number[] = [];
  for (const c of list) if (held.has(c) || kept.length === 0 || c - kept[kept.length - 1]! >= step) kept.push(c);
  return kept;
};

type Pair = readonly [ReadonlySet<number>, ReadonlySet<number>];
const NONE: ReadonlySet<number> = new Set();

/** Grid lines in plan; `skew` segments may meet every one of them. */
export const fitPlan = (hard: Pair, soft: Pair, skew: number): { readonly xs: number[]; readonly ys: number[] } => {
  const all = [sorted(new Set([...hard[0], ...soft[0]])), sorted(new Set([...hard[1], ...soft[1]]))] as const;
  let [xs, ys]: [number[], number[]] = [all[0], all[1]];
  const tooMany = () => xs.length * ys.length + (xs.length + ys.length) * skew > MOST_CROSSINGS;
  for (let step = 2; tooMany() && step <= LAST_STEP; step *= 2) {
    const held = step <= SOFT_STEP ? hard : ([NONE, NONE] as const);
    xs = thinned(all[0], held[0], step);
    ys = thinned(all[1], held[1], step);
  }
  return { xs, ys };
};

/** Heights on walls. `lines`: grid lines in plan; a wall has at most that many uprights. */
export const fitHeights = (heights: ReadonlySet<number>, faces: readonly NetFace[], lines: number): number[] => {
  const whole = Math.max(1, ...faces.map((f) => f.end));
  const uprights = faces.reduce((sum, f) => sum + 2 + (lines * f.end) / whole, 0);
  const all = sorted(heights);
  let zs = all;
  for (let step = 2; zs.length * uprights > MOST_WALL_PLACES && step <= LAST_STEP; step *= 2)
    zs = thinned(all, NONE, step);
  return zs;
};
