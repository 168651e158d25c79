import type { Obstacle, Option, Site } from '../job/schema';
import { boxOutline } from '../job/site';
import type { In, Pt } from '../units/types';
import { type Arc, circle, type Line, path, ring, type Stroke, stroke } from './items';
import { changeDash } from './walls';

/** Things that start above this height hang over the drawing's cut: dashed, nothing filled. Our own line; the trade cuts a plan near 4 ft. */
export const CUT_IN = 48;
/** One step of a stair as drawn. Common practice, no source. */
const TREAD_IN = 10;

/** Where a thing stands in an option, and whether the option moved it there. */
export interface Stand {
  readonly obstacle: Obstacle;
  readonly outline: readonly Pt[];
  readonly moved: boolean;
}
export const outlineAt = (o: Obstacle, corner: Pt): Pt[] => boxOutline(corner, o.size.width, o.size.depth, o.turn);

/** Everything that stands now or after the finishing, with the option's moves; what it takes away altogether is left out. */
export const stands = (site: Site, moves: Option['moves']): Stand[] =>
  site.obstacles
    .filter((o) => o.exists.now || o.exists.after)
    .flatMap((obstacle) => {
      const to = moves.find((m) => m.obstacle === obstacle.id)?.to;
      if (to === 'away') return [];
      return [{ obstacle, outline: outlineAt(obstacle, to ?? obstacle.corner), moved: to !== undefined }];
    });

export const middle = (points: readonly Pt[]): Pt => [
  points.reduce((n, p) => n + p[0], 0) / points.length,
  points.reduce((n, p) => n + p[1], 0) / points.length,
];
const between = (a: Pt, b: Pt, t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

const treads = ({ obstacle, outline }: Stand, s: Stroke): Line[] => {
  const { width, depth } = obstacle.size;
  const [a, b, c, d] = outline as [Pt, Pt, Pt, Pt];
  const sides: [Pt, Pt, Pt, Pt] = width >= depth ? [a, b, d, c] : [a, d, b, c];
  const count = Math.max(2, Math.round(Math.max(width, depth) / TREAD_IN));
  return Array.from({ length: count - 1 }, (_, k) =>
    path(
      'things',
      obstacle.id,
      [between(sides[0], sides[1], (k + 1) / count), between(sides[2], sides[3], (k + 1) / count)],
      s,
    ),
  );
};

/** The strokes inside a thing's outline by which it is known. */
const inside = (stand: Stand, s: Stroke): (Line | Arc)[] => {
  const { obstacle, outline } = stand;
  const [a, b, c, d] = outline as [Pt, Pt, Pt, Pt];
  const reach: In = Math.min(obstacle.size.width, obstacle.size.depth) / 2;
  switch (obstacle.kind) {
    case 'water heater':
    case 'tank':
    case 'sump':
      return [circle('things', obstacle.id, middle(outline), reach, s)];
    case 'sink':
      return [circle('things', obstacle.id, middle(outline), reach * 0.7, s)];
    case 'furnace':
    case 'boiler':
    case 'flue':
    case 'chimney':
      return [path('things', obstacle.id, [a, c], s), path('things', obstacle.id, [b, d], s)];
    case 'stair':
      return treads(stand, s);
    default:
      return [];
  }
};

const drawStand = (stand: Stand): (Line | Arc)[] => {
  const { obstacle, outline } = stand;
  if (obstacle.bottom >= CUT_IN) return [ring('overhead', obstacle.id, outline, stroke('object', 'ink-3', 'overhead'))];
  const dash = changeDash(obstacle.exists);
  if (obstacle.kind === 'post') return [ring('things', obstacle.id, outline, stroke('thin', 'ink', dash), 'ink')];
  const edge = stroke(obstacle.stored ? 'thin' : 'object', 'ink-2', dash);
  return [
    ring('things', obstacle.id, outline, edge, obstacle.stored || dash ? null : 'appliance'),
    ...inside(stand, stroke('thin', 'ink-3', dash)),
  ];
};

/** Things in the room; what an option moves or takes away leaves a dashed outline where it stood. */
export const drawThings = (site: Site, moves: Option['moves']): (Line | Arc)[] => [
  ...moves.flatMap((m) => {
    const obstacle = site.obstacles.find((o) => o.id === m.obstacle);
    return obstacle
      ? [ring('things', obstacle.id, outlineAt(obstacle, obstacle.corner), stroke('old', 'old', 'away'))]
      : [];
  }),
  ...stands(site, moves).flatMap(drawStand),
];
