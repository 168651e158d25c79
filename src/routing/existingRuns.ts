import type { Job } from '../job/schema';
import { visibleRun } from '../job/site';
import { byId } from '../units/order';
import type { Id, In, Pt, Pt3 } from '../units/types';
import { isKnown } from '../units/types';
import type { Lines } from './lines';
import { type Frame, toFrame } from './networkFrame';
import { type Network, pathKey, type RunPoint } from './types';

/** One path that home runs share, from the old panel, with the chainages (inches) that matter on it. */
export interface ExistingPath {
  readonly key: string;
  readonly path: readonly Pt3[];
  readonly marks: readonly In[];
}

/** Float noise off: far under 1/64 in, and exact for whole parts of it. */
const clean = (x: number): number => Math.round(x * 2 ** 20) / 2 ** 20;

const chainagesByPath = new WeakMap<readonly Pt3[], readonly In[]>();

/** Length of a path up to each of its corners; kept, since a path is asked for many points. */
const chainages = (path: readonly Pt3[]): readonly In[] => {
  const known = chainagesByPath.get(path);
  if (known) return known;
  const list = [0];
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    list.push(list[i - 1]! + Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]));
  }
  chainagesByPath.set(path, list);
  return list;
};

/** The point at a chainage, ends included. */
export const pointAlong = (path: readonly Pt3[], chain: In): Pt3 => {
  const lengths = chainages(path);
  for (let i = 1; i < path.length; i++) {
    const [from, to] = [lengths[i - 1]!, lengths[i]!];
    if (chain > to && i + 1 < path.length) continue;
    const t = to > from ? Math.min(1, Math.max(0, (chain - from) / (to - from))) : 0;
    const [a, b] = [path[i - 1]!, path[i]!];
    const at = (k: 0 | 1 | 2) => clean(a[k] + (b[k] - a[k]) * t);
    return [at(0), at(1), at(2)];
  }
  return path[0]!;
};

/** Every path in the job once, with the ends of what can be reached and the pivots of all its home runs. */
export const existingPaths = (job: Job): ExistingPath[] => {
  const found = new Map<string, { path: readonly Pt3[]; marks: Set<In> }>();
  for (const { id } of byId(job.homeRuns)) {
    const seen = visibleRun(job, id);
    if (!seen) continue;
    const key = pathKey(seen.path);
    const entry = found.get(key) ?? { path: seen.path, marks: new Set<In>() };
    for (const mark of [...seen.group.reachable.flat(), ...(isKnown(seen.pivot) ? [seen.pivot] : [])])
      if (mark >= 0 && mark <= chainages(seen.path).at(-1)!) entry.marks.add(mark);
    found.set(key, entry);
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, { path, marks }]) => ({ key, path, marks: [...marks].sort((a, b) => a - b) }));
};

/** Corners of a path and its marks: they get grid lines. */
export const terminalsOf = (run: ExistingPath): Pt3[] => [
  ...run.path,
  ...run.marks.map((m) => pointAlong(run.path, m)),
];

/** Plan segments of a path in the search frame. */
export const planSegments = (frame: Frame, run: ExistingPath): (readonly [Pt, Pt])[] =>
  run.path.slice(1).map((b, i) => {
    const a = run.path[i]!;
    const round = (p: Pt): Pt => [Math.round(p[0]), Math.round(p[1])];
    return [round(toFrame(frame, [a[0], a[1]])), round(toFrame(frame, [b[0], b[1]]))] as const;
  });

/** Where a path meets the grid: its corners, marks, and every grid line it crosses, in order. */
export const crossings = (
  frame: Frame,
  lines: Lines,
  run: ExistingPath,
): { readonly chain: In; readonly point: Pt3; readonly corner: boolean }[] => {
  const lengths = chainages(run.path);
  const corners = new Set([...lengths, ...run.marks]);
  const chains = new Set(corners);
  for (let i = 1; i < run.path.length; i++) {
    const [p, q] = [run.path[i - 1]!, run.path[i]!];
    const a = [...toFrame(frame, [p[0], p[1]]), p[2] * 64];
    const b = [...toFrame(frame, [q[0], q[1]]), q[2] * 64];
    [lines.xs, lines.ys, lines.zs].forEach((list, axis) => {
      const step = b[axis]! - a[axis]!;
      if (Math.abs(step) < 1e-6) return;
      for (const c of list) {
        const t = (c - a[axis]!) / step;
        if (t > 1e-9 && t < 1 - 1e-9) chains.add(clean(lengths[i - 1]! + t * (lengths[i]! - lengths[i - 1]!)));
      }
    });
  }
  return [...chains]
    .sort((a, b) => a - b)
    .filter((chain, i, all) => corners.has(chain) || i === 0 || chain - all[i - 1]! > 1e-6)
    .map((chain) => ({ chain, point: pointAlong(run.path, chain), corner: corners.has(chain) }));
};

/** Nodes along the visible part of a home run, in order from the old panel. Which of them can be reached is the job's to say. */
export const runPoints = (network: Network, homeRun: Id): readonly RunPoint[] => {
  const seen = visibleRun(network.made.job, homeRun);
  return seen ? (network.paths.get(pathKey(seen.path)) ?? []) : [];
};
