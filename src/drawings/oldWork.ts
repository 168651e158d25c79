import type { Plan, Run } from '../facts/result';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, visibleRun, wallFaces } from '../job/site';
import { byId } from '../units/order';
import { type Id, type In, isKnown, type Pt, type Pt3 } from '../units/types';
import { chainageOf, courseLength, inPlan, piece, risesAway } from './courses';
import { type Drawn, type Line, path, ring, stroke } from './items';

/** Points of the paper between two cables of a bundle. */
const BESIDE = 2.2;

/** Front and back of a can on its wall, in plan: left to right at the face, then back at its front. */
export const canOutline = (job: Job, enclosure: Enclosure): Pt[] | null => {
  const face = faceOf(wallFaces(job.site, 'after'), enclosure.on) ?? faceOf(wallFaces(job.site, 'now'), enclosure.on);
  if (!face) return null;
  const box = enclosureOnFace(enclosure);
  const out = enclosure.mount === 'surface' ? enclosure.size.depth : -enclosure.size.depth;
  return [
    pointOnFace(face, box.left),
    pointOnFace(face, box.right),
    pointOnFace(face, box.right, out),
    pointOnFace(face, box.left, out),
  ];
};

/** What an option makes of an old panel, as far as the plan tells. */
export type OldCan = 'removed' | 'splice can' | 'stays';
export const oldCanBecomes = (option: Option, plan: Plan | null, enclosure: Id): OldCan => {
  const replaced = option.replaces.find((r) => r.enclosure === enclosure);
  if (!replaced || replaced.becomes === 'subpanel') return 'stays';
  if (replaced.becomes === 'program chooses')
    return plan?.boxes.some((b) => b.on === 'splice can' && b.id === `can-${enclosure}`) ? 'splice can' : 'removed';
  return replaced.becomes;
};

export const drawOldPanels = (job: Job, option: Option, plan: Plan | null): Line[] =>
  byId(job.enclosures).flatMap((enclosure) => {
    const outline = canOutline(job, enclosure);
    if (!outline) return [];
    const goes = oldCanBecomes(option, plan, enclosure.id) === 'removed';
    return [ring('old work', enclosure.id, outline, stroke('object', 'old', goes ? 'away' : null), 'paper')];
  });

/** How far from the old panel the cable is taken down: all that lies beyond stays. */
export const takenDown = (run: Run | undefined, course: readonly Pt3[], pivot: In | 'unknown'): In => {
  switch (run?.way) {
    case 'reuse':
      return isKnown(pivot) ? pivot : courseLength(course);
    case 'cut-in':
      return run.cutIn ? chainageOf(course, run.cutIn) : 0;
    case 'new home run':
      return courseLength(course);
    default:
      return 0;
  }
};

interface Bundle {
  readonly id: Id;
  readonly course: readonly Pt3[];
  /** One entry a cable. */
  readonly down: readonly In[];
}
/** Existing runs by what lies together: a group, or one home run with a course of its own. */
export const bundles = (job: Job, plan: Plan | null): Bundle[] => {
  const found = new Map<Id, { course: readonly Pt3[]; down: In[] }>();
  for (const { id } of byId(job.homeRuns)) {
    const seen = visibleRun(job, id);
    if (!seen) continue;
    const key = seen.homeRun.ownPath ? id : seen.group.id;
    const bundle = found.get(key) ?? { course: seen.path, down: [] };
    bundle.down.push(
      takenDown(
        plan?.runs.find((r) => r.homeRun === id),
        seen.path,
        seen.pivot,
      ),
    );
    found.set(key, bundle);
  }
  return [...found].map(([id, b]) => ({ id, ...b }));
};

/** Two or three thin lines stand for a bundle, one for a single cable. */
export const besides = (cables: number): readonly number[] =>
  cables <= 1 ? [0] : cables <= 3 ? [-BESIDE / 2, BESIDE / 2] : [-BESIDE, 0, BESIDE];

/** The existing runs: dashed from the old panel to where the first of them stays, solid beyond. */
export const drawOldRuns = (job: Job, plan: Plan | null): Drawn[] =>
  bundles(job, plan).flatMap(({ id, course, down }): Drawn[] => {
    const whole = courseLength(course);
    const stays = Math.min(...down);
    const lay = (from: In, to: In, dash: 'away' | null): Line[] => {
      const points = inPlan(piece(course, from, to));
      if (points.length < 2) return [];
      return besides(down.length).map((b) => path('old work', id, points, stroke('old', 'old', dash), b));
    };
    const end = course.at(-1)!;
    return [
      ...lay(0, stays, 'away'),
      ...lay(stays, whole, null),
      ...(risesAway(course)
        ? [{ item: 'sign', sign: 'from above', id, layer: 'old work', at: [end[0], end[1]], turn: 0 } as const]
        : []),
    ];
  });

/** The feeder as it lies today, dashed where the option gives it up. */
export const drawOldFeeder = (job: Job, plan: Plan | null): Line[] => {
  const points = inPlan(job.feeder.path);
  if (points.length < 2) return [];
  const goes = plan?.feeder.way === 'replaced';
  return [path('old work', 'feeder', points, stroke(goes ? 'old' : 'object', 'old', goes ? 'away' : null))];
};
