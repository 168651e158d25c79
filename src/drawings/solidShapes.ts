import { signedArea } from '../geometry/polygon';
import type { Pt, Pt3 } from '../units/types';
import type { Stroke } from './items';
import type { Edge, Face, Place, Side, Surface, When } from './solids';

/** Building blocks of solids: upright prisms, bars, boxes. */

export const at = (p: Pt, z: number): Pt3 => [p[0], p[1], z];
const minus = (a: Pt3, b: Pt3): Pt3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const crossed = (a: Pt3, b: Pt3): Pt3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** Unit normal of a plane polygon, toward the side from which its corners run counter-clockwise; zero where it has none. */
export const normalOf = (points: readonly Pt3[]): Pt3 => {
  let n: Pt3 = [0, 0, 0];
  for (let i = 2; i < points.length; i++) {
    const c = crossed(minus(points[i - 1]!, points[0]!), minus(points[i]!, points[0]!));
    n = [n[0] + c[0], n[1] + c[1], n[2] + c[2]];
  }
  const long = Math.hypot(...n);
  return long === 0 ? n : [n[0] / long, n[1] / long, n[2] / long];
};

/** A face looks up or down when it is nearer to level than this. */
const LEVEL = 0.7;
export const sideOf = ([x, y, z]: Pt3): Side =>
  z > LEVEL ? 'up' : z < -LEVEL ? 'down' : Math.abs(x) >= Math.abs(y) ? 'x' : 'y';

export const face = (points: readonly Pt3[], surface: Surface, when: When | null = null, side?: Side): Face => ({
  points,
  surface,
  side: side ?? sideOf(normalOf(points)),
  when,
});
export const edge = (from: Pt3, to: Pt3, stroke: Stroke, when: When | null = null, fine = 0): Edge => ({
  from,
  to,
  stroke,
  when,
  fine,
});
export const ringEdges = (points: readonly Pt3[], stroke: Stroke, when: When | null = null): Edge[] =>
  points.map((p, i) => edge(p, points[(i + 1) % points.length]!, stroke, when));

export interface Shape {
  readonly faces: readonly Face[];
  readonly edges: readonly Edge[];
}
export const EMPTY: Shape = { faces: [], edges: [] };
export const joined = (shapes: readonly Shape[]): Shape => ({
  faces: shapes.flatMap((s) => s.faces),
  edges: shapes.flatMap((s) => s.edges),
});

export const counterClockwise = (outline: readonly Pt[]): Pt[] =>
  signedArea(outline) >= 0 ? [...outline] : [...outline].reverse();

export interface Look {
  readonly surface: Surface;
  readonly stroke: Stroke;
  readonly when?: When | null;
  /** Tone of what looks up, where the thing is cut there. */
  readonly top?: Surface;
  readonly topStroke?: Stroke;
}

/** An upright prism on a convex outline: its sides, top and underside, all edges. */
export const prism = (outline: readonly Pt[], fromZ: number, toZ: number, look: Look): Shape => {
  const ring = counterClockwise(outline);
  const when = look.when ?? null;
  const [low, high] = [ring.map((p) => at(p, fromZ)), ring.map((p) => at(p, toZ))];
  const next = (i: number) => (i + 1) % ring.length;
  return {
    faces: [
      face(high, look.top ?? look.surface, when),
      face([...low].reverse(), look.surface, when),
      ...ring.map((_, i) => face([low[i]!, low[next(i)]!, high[next(i)]!, high[i]!], look.surface, when)),
    ],
    edges: [
      ...ringEdges(high, look.topStroke ?? look.stroke, when),
      ...ringEdges(low, look.stroke, when),
      ...ring.map((_, i) => edge(low[i]!, high[i]!, look.stroke, when)),
    ],
  };
};

const ROUND = 20;
const ringAround = (middle: Pt3, u: Pt3, v: Pt3, radius: number): Pt3[] =>
  Array.from({ length: ROUND }, (_, k) => {
    const a = (2 * Math.PI * k) / ROUND;
    const [c, s] = [Math.cos(a) * radius, Math.sin(a) * radius];
    return [middle[0] + u[0] * c + v[0] * s, middle[1] + u[1] * c + v[1] * s, middle[2] + u[2] * c + v[2] * s];
  });

/** A round bar from one point to another; its outline is where its skin turns away from the eye. */
export const bar = (from: Pt3, to: Pt3, radius: number, look: Look): Shape => {
  const along = normalize(minus(to, from));
  if (Math.hypot(...along) === 0) return EMPTY;
  const u = normalize(crossed(Math.abs(along[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0], along));
  const v = crossed(along, u);
  const [a, b] = [ringAround(from, u, v, radius), ringAround(to, u, v, radius)];
  const next = (i: number) => (i + 1) % ROUND;
  const quads = a.map((p, i): Pt3[] => [p, a[next(i)]!, b[next(i)]!, b[i]!]);
  const normals = quads.map(normalOf);
  return {
    faces: [
      ...quads.map((quad) => face(quad, look.surface, null, 'round')),
      face([...a].reverse(), look.surface),
      face(b, look.surface),
    ],
    edges: [
      ...ringEdges(a, look.stroke),
      ...ringEdges(b, look.stroke),
      ...a.map((p, i) =>
        edge(p, b[i]!, look.stroke, { at: p, toward: normals[i]!, but: normals[(i + ROUND - 1) % ROUND]! }),
      ),
    ],
  };
};
const normalize = (p: Pt3): Pt3 => {
  const long = Math.hypot(...p);
  return long === 0 ? p : [p[0] / long, p[1] / long, p[2] / long];
};

/** A section, as points across and up, drawn out from one plan point to another. */
export const drawnOut = (section: readonly Pt[], from: Pt, to: Pt, look: Look): Shape => {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long === 0) return EMPTY;
  const left: Pt = [-(to[1] - from[1]) / long, (to[0] - from[0]) / long];
  const set = (p: Pt) => section.map(([across, z]): Pt3 => [p[0] + left[0] * across, p[1] + left[1] * across, z]);
  const [a, b] = [set(from), set(to)];
  const when = look.when ?? null;
  const next = (i: number) => (i + 1) % section.length;
  return {
    faces: a.map((p, i) => face([p, a[next(i)]!, b[next(i)]!, b[i]!], look.surface, when)),
    edges: [
      ...a.map((p, i) => edge(p, b[i]!, look.stroke, when)),
      ...ringEdges(a, look.stroke, when),
      ...ringEdges(b, look.stroke, when),
    ],
  };
};

/** A point of a place: shares of its width to the right, its depth to the back, its height. */
export const pointIn = ({ corner, right, size }: Place, x: number, y: number, z: number): Pt3 => [
  corner[0] + right[0] * size.width * x - right[1] * size.depth * y,
  corner[1] + right[1] * size.width * x + right[0] * size.depth * y,
  corner[2] + size.height * z,
];
export const footprint = (place: Place): Pt[] =>
  (
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as const
  ).map(([x, y]): Pt => {
    const [px, py] = pointIn(place, x, y, 0);
    return [px, py];
  });
