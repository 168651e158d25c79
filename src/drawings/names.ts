import type { Plan } from '../facts/result';
import { bounds, insideOrOn } from '../geometry/polygon';
import type { Area, Job, Option } from '../job/schema';
import { isKnown, type Pt } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import { type Label, type LabelPlace, SIDES, type TextLine } from './items';
import { canOutline, oldCanBecomes } from './oldWork';
import { CUT_IN, middle, type Stand, stands } from './things';

const SMALL = 11.5;
export const quiet = (text: string, tone: TextLine['tone']): TextLine => ({
  say: text,
  lettering: 'small',
  tone,
  size: SMALL,
});

/** Steps of the grid of places tried for a room's name, each way. */
const GRID = 14;

/** Places to try for a room's name: a grid of points inside it, the middle first. */
const roomPlaces = (area: Area): LabelPlace[] => {
  const box = bounds(area.outline);
  const center: Pt = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const grid: Pt[] = [];
  for (let i = 1; i < GRID; i++)
    for (let j = 1; j < GRID; j++)
      grid.push([box.minX + ((box.maxX - box.minX) * i) / GRID, box.minY + ((box.maxY - box.minY) * j) / GRID]);
  return grid
    .filter((p) => insideOrOn(p, area.outline))
    .map((at) => ({ at, far: Math.hypot(at[0] - center[0], at[1] - center[1]) }))
    .sort((a, b) => a.far - b.far || a.at[0] - b.at[0] || a.at[1] - b.at[1])
    .map(({ at }) => ({ at, side: 'middle', gap: 0 }));
};

export const nameRoom = (area: Area, small: boolean): Label => {
  const { now, after } = area.state;
  const cover = isKnown(after.cover) ? say.cover[after.cover] : say.coverUnknown;
  return {
    item: 'label',
    id: area.id,
    layer: 'names',
    lines: [
      { say: isKnown(after.use) ? after.use : say.useUnknown, lettering: 'capitals', tone: 'ink', size: 13 },
      ...(small || after.use === 'stair'
        ? []
        : [quiet(after.cover !== now.cover || after.use !== now.use ? say.after({ cover }) : cover, 'ink-3')]),
    ],
    rank: 4,
    must: true,
    lead: null,
    places: roomPlaces(area),
  };
};

export const around = (outline: readonly Pt[]): LabelPlace[] => {
  const box = bounds(outline);
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  return [
    { at: [x, y], side: 'middle', gap: 0 },
    { at: [x, box.minY], side: 'below', gap: 3 },
    { at: [x, box.maxY], side: 'above', gap: 3 },
    { at: [box.maxX, y], side: 'right', gap: 4 },
    { at: [box.minX, y], side: 'left', gap: 4 },
  ];
};

/** A thing's name, at the first of the places where it can be read. */
export const thingLabel = ({ obstacle }: Stand, places: readonly LabelPlace[]): Label => {
  const over = obstacle.bottom >= CUT_IN;
  return {
    item: 'label',
    id: obstacle.id,
    layer: 'names',
    lines: [quiet(over ? say.over({ thing: obstacle.kind }) : obstacle.kind, over ? 'ink-3' : 'ink-2')],
    rank: 5,
    must: false,
    lead: null,
    places,
  };
};

export const ringPlaces = (at: Pt, gaps: readonly number[]): LabelPlace[] =>
  gaps.flatMap((gap) => SIDES.map((side) => ({ at, side, gap })));

const namePanels = (job: Job, option: Option, plan: Plan | null): Label[] => {
  const fresh = canOutline(job, option.enclosure);
  const { spaces, id } = option.enclosure;
  return [
    ...(fresh
      ? [
          {
            item: 'label',
            id,
            layer: 'names',
            lines: [quiet(isKnown(spaces) ? say.newPanel({ spaces }) : say.newPanelSpacesUnknown, 'new')],
            rank: 1,
            must: true,
            lead: middle([fresh[2]!, fresh[3]!]),
            places: ringPlaces(middle([fresh[2]!, fresh[3]!]), [14, 26, 40, 60, 84, 110]),
          } as const,
        ]
      : []),
    ...job.enclosures.flatMap((old) => {
      const outline = canOutline(job, old);
      if (!outline) return [];
      const becomes = oldCanBecomes(option, plan, old.id);
      return [
        {
          item: 'label',
          id: old.id,
          layer: 'names',
          lines: [quiet(say.oldPanel[becomes], 'ink-3')],
          rank: 3,
          must: false,
          lead: middle([outline[2]!, outline[3]!]),
          places: ringPlaces(middle([outline[2]!, outline[3]!]), [10, 20, 32, 48, 66, 88]),
        } as const,
      ];
    }),
  ];
};

/** A thing's name in plan: in it where it fits, else beside it. */
export const nameThing = (stand: Stand): Label => thingLabel(stand, around(stand.outline));

/** A post is known by its shape; a stair that has its own area is named by that. */
export const isNamed = (job: Job, { obstacle }: Stand): boolean =>
  obstacle.kind !== 'post' && !(obstacle.kind === 'stair' && job.site.areas.some((a) => a.state.after.use === 'stair'));

export const drawNames = (job: Job, option: Option, plan: Plan | null, small: boolean): Label[] => [
  ...namePanels(job, option, plan),
  ...job.site.areas.map((area) => nameRoom(area, small)),
  ...stands(job.site, option.moves)
    .filter((stand) => isNamed(job, stand))
    .map(nameThing),
];
