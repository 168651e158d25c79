import type { Leg, Plan } from '../facts/result';
import type { Job } from '../job/schema';
import { visibleRun } from '../job/site';
import type { Cable } from '../standards/cable';
import { cableDiameter } from '../standards/cableDimensions';
import { byId } from '../units/order';
import type { Id, In, Pt3, U } from '../units/types';
import { courseLength, piece } from './courses';
import { takenDown } from './oldWork';
import type { Laid, SolidCable } from './solids';

const SAME_IN = 1 / 1024;
const same = (a: Pt3, b: Pt3): boolean => Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]) < SAME_IN;

const diameterOf = (cable: Cable | null): U<In> => (cable && cableDiameter(cable)?.majorIn) ?? 'unknown';

/** Legs strung together: a new course wherever the cable changes from old to new or a leg does not go on from the last. */
export const coursesOf = (legs: readonly Leg[]): { readonly cable: Leg['cable']; readonly course: Pt3[] }[] => {
  const found: { cable: Leg['cable']; course: Pt3[] }[] = [];
  for (const leg of legs) {
    const last = found.at(-1);
    if (last && last.cable === leg.cable && same(last.course.at(-1)!, leg.from)) last.course.push(leg.to);
    else found.push({ cable: leg.cable, course: [leg.from, leg.to] });
  }
  return found;
};

const cable = (id: Id, what: SolidCable['what'], laid: Laid, course: readonly Pt3[], diameter: U<In>): SolidCable[] => {
  const points = course.filter((p, i) => i === 0 || !same(p, course[i - 1]!));
  return points.length < 2 ? [] : [{ id, what, laid, course: points, diameter }];
};

/** What lies today: taken down from the old panel to where it stays, and what stays beyond. */
const oldCables = (job: Job, plan: Plan | null): SolidCable[] =>
  byId(job.homeRuns).flatMap(({ id, cable: kind }) => {
    const seen = visibleRun(job, id);
    if (!seen) return [];
    const run = plan?.runs.find((r) => r.homeRun === id);
    const whole = courseLength(seen.path);
    const down = Math.min(whole, takenDown(run, seen.path, seen.pivot));
    const diameter = diameterOf(kind);
    return [
      ...cable(id, 'home run', 'away', piece(seen.path, 0, down), diameter),
      ...cable(id, 'home run', 'stays', piece(seen.path, down, whole), diameter),
    ];
  });

const laidAs = (leg: Leg['cable']): Laid => (leg === 'new' ? 'new' : 'drawn back');

/** What is laid anew: new cable, and old cable drawn back onto a new course. */
const newCables = (job: Job, plan: Plan): SolidCable[] =>
  plan.runs.flatMap((run) => {
    const old = job.homeRuns.find((h) => h.id === run.homeRun)?.cable ?? null;
    return coursesOf(run.legs).flatMap(({ cable: kind, course }) =>
      cable(run.homeRun, 'home run', laidAs(kind), course, diameterOf(kind === 'new' ? run.newCable : old)),
    );
  });

const feederCables = (job: Job, plan: Plan | null): SolidCable[] => {
  const goes = plan?.feeder.way === 'replaced';
  return [
    ...cable('feeder', 'feeder', goes ? 'away' : 'stays', job.feeder.path, diameterOf(job.feeder.cable)),
    ...(plan
      ? coursesOf(plan.feeder.legs).flatMap(({ cable: kind, course }) =>
          cable('feeder', 'feeder', laidAs(kind), course, diameterOf(plan.feeder.cable)),
        )
      : []),
  ];
};

/** Old and new cable, and sleeves that stand ready for it. */
export const solidCables = (job: Job, plan: Plan | null): SolidCable[] => [
  ...oldCables(job, plan),
  ...feederCables(job, plan),
  ...(plan ? newCables(job, plan) : []),
  ...job.site.sleeves.flatMap((s) => cable(s.id, 'sleeve', 'stays', [s.from, s.to], s.diameter)),
];

/** Rows of the plan as one course each; drawn stronger than a single cable. */
export const solidRows = (plan: Plan): SolidCable[] =>
  plan.rows.flatMap((row) => cable(row.id, 'row', 'new', row.path, 'unknown'));
