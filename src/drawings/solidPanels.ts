import type { Box, Plan } from '../facts/result';
import { dot, subtract } from '../geometry/vector';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, type WallFace, wallFaces } from '../job/site';
import { byId } from '../units/order';
import { type In, isKnown, type Pt, type Size } from '../units/types';
import { stroke } from './items';
import { boxNames } from './newWork';
import { oldCanBecomes } from './oldWork';
import { at, EMPTY, edge, pointIn } from './solidShapes';
import type { Edge, Place, Solid } from './solids';

/** Where breakers are behind the door, as shares of the can. Our own drawing of a plain door. */
const BREAKERS = { left: 0.24, middle: 0.5, right: 0.76, bottom: 0.14, top: 0.8 } as const;

/** Where a can hangs; null when its wall does not exist. */
export const canPlace = (job: Job, enclosure: Enclosure): Place | null => {
  const face = faceOf(wallFaces(job.site, 'after'), enclosure.on) ?? faceOf(wallFaces(job.site, 'now'), enclosure.on);
  if (!face) return null;
  const on = enclosureOnFace(enclosure);
  return { corner: at(pointOnFace(face, on.left, on.out), on.bottom), right: face.along, size: enclosure.size };
};

/** On the front, a hair before it: two columns of breakers, as many rows as the spaces make. */
const breakers = (place: Place, spaces: number): Edge[] => {
  const rows = Math.ceil(spaces / 2);
  const high = ((BREAKERS.top - BREAKERS.bottom) * place.size.height) / rows;
  const on = (x: number, row: number) =>
    pointIn(place, x, -0.01, BREAKERS.bottom + ((BREAKERS.top - BREAKERS.bottom) * row) / rows);
  const line = stroke('hair', 'on-new');
  const columns = [BREAKERS.left, BREAKERS.middle, BREAKERS.right];
  return [
    ...Array.from({ length: rows + 1 }, (_, r) => edge(on(BREAKERS.left, r), on(BREAKERS.right, r), line, null, high)),
    ...columns.map((x) => edge(on(x, 0), on(x, rows), line, null, high)),
  ];
};

export const solidNewPanel = (job: Job, option: Option): Solid[] => {
  const { enclosure } = option;
  const place = canPlace(job, enclosure);
  if (!place) return [];
  return [
    {
      id: enclosure.id,
      kind: 'new panel',
      faces: [],
      edges: isKnown(enclosure.spaces) ? breakers(place, enclosure.spaces) : [],
      body: {
        model: 'panel',
        place,
        surface: 'new',
        outline: stroke('profile', 'ink'),
        detail: stroke('thin', 'on-new'),
        faint: false,
      },
    },
  ];
};

export const solidOldPanels = (job: Job, option: Option, plan: Plan | null): Solid[] =>
  byId(job.enclosures).flatMap((enclosure): Solid[] => {
    const place = canPlace(job, enclosure);
    if (!place) return [];
    const away = oldCanBecomes(option, plan, enclosure.id) === 'removed';
    const line = stroke(away ? 'old' : 'object', 'old', away ? 'away' : null);
    return [
      {
        id: enclosure.id,
        kind: 'old panel',
        ...EMPTY,
        body: {
          model: 'panel',
          place,
          surface: 'old',
          outline: line,
          detail: away ? line : stroke('thin', 'old'),
          faint: away,
        },
      },
    ];
  });

/** Trade sizes as the catalogue writes them: `4-11/16 x 2-1/8` is square on that side, `6x6x4` width, height, depth. */
export const boxSize = (size: string): Size | null => {
  const figures = size.split(/\s*x\s*/).map(inches);
  if (figures.some((n) => !(n > 0))) return null;
  const [width, second, third] = figures;
  if (figures.length === 2) return { width: width!, height: width!, depth: second! };
  return figures.length === 3 ? { width: width!, height: second!, depth: third! } : null;
};
const inches = (text: string): In => {
  const found = /^(\d+(?:\.\d+)?)(?:-(\d+)\/(\d+))?$/.exec(text);
  return found ? Number(found[1]) + (found[2] ? Number(found[2]) / Number(found[3]) : 0) : Number.NaN;
};
/** A box whose size cannot be read is drawn this large. Common practice, no source. */
const SOME_BOX: Size = { width: 4, height: 4, depth: 2.125 };
const ON_FACE_IN = 1 / 32;

/** The face a point lies on, if it lies on one. */
const faceUnder = (faces: readonly WallFace[], p: Pt): WallFace | undefined =>
  faces.find((f) => {
    const along = dot(subtract(p, f.from), f.along);
    return (
      Math.abs(dot(subtract(p, f.from), f.into)) < ON_FACE_IN && along > -ON_FACE_IN && along < f.length + ON_FACE_IN
    );
  });

/** A box on a wall has its back there, in the middle of it the plan's point; elsewhere the point is its middle. */
export const boxPlace = (job: Job, box: Box): Place => {
  const size = boxSize(box.size) ?? SOME_BOX;
  const [x, y, z] = box.at;
  const face = faceUnder(wallFaces(job.site, 'after'), [x, y]);
  const right: Pt = face?.along ?? [1, 0];
  const into: Pt = face?.into ?? [0, -1];
  const out = face ? size.depth : size.depth / 2;
  return {
    corner: [
      x - (right[0] * size.width) / 2 + into[0] * out,
      y - (right[1] * size.width) / 2 + into[1] * out,
      z - size.height / 2,
    ],
    right,
    size,
  };
};

export const solidBoxes = (job: Job, plan: Plan): Solid[] => {
  const names = boxNames(plan);
  return plan.boxes
    .filter((b) => names.has(b.id))
    .map(
      (box): Solid => ({
        id: box.id,
        kind: 'box',
        ...EMPTY,
        body: {
          model: 'splice-box',
          place: boxPlace(job, box),
          surface: 'new',
          outline: stroke('object', 'ink'),
          detail: stroke('thin', 'on-new'),
          faint: false,
        },
      }),
    );
};
