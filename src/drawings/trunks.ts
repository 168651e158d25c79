import { cross, distance, dot, subtract, unit } from '../geometry/vector';
import { compareText } from '../units/order';
import type { Id, In, Pt } from '../units/types';
import { samePlace } from './courses';

/** A straight stretch that the same cables share. */
export interface Trunk {
  readonly from: Pt;
  readonly to: Pt;
  readonly cables: readonly Id[];
}
export interface Stretch {
  readonly from: Pt;
  readonly to: Pt;
  readonly cable: Id;
}

const ON_LINE_IN = 1 / 64;

interface Course {
  readonly origin: Pt;
  readonly along: Pt;
  readonly parts: { readonly from: In; readonly to: In; readonly cable: Id }[];
}
/** The same direction for a line whichever way it is walked. */
const forward = (a: Pt): Pt => (a[0] > 1e-9 || (Math.abs(a[0]) <= 1e-9 && a[1] > 0) ? a : [-a[0], -a[1]]);

const courses = (stretches: readonly Stretch[]): Course[] => {
  const found: Course[] = [];
  for (const s of stretches) {
    if (samePlace(s.from, s.to)) continue;
    const along = forward(unit(subtract(s.to, s.from)));
    let line = found.find(
      (c) =>
        Math.abs(cross(c.along, along)) < 1e-6 && Math.abs(cross(c.along, subtract(s.from, c.origin))) < ON_LINE_IN,
    );
    if (!line) {
      line = { origin: s.from, along, parts: [] };
      found.push(line);
    }
    const a = dot(subtract(s.from, line.origin), line.along);
    const b = dot(subtract(s.to, line.origin), line.along);
    line.parts.push({ from: Math.min(a, b), to: Math.max(a, b), cable: s.cable });
  }
  return found;
};

/**
 * Stretches of cable laid over each other in plan, as trunks: each drawn once, with the cables that run in it. The
 * answer does not hang on the order of the stretches.
 */
export const trunksOf = (stretches: readonly Stretch[]): Trunk[] => {
  const sorted = [...stretches].sort(
    (a, b) =>
      compareText(a.cable, b.cable) ||
      a.from[0] - b.from[0] ||
      a.from[1] - b.from[1] ||
      a.to[0] - b.to[0] ||
      a.to[1] - b.to[1],
  );
  return courses(sorted).flatMap(({ origin, along, parts }) => {
    const stops = [...new Set(parts.flatMap((p) => [p.from, p.to]))].sort((a, b) => a - b);
    const trunks: { from: In; to: In; cables: Id[] }[] = [];
    for (let i = 1; i < stops.length; i++) {
      const [from, to] = [stops[i - 1]!, stops[i]!];
      if (to - from < ON_LINE_IN) continue;
      const cables = [
        ...new Set(parts.filter((p) => p.from < to - 1e-9 && p.to > from + 1e-9).map((p) => p.cable)),
      ].sort(compareText);
      if (cables.length === 0) continue;
      const last = trunks.at(-1);
      if (last && from - last.to < ON_LINE_IN && last.cables.join() === cables.join()) last.to = to;
      else trunks.push({ from, to, cables });
    }
    const at = (s: In): Pt => [origin[0] + along[0] * s, origin[1] + along[1] * s];
    return trunks.map((t) => ({ from: at(t.from), to: at(t.to), cables: t.cables }));
  });
};

/** The longest stretch of each set of cables: where their number is written. */
export const longestOfEach = (trunks: readonly Trunk[]): Trunk[] => {
  const best = new Map<string, Trunk>();
  for (const t of trunks) {
    const key = t.cables.join();
    const known = best.get(key);
    if (!known || distance(t.from, t.to) > distance(known.from, known.to) + 1e-9) best.set(key, t);
  }
  return [...best.values()];
};
