import type { Drawn, Label, Line, Mark } from '../drawings/items';
import { path, ring, SIDES, stroke } from '../drawings/items';
import { type Settled, settle } from '../drawings/settle';
import type { SolidMark } from '../drawings/solidMarks';
import type { SolidName } from '../drawings/solidNames';
import { pointIn } from '../drawings/solidShapes';
import type { SolidHouse } from '../drawings/solids';
import type { Pt, Pt3 } from '../units/types';

type Size = { readonly width: number; readonly height: number };
/** Page px of a house point, null where it is behind the eye. */
export type Project = (p: Pt3) => Pt | null;

/** Lettering of the view, px. */
const LETTER_PX = { desk: 12, field: 14 } as const;
/** In a picture this small things stand without their names: the work is lettered, the list has the rest. */
const NARROW_PX = 480;
const LEFT_OUT_RANK = 4;
const AROUND = [12, 24, 40, 60, 84];

const placesOf = ({ stands }: SolidName, at: Pt): Label['places'] => {
  const around = (gap: number) => SIDES.map((side) => ({ at, side, gap }));
  switch (stands) {
    case 'on':
      return [
        { at, side: 'middle', gap: 0 },
        ...SIDES.slice(2, 4).map((side) => ({ at, side, gap: 8 })),
        ...SIDES.slice(0, 2).map((side) => ({ at, side, gap: 14 })),
      ];
    case 'close':
      return around(5);
    case 'beside':
      return AROUND.flatMap(around);
  }
};

const labelOf = (name: SolidName, at: Pt, size: number): Label => ({
  item: 'label',
  id: name.id,
  layer: 'names',
  lines: [{ ...name.line, size }],
  rank: name.rank,
  must: name.must,
  lead: name.stands === 'on' ? null : at,
  places: placesOf(name, at),
});

/** What lettering keeps off: fronts of panels and boxes, and new cable. */
const inkOf = ({ solids, cables }: SolidHouse, project: Project): Line[] => [
  ...solids.flatMap(({ id, kind, body }): Line[] => {
    if (!body || kind === 'thing') return [];
    const corners = (
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ] as const
    ).map(([x, z]) => project(pointIn(body.place, x, 0, z)));
    return corners.every((p): p is Pt => p !== null) ? [ring('new work', id, corners, stroke('profile', 'new'))] : [];
  }),
  ...cables
    .filter((c) => c.laid === 'new' || c.laid === 'drawn back')
    .flatMap(({ id, course }): Line[] => {
      const points = course.map(project).filter((p): p is Pt => p !== null);
      return points.length > 1 ? [path('new routes', id, points, stroke('new', 'new'))] : [];
    }),
];

/** One stretch of ink for cables that run over each other. */
const once = (lines: readonly Line[]): Line[] => [
  ...new Map(lines.map((l) => [l.points.map((p) => p.map(Math.round).join()).join(' '), l])).values(),
];

/** Lettering and keys in the picture as it is now, kept off each other. */
export const letterPicture = (
  names: readonly SolidName[],
  marks: readonly SolidMark[],
  house: SolidHouse,
  project: Project,
  size: Size,
  hand: keyof typeof LETTER_PX,
): Settled => {
  const inside = ([x, y]: Pt) => x > 0 && y > 0 && x < size.width && y < size.height;
  const items: Drawn[] = [
    ...once(inkOf(house, project)),
    ...names.flatMap((name) => {
      const at = project(name.at);
      const left = size.width < NARROW_PX && name.rank >= LEFT_OUT_RANK;
      return at && inside(at) && !left ? [labelOf(name, at, LETTER_PX[hand])] : [];
    }),
    ...marks.flatMap((mark): Mark[] => {
      const at = project(mark.at);
      return at && inside(at)
        ? [{ item: 'mark', id: String(mark.number), layer: 'marks', effect: mark.effect, number: mark.number, at }]
        : [];
    }),
  ];
  return settle(
    { items, extent: { minX: 0, minY: 0, maxX: size.width, maxY: size.height } },
    { width: size.width, height: size.height, scale: 1, to: (p) => p },
  );
};
