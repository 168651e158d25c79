import type { Leg, Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { AFCI_EXEMPT_IN } from '../standards/editionsAfci';
import { EDITIONS, type Id, type In, type Pt, type Pt3 } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import { boxPlace } from './boxPlace';
import { courseLength, inPlan, piece } from './courses';
import { type Drawn, type Label, type Line, path, ring, SIDES, stroke } from './items';
import { canOutline } from './oldWork';
import { footprint } from './solidShapes';
import { longestOfEach, type Stretch, type Trunk, trunksOf } from './trunks';

const between = (a: Pt, b: Pt, t: number): Pt => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** The new panel: solid, with the line of its door. */
export const drawNewPanel = (job: Job, option: Option): Line[] => {
  const outline = canOutline(job, option.enclosure);
  if (!outline) return [];
  const { id } = option.enclosure;
  const [a, b, c, d] = outline as [Pt, Pt, Pt, Pt];
  return [
    ring('new work', id, outline, stroke('profile', 'new'), 'new'),
    path('new work', id, [between(a, d, 0.6), between(b, c, 0.6)], stroke('thin', 'on-new')),
  ];
};

const NOT_DRAWN: readonly Leg['by'][] = ['inside box', 'inside panel'];

/** The legs of each home run that are seen, joined where one goes on from the other. */
export const coursesOf = (plan: Plan): { readonly cable: Id; readonly course: readonly Pt3[] }[] =>
  plan.runs.flatMap(({ homeRun, legs }) => {
    const courses: Pt3[][] = [];
    for (const { from, to, by } of legs) {
      if (NOT_DRAWN.includes(by)) continue;
      const last = courses.at(-1);
      if (last?.at(-1)?.join() === from.join()) last!.push(to);
      else courses.push([from, to]);
    }
    return courses.map((course) => ({ cable: homeRun, course }));
  });
const stretchesOf = (cable: Id, legs: readonly Leg[]): Stretch[] =>
  legs
    .filter((leg) => !NOT_DRAWN.includes(leg.by))
    .map((leg) => ({ cable, from: [leg.from[0], leg.from[1]], to: [leg.to[0], leg.to[1]] }));

/** What is laid anew for each home run: new cable, and old cable that is drawn back into a new course. */
export const newTrunks = (plan: Plan): Trunk[] => trunksOf(plan.runs.flatMap((r) => stretchesOf(r.homeRun, r.legs)));

const angle = (t: Trunk): number => (Math.atan2(t.to[1] - t.from[1], t.to[0] - t.from[0]) * 180) / Math.PI;

/** A slash and a figure say how many cables run in a trunk, once for each set of them. */
export const countLabels = (trunks: readonly Trunk[]): Drawn[] =>
  longestOfEach(trunks).flatMap((trunk, i): Drawn[] => {
    if (trunk.cables.length < 2) return [];
    const id = `count-${i}`;
    const at = between(trunk.from, trunk.to, 0.5);
    const label: Label = {
      item: 'label',
      id,
      layer: 'names',
      lines: [{ say: String(trunk.cables.length), lettering: 'figure', tone: 'new', size: 12 }],
      rank: 2,
      must: false,
      lead: null,
      places: (['above', 'right', 'below', 'left'] as const).map((side) => ({ at, side, gap: 5 })),
    };
    return [{ item: 'sign', sign: 'slash', id, layer: 'new routes', at, turn: angle(trunk) }, label];
  });

/** A row of cables is one strong line. */
export const drawRoutes = (plan: Plan): Drawn[] => {
  const trunks = newTrunks(plan);
  return [
    ...trunks.map((t) => path('new routes', t.cables.join(' '), [t.from, t.to], stroke('new', 'new'))),
    ...countLabels(trunks),
  ];
};

/** Rows by their short names, in the order of the plan. */
export const rowNames = (plan: Plan): ReadonlyMap<Id, string> =>
  new Map(plan.rows.map((row, i) => [row.id, `R${i + 1}`] as const));

/** The name of each row that is built as one, at its middle, as `see` puts it in the drawing; cables laid loose together have none. */
export const tagRows = (plan: Plan, see: (p: Pt3) => Pt | null): Label[] => {
  const names = rowNames(plan);
  return plan.rows.flatMap((row): Label[] => {
    const half = courseLength(row.path) / 2;
    const middle = piece(row.path, half, half + 0.01)[0] ?? row.path[0];
    const at = middle && see(middle);
    if (!at || row.by === 'loose') return [];
    return [
      {
        item: 'label',
        id: row.id,
        layer: 'names',
        lines: [{ say: names.get(row.id)!, lettering: 'figure', tone: 'new', size: 11 }],
        rank: 3,
        must: false,
        lead: null,
        places: [6, 16].flatMap((gap) => SIDES.map((side) => ({ at, side, gap }))),
      },
    ];
  });
};

/** The shortest extension any code year still exempts from arc-fault protection: 6 ft in all of them. */
const EXEMPT_IN: In = Math.min(...EDITIONS.map((year) => AFCI_EXEMPT_IN[year]));

/** Where the sixth foot of a longer extension ends, with the direction the cable has there. */
export const limitsOf = (plan: Plan): { readonly from: Pt3; readonly at: Pt3; readonly cable: Id }[] =>
  plan.runs.flatMap((run) => {
    if (run.way === 'new home run' || run.codeLength <= EXEMPT_IN) return [];
    const legs = run.legs.filter((leg) => leg.cable === 'new' && !NOT_DRAWN.includes(leg.by));
    const course = legs.flatMap((leg, i) => (i === 0 ? [leg.from, leg.to] : [leg.to]));
    const upTo = piece(course, 0, EXEMPT_IN);
    const at = upTo.at(-1);
    const from = upTo.at(-2);
    return at && from && courseLength(course) > EXEMPT_IN ? [{ from, at, cable: run.homeRun }] : [];
  });

/** Across each longer extension, where its first 6 ft end: one line for cables that reach it at the same place. */
export const drawLimits = (plan: Plan, see: (p: Pt3) => Pt | null): Drawn[] => {
  const seen = new Set<string>();
  return limitsOf(plan).flatMap(({ from, at }): Drawn[] => {
    const [a, b] = [see(from), see(at)];
    const key = b?.map((n) => Math.round(n / 2)).join() ?? '';
    if (!a || !b || seen.has(key)) return [];
    seen.add(key);
    const turn = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
    const id = `6 ft ${key}`;
    return [
      { item: 'sign', sign: 'limit', id, layer: 'new work', at: b, turn },
      {
        item: 'label',
        id,
        layer: 'names',
        lines: [{ say: say.sixFeet, lettering: 'small', tone: 'ink', size: 11 }],
        rank: 3,
        must: false,
        lead: null,
        places: [8, 16].flatMap((gap) => SIDES.map((side) => ({ at: b, side, gap }))),
      },
    ];
  });
};

/** One home run by itself, when it is selected. */
export const drawOneRun = (plan: Plan, homeRun: Id): Line[] => {
  const legs = plan.runs.find((r) => r.homeRun === homeRun)?.legs ?? [];
  const points = inPlan(legs.flatMap((leg, i) => (i === 0 ? [leg.from, leg.to] : [leg.to])));
  return points.length < 2 ? [] : [path('marks', homeRun, points, stroke('profile', 'ink'))];
};

/** The course of what is new of the feeder. */
export const newFeederCourse = (plan: Plan): Pt3[] => {
  if (plan.feeder.way === 'kept') return [];
  const legs = plan.feeder.legs.filter((leg) => leg.cable === 'new' && !NOT_DRAWN.includes(leg.by));
  return legs.flatMap((leg, i) => (i === 0 ? [leg.from, leg.to] : [leg.to]));
};

/** The feeder where it is laid anew: a heavy line with a paper core. */
export const drawNewFeeder = (plan: Plan): Line[] => {
  const points = inPlan(newFeederCourse(plan));
  if (points.length < 2) return [];
  return [
    path('new routes', 'feeder', points, stroke('feeder', 'new')),
    path('new routes', 'feeder', points, stroke('object', 'paper')),
  ];
};

/** Splice boxes by their short names, in the order of the plan; old cans and the new panel are drawn as themselves. */
export const boxNames = (plan: Plan): ReadonlyMap<Id, string> =>
  new Map(
    plan.boxes.filter((b) => b.on !== 'splice can' && b.on !== 'new panel').map((b, i) => [b.id, `S${i + 1}`] as const),
  );

/** Every splice box with its outline to scale: boxes of a bank lie side by side. */
export const drawBoxes = (job: Job, plan: Plan): Drawn[] => {
  const names = boxNames(plan);
  return plan.boxes
    .filter((b) => names.has(b.id))
    .flatMap((box): Drawn[] => {
      const at: Pt = [box.at[0], box.at[1]];
      return [
        ring('new work', box.id, footprint(boxPlace(job, box)), stroke('thin', 'new')),
        { item: 'sign', sign: 'splice box', id: box.id, layer: 'new work', at, turn: 0 },
        {
          item: 'label',
          id: box.id,
          layer: 'names',
          lines: [{ say: names.get(box.id)!, lettering: 'figure', tone: 'new', size: 12 }],
          rank: 1,
          must: true,
          lead: at,
          places: [8, 20, 34].flatMap((gap) => SIDES.map((side) => ({ at, side, gap }))),
        },
      ];
    });
};
