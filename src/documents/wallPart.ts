import type { Drawing, Drawn, Line } from '../drawings/items';
import type { WallDrawing } from '../drawings/wallDrawing';
import type { OnWall } from '../job/schema';
import type { In, Pt } from '../units/types';

/** One wall cut out of the unrolled walls: where the new panel hangs, large enough to read on a sheet. */
export const wallPart = (drawing: WallDrawing, on: Pick<OnWall, 'wall' | 'face'>): Drawing => {
  const wall = drawing.walls.find((w) => w.face.wall === on.wall && w.face.face === on.face);
  if (!wall) return drawing;
  const [minX, maxX] = [wall.at, wall.at + wall.face.length];
  return {
    items: drawing.items.flatMap((item) => part(item, minX, maxX)),
    extent: { ...drawing.extent, minX, maxX },
  };
};

const part = (item: Drawn, min: In, max: In): Drawn[] => {
  const inside = ([x]: Pt): boolean => x >= min && x <= max;
  switch (item.item) {
    case 'line':
      return lineIn(item, min, max);
    case 'arc':
      return inside(item.center) ? [item] : [];
    case 'dimension':
      return inside(item.from) && inside(item.to) ? [item] : [];
    case 'label': {
      const places = item.places.filter(({ at }) => inside(at));
      return places.length === 0 || (item.lead !== null && !inside(item.lead)) ? [] : [{ ...item, places }];
    }
    case 'sign':
    case 'mark':
      return inside(item.at) ? [item] : [];
  }
};

const lineIn = (line: Line, min: In, max: In): Line[] => {
  if (line.closed) {
    const points = cutRing(
      cutRing(line.points, (x) => min - x),
      (x) => x - max,
    );
    return points.length < 3 ? [] : [{ ...line, points }];
  }
  const courses: Pt[][] = [];
  let course: Pt[] = [];
  line.points.slice(1).forEach((b, i) => {
    const piece = segmentIn(line.points[i]!, b, min, max);
    if (!piece) return;
    const last = course.at(-1);
    if (!last || last[0] !== piece[0][0] || last[1] !== piece[0][1]) {
      course = [piece[0]];
      courses.push(course);
    }
    course.push(piece[1]);
  });
  return courses.map((points) => ({ ...line, points }));
};

const at = (a: Pt, b: Pt, t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** The part of a polygon on the side where `over` is not positive (one edge of Sutherland and Hodgman's clipping). */
const cutRing = (ring: readonly Pt[], over: (x: In) => number): Pt[] =>
  ring.flatMap((b, i): Pt[] => {
    const a = ring.at(i - 1)!;
    const [da, db] = [over(a[0]), over(b[0])];
    const crossing = da > 0 !== db > 0 ? [at(a, b, da / (da - db))] : [];
    return db > 0 ? crossing : [...crossing, b];
  });

const segmentIn = (a: Pt, b: Pt, min: In, max: In): readonly [Pt, Pt] | null => {
  const run = b[0] - a[0];
  if (run === 0) return a[0] < min || a[0] > max ? null : [a, b];
  const ends = [(min - a[0]) / run, (max - a[0]) / run].sort((p, q) => p - q) as [number, number];
  const [t0, t1] = [Math.max(0, ends[0]), Math.min(1, ends[1])];
  if (t0 > t1) return null;
  return [t0 === 0 ? a : at(a, b, t0), t1 === 1 ? b : at(a, b, t1)];
};
