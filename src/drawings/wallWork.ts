import type { Plan } from '../facts/result';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace } from '../job/site';
import { boxSize } from '../standards/boxSize';
import { byId } from '../units/order';
import { isKnown, type Pt, type Pt3 } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import { courseLength, piece, risesAway } from './courses';
import { leavesWall, seeCourse, seePoint } from './elevation';
import { type Drawn, type Label, type LabelPlace, type Line, path, ring, SIDES, type Sign, stroke } from './items';
import { quiet } from './names';
import { boxNames, countLabels, coursesOf, newFeederCourse } from './newWork';
import { besides, bundles, oldCanBecomes } from './oldWork';
import { type Stretch, trunksOf } from './trunks';
import { type Unrolled, wallOf } from './unroll';
import { box } from './wallThings';

/** A can on its wall in the wall drawing: lower left corner first; null where its wall is not drawn. */
export const canOnWall = (walls: readonly Unrolled[], enclosure: Enclosure): Pt[] | null => {
  const wall = wallOf(walls, enclosure.on);
  if (!wall) return null;
  const { left, right, bottom, top } = enclosureOnFace(enclosure);
  return box(wall.at + left, wall.at + right, bottom, top);
};

const everywhere = (job: Job, walls: readonly Unrolled[], course: readonly Pt3[]): Pt[][] =>
  walls.flatMap((wall) => seeCourse(job.site, wall, course));

export const drawWallOldWork = (job: Job, option: Option, plan: Plan | null, walls: readonly Unrolled[]): Drawn[] => {
  const runs = bundles(job, plan).flatMap(({ id, course, down }): Drawn[] => {
    const stays = Math.min(...down);
    const lay = (from: number, to: number, dash: 'away' | null): Line[] =>
      everywhere(job, walls, piece(course, from, to)).flatMap((points) =>
        besides(down.length).map((b) => path('old work', id, points, stroke('old', 'old', dash), b)),
      );
    const end = risesAway(course) ? seePoint(job.site, walls, course.at(-1)!) : null;
    return [
      ...lay(0, stays, 'away'),
      ...lay(stays, courseLength(course), null),
      ...(end ? [{ item: 'sign', sign: 'from above', id, layer: 'old work', at: end, turn: 0 } as const] : []),
    ];
  });
  const gone = plan?.feeder.way === 'replaced';
  const feeder = everywhere(job, walls, job.feeder.path).map((points) =>
    path('old work', 'feeder', points, stroke(gone ? 'old' : 'object', 'old', gone ? 'away' : null)),
  );
  const cans = byId(job.enclosures).flatMap((enclosure): Drawn[] => {
    const outline = canOnWall(walls, enclosure);
    if (!outline) return [];
    const becomes = oldCanBecomes(option, plan, enclosure.id);
    return [
      ring('old work', enclosure.id, outline, stroke('object', 'old', becomes === 'removed' ? 'away' : null), 'paper'),
      nameCan(enclosure.id, say.oldPanel[becomes], outline, 'ink-3', 3),
    ];
  });
  return [...runs, ...feeder, ...cans];
};

const nameCan = (id: string, text: string, outline: readonly Pt[], tone: 'new' | 'ink-3', rank: number): Label => {
  const [a, b, c] = outline as [Pt, Pt, Pt, Pt];
  const middle: Pt = [(a[0] + b[0]) / 2, (b[1] + c[1]) / 2];
  const low: Pt = [middle[0], a[1]];
  const places: LabelPlace[] = [
    ...[6, 20, 34, 60, 90].flatMap((gap): LabelPlace[] => [
      { at: [b[0], middle[1]], side: 'right', gap },
      { at: [a[0], middle[1]], side: 'left', gap },
      { at: low, side: 'below', gap },
      { at: [b[0], a[1]], side: 'below right', gap },
      { at: [a[0], a[1]], side: 'below left', gap },
      { at: c, side: 'above right', gap },
    ]),
  ];
  return {
    item: 'label',
    id,
    layer: 'names',
    lines: [quiet(text, tone)],
    rank,
    must: tone === 'new',
    lead: tone === 'new' ? [middle[0], c[1]] : middle,
    ...(tone === 'new' ? {} : { ofThing: true }),
    places,
  };
};

/** The new panel in elevation: solid, with the line of its door. */
const drawPanel = (walls: readonly Unrolled[], { enclosure }: Option): Drawn[] => {
  const outline = canOnWall(walls, enclosure);
  if (!outline) return [];
  const [[l, low], , [r, high]] = outline as [Pt, Pt, Pt, Pt];
  const inset = Math.min(r - l, high - low) / 7;
  const text = isKnown(enclosure.spaces) ? say.newPanel({ spaces: enclosure.spaces }) : say.newPanelSpacesUnknown;
  return [
    ring('new work', enclosure.id, outline, stroke('profile', 'new'), 'new'),
    ring(
      'new work',
      `${enclosure.id} door`,
      box(l + inset, r - inset, low + inset, high - inset),
      stroke('thin', 'on-new'),
    ),
    nameCan(enclosure.id, text, outline, 'new', 1),
  ];
};

/** New cable that comes down the wall or along it, counted where cables run together; a dot where it goes out into the room. */
const drawWallRoutes = (job: Job, plan: Plan, walls: readonly Unrolled[]): Drawn[] => {
  const stretches: Stretch[] = [];
  for (const { cable, course } of coursesOf(plan))
    for (const points of everywhere(job, walls, course))
      points.slice(1).forEach((to, i) => {
        stretches.push({ cable, from: points[i]!, to });
      });
  const trunks = trunksOf(stretches);
  const out = new Map(
    coursesOf(plan)
      .flatMap(({ course }) => walls.flatMap((wall) => leavesWall(job.site, wall, course)))
      .map((at) => [at.map((n) => n.toFixed(1)).join(), at]),
  );
  return [
    ...[...out.values()].map(
      (at): Sign => ({ item: 'sign', sign: 'into the room', id: 'into the room', layer: 'new work', at, turn: 0 }),
    ),
    ...trunks.map((t) => path('new routes', t.cables.join(' '), [t.from, t.to], stroke('new', 'new'))),
    ...countLabels(trunks),
  ];
};

/** A box on the wall to scale, so that boxes of a bank are seen side by side. */
const outlineOf = (b: Plan['boxes'][number], [x, z]: Pt): Line[] => {
  const size = boxSize(b.size);
  if (!size) return [];
  const [right, up] = [size.width / 2, size.height / 2];
  return [ring('new work', b.id, box(x - right, x + right, z - up, z + up), stroke('thin', 'new'))];
};

const drawWallBoxes = (job: Job, plan: Plan, walls: readonly Unrolled[]): Drawn[] => {
  const names = boxNames(plan);
  return plan.boxes.flatMap((b): Drawn[] => {
    const name = names.get(b.id);
    const at = name === undefined ? null : seePoint(job.site, walls, b.at);
    if (name === undefined || at === null) return [];
    return [
      ...(b.on === 'wall' ? outlineOf(b, at) : []),
      { item: 'sign', sign: 'splice box', id: b.id, layer: 'new work', at, turn: 0 },
      {
        item: 'label',
        id: b.id,
        layer: 'names',
        lines: [{ say: name, lettering: 'figure', tone: 'new', size: 12 }],
        rank: 1,
        must: true,
        lead: at,
        places: [8, 20, 34].flatMap((gap) => SIDES.map((side) => ({ at, side, gap }))),
      },
    ];
  });
};

const drawWallFeeder = (job: Job, plan: Plan, walls: readonly Unrolled[]): Drawn[] =>
  everywhere(job, walls, newFeederCourse(plan)).flatMap((points) => [
    path('new routes', 'feeder', points, stroke('feeder', 'new')),
    path('new routes', 'feeder', points, stroke('object', 'paper')),
  ]);

/** Raceways that are already there: two thin lines. */
export const drawSleeves = (job: Job, walls: readonly Unrolled[]): Line[] =>
  job.site.sleeves.flatMap((s) =>
    everywhere(job, walls, [s.from, s.to]).flatMap((points) =>
      [-1.5, 1.5].map((b) => path('old work', s.id, points, stroke('thin', 'ink-3'), b)),
    ),
  );

export const drawWallNewWork = (job: Job, option: Option, plan: Plan | null, walls: readonly Unrolled[]): Drawn[] => [
  ...drawPanel(walls, option),
  ...(plan
    ? [...drawWallFeeder(job, plan, walls), ...drawWallRoutes(job, plan, walls), ...drawWallBoxes(job, plan, walls)]
    : []),
];
