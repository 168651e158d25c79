import type { Plan } from '../facts/result';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, wallFaces } from '../job/site';
import { byId } from '../units/order';
import { isKnown } from '../units/types';
import { boxPlace } from './boxPlace';
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
