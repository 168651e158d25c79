import type { Opening, Site } from '../job/schema';
import { faceOf, pointOnFace, STUD_WALL_IN, type WallFace, wallFaces } from '../job/site';
import { isKnown, knownOr, type Pt } from '../units/types';
import { type Arc, type Line, path, ring, stroke } from './items';
import { changeDash, jamb, OUTLINE_WALL_IN } from './walls';

const faceFor = (site: Site, opening: Opening): WallFace | undefined =>
  faceOf(wallFaces(site, opening.exists.after ? 'after' : 'now'), opening.on) ??
  faceOf(wallFaces(site, 'now'), opening.on);

const angleOf = (from: Pt, to: Pt): number => (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;

/** The leaf standing open at a right angle, and the quarter circle it sweeps. Nothing where hinge or swing is not known. */
const drawLeaf = (opening: Opening, face: WallFace, thickness: number): (Line | Arc)[] => {
  const { hinge, swings, width, on } = opening;
  if (!isKnown(hinge) || !isKnown(swings) || hinge === null || swings === null) return [];
  const toward = swings === on.face;
  const [at, other] = hinge === 'left' ? [on.left, on.left + width] : [on.left + width, on.left];
  const base = toward ? 0 : -thickness;
  const pin = pointOnFace(face, at, base);
  const open = pointOnFace(face, at, base + (toward ? width : -width));
  const shut = pointOnFace(face, other, base);
  const [a, b] = [angleOf(pin, open), angleOf(pin, shut)];
  const sweep = (((b - a) % 360) + 360) % 360;
  const [from, to] = sweep <= 180 ? [a, a + sweep] : [b, b + 360 - sweep];
  const dash = changeDash(opening.exists);
  return [
    path('openings', opening.id, [pin, open], stroke('object', 'ink-2', dash)),
    {
      item: 'arc',
      id: opening.id,
      layer: 'openings',
      center: pin,
      radius: width,
      from,
      to,
      stroke: stroke('thin', 'ink-3', dash),
      fill: null,
    },
  ];
};

/** Doors, windows and cased openings: the wall left open between two jambs. */
export const drawOpenings = (site: Site): (Line | Arc)[] =>
  site.openings
    .filter((o) => o.exists.now || o.exists.after)
    .flatMap((opening) => {
      const face = faceFor(site, opening);
      if (!face) return [];
      const thickness = knownOr(face.thickness, face.partition ? STUD_WALL_IN : OUTLINE_WALL_IN);
      const { left } = opening.on;
      const right = left + opening.width;
      const corner = (along: number, out: number): Pt => pointOnFace(face, along, out);
      const quad = [corner(left, 0), corner(right, 0), corner(right, -thickness), corner(left, -thickness)];
      const dash = changeDash(opening.exists);
      const gone = dash === 'away' ? 'away' : null;
      const jambs = [jamb(opening.id, quad[0]!, quad[3]!, gone), jamb(opening.id, quad[1]!, quad[2]!, gone)];
      if (opening.kind === 'window')
        return [
          ring('openings', opening.id, quad, stroke('object', 'ink', gone), 'paper'),
          path(
            'openings',
            opening.id,
            [corner(left, -thickness / 2), corner(right, -thickness / 2)],
            stroke('object', 'ink-2', gone),
          ),
          ...jambs,
        ];
      return [
        ring('openings', opening.id, quad, stroke('cut', 'paper'), 'paper'),
        ...jambs,
        ...drawLeaf(opening, face, thickness),
      ];
    });

/** The ends of door leaves standing open: a door that opens outward reaches beyond the walls. */
export const sweptBy = (site: Site): readonly Pt[] =>
  drawOpenings(site).flatMap((item) => (item.item === 'line' && !item.closed ? item.points : []));
