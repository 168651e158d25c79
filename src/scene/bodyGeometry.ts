import { footprint, normalOf, pointIn, prism, sideOf } from '../drawings/solidShapes';
import type { Body, Place, Side } from '../drawings/solids';
import type { Pt3 } from '../units/types';
import type { FaceBuffer } from './faceGeometry';
import type { LineBuffer } from './lineGeometry';
import type { Model } from './models';

type Put = (x: number, y: number, z: number) => Pt3;
const triple = (list: readonly number[], i: number): readonly [number, number, number] => [
  list[i * 3]!,
  list[i * 3 + 1]!,
  list[i * 3 + 2]!,
];

/** A direction of the unit model in the house: stretched the other way than points are. */
const directionIn = ({ right, size }: Place, [x, y, z]: readonly [number, number, number]): Pt3 => {
  const [u, v, w] = [x / size.width, y / size.depth, z / size.height];
  const n: Pt3 = [right[0] * u - right[1] * v, right[1] * u + right[0] * v, w];
  const long = Math.hypot(...n) || 1;
  return [n[0] / long, n[1] / long, n[2] / long];
};

/** Skins of a body as triangles at `put`, toned by where they look in the house. */
export const bodyFaces = (body: Body, model: Model | undefined, to: FaceBuffer, put: Put): void => {
  const { place, surface } = body;
  if (!model) {
    // a plain block, in shares of the place like a model
    const unit: Place = { corner: [0, 0, 0], right: [1, 0], size: { width: 1, depth: 1, height: 1 } };
    for (const { points } of prism(footprint(unit), 0, 1, { surface, stroke: body.outline }).faces) {
      const set = points.map((p) => put(...p));
      const side = sideOf(directionIn(place, normalOf(points)));
      to.triangle([set[0]!, set[1]!, set[2]!], surface, side, null);
      to.triangle([set[0]!, set[2]!, set[3]!], surface, side, null);
    }
    return;
  }
  for (const skin of ['flat', 'round', 'dark'] as const) {
    const { points, normals } = model.skins[skin];
    for (let i = 0; i < points.length / 3; i += 3) {
      const side: Side =
        skin === 'round' ? 'round' : skin === 'dark' ? 'down' : sideOf(directionIn(place, triple(normals, i)));
      const corners = [i, i + 1, i + 2].map((k) => put(...triple(points, k)));
      to.triangle(corners, surface, side, null);
    }
  }
};

/** Edges of a body in the house. */
export const bodyEdges = (body: Body, model: Model | undefined, to: LineBuffer): void => {
  const { place, outline, detail } = body;
  if (!model) {
    const z = place.corner[2];
    for (const edge of prism(footprint(place), z, z + place.size.height, { surface: body.surface, stroke: outline })
      .edges)
      to.edge(edge);
    return;
  }
  const at = (list: readonly number[], i: number) => pointIn(place, ...triple(list, i));
  for (const [ink, pen] of [
    ['outline', outline],
    ['detail', detail],
  ] as const) {
    const points = model.inks[ink];
    for (let i = 0; i < points.length / 3; i += 2) to.line(at(points, i), at(points, i + 1), pen);
  }
  const { points, toward, but } = model.turned;
  for (let i = 0; i < points.length / 3; i += 2) {
    const from = at(points, i);
    to.line(from, at(points, i + 1), outline, {
      at: from,
      toward: directionIn(place, triple(toward, i)),
      but: directionIn(place, triple(but, i)),
    });
  }
};
