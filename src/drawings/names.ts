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
    rank: 0,
    must: true,
    lead: null,
    places: roomPlaces(area),
  };
};

/** Points of the paper between a thing and a name beside it, tried in this order. */
const BESIDE = [3, 14, 28, 44, 62, 84];

/** Places for a thing's name: in its outline, else around it, nearest first. */
const around = (outline: readonly Pt[]): LabelPlace[] => {
  const { minX, minY, maxX, maxY } = bounds(outline);
  const at = (across: number, up: number): Pt => [minX + (maxX - minX) * across, minY + (maxY - minY) * up];
  const inside = [
    at(0.5, 0.5),
    at(0.5, 0.75),
    at(0.5, 0.25),
    at(0.5, 0.88),
    at(0.5, 0.12),
    at(0.75, 0.5),
    at(0.25, 0.5),
  ];
  const beside: readonly (readonly [Pt, LabelPlace['side']])[] = [
    [at(0.5, 0), 'below'],
    [at(0.5, 1), 'above'],
    [at(1, 0.5), 'right'],
    [at(0, 0.5), 'left'],
    [at(1, 1), 'above right'],
    [at(0, 1), 'above left'],
    [at(1, 0), 'below right'],
    [at(0, 0), 'below left'],
  ];
  return [
    ...inside.map((p): LabelPlace => ({ at: p, side: 'middle', gap: 0 })),
    ...BESIDE.flatMap((gap) => beside.map(([p, side]): LabelPlace => ({ at: p, side, gap }))),
  ];
};

/** A thing's name in or beside its outline in the drawing, with a thin line to it from outside. */
export const thingLabel = ({ obstacle }: Stand, outline: readonly Pt[]): Label => {
  const over = obstacle.bottom >= CUT_IN;
  return {
    item: 'label',
    id: obstacle.id,
    layer: 'names',
    lines: [quiet(over ? say.over({ thing: obstacle.kind }) : obstacle.kind, over ? 'ink-3' : 'ink-2')],
    rank: 5,
    must: false,
    lead: middle(outline),
    ofThing: true,
    places: around(outline),
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
            ofThing: true,
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
          ofThing: true,
          places: ringPlaces(middle([outline[2]!, outline[3]!]), [10, 20, 32, 48, 66, 88]),
        } as const,
      ];
    }),
  ];
};

/** A thing's name in plan: in it where it fits, else beside it. */
export const nameThing = (stand: Stand): Label => thingLabel(stand, stand.outline);

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
