import type { Finding, Plan } from '../facts/result';
import { type Polygon, signedArea } from '../geometry/polygon';
import { cross, subtract } from '../geometry/vector';
import type { Job, Option } from '../job/schema';
import { faceOf, solids, type WallFace, wallFaces } from '../job/site';
import { formatFeetInches } from '../units/length';
import type { Id, In, Pt } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import { type Label, type Line, ring, stroke } from './items';
import { ringPlaces } from './names';
import { middle } from './things';
import { spread } from './unroll';

const WORKING = ['WS-DEPTH', 'WS-WIDTH', 'WS-HEIGHT', 'WS-STORE'];
const DEDICATED = 'DEDICATED';
/** Headroom of the working space, 6 ft 6 in: what starts above it does not stand in the plan of the space (110.26(A)(3)). */
export const HEADROOM_IN = 78;

const flat = (shape: Finding['shape']): Pt[] => (shape ?? []).map(([x, y]): Pt => [x, y]);
const area = (polygon: Polygon): number => Math.abs(signedArea(polygon));

/** The part of a convex polygon inside another convex one, by cutting along each of its edges in turn. */
export const clipConvex = (subject: Polygon, by: Polygon): Pt[] => {
  const ccw = signedArea(by) >= 0 ? by : [...by].reverse();
  let points: readonly Pt[] = subject;
  for (let i = 0; i < ccw.length; i++) {
    const a = ccw[i]!;
    const edge = subtract(ccw[(i + 1) % ccw.length]!, a);
    const inside = (p: Pt) => cross(edge, subtract(p, a));
    points = points.flatMap((p, k): Pt[] => {
      const before = points.at(k - 1)!;
      const [d, e] = [inside(before), inside(p)];
      const t = d / (d - e);
      const meet: Pt[] =
        (d < 0 && e > 0) || (d > 0 && e < 0)
          ? [[before[0] + (p[0] - before[0]) * t, before[1] + (p[1] - before[1]) * t]]
          : [];
      return e >= 0 ? [...meet, p] : meet;
    });
  }
  return [...points];
};

/** The plan of the working space kept clear before the new panel, as the rules judged it; null before they have. */
export const workingSpace = (plan: Plan, option: Option): Pt[] | null => {
  const shapes = plan.findings
    .filter((f) => f.subject === option.enclosure.id && WORKING.includes(f.rule) && f.shape !== null)
    .map((f) => flat(f.shape));
  return shapes.reduce<Pt[] | null>((best, s) => (best === null || area(s) > area(best) ? s : best), null);
};

/** What stands where it may not: its part inside the space, in plan and in height. */
export interface Intrusion {
  readonly id: Id;
  readonly kind: string;
  readonly outline: readonly Pt[];
  readonly fromZ: In;
  readonly toZ: In;
  /** How far it reaches in: the shortest side of what is inside, along the wall, out from it or in height. */
  readonly by: In;
}

/** What stands in a space that a failing or open finding is about. */
const intrusionsOf = (job: Job, option: Option, finding: Finding, face: WallFace): Intrusion[] => {
  const shape = flat(finding.shape);
  if (shape.length < 3) return [];
  /** The dedicated space goes from the floor to the height its shape is told at. */
  const top = finding.shape?.[0]?.[2] ?? 0;
  return solids(job.site, 'after', option.moves)
    .filter((s) => (finding.rule === DEDICATED ? s.foreign && s.fromZ < top : s.blocksSpace && s.fromZ < HEADROOM_IN))
    .map(({ id, kind, outline, fromZ, toZ }) => {
      const inside = clipConvex(outline, shape);
      const { left, right, near, far } = spread(face, inside.length > 0 ? inside : [[0, 0]]);
      const high = finding.rule === DEDICATED ? toZ - fromZ : Math.min(toZ, HEADROOM_IN) - Math.max(fromZ, 0);
      return { id, kind, outline: inside, fromZ, toZ, by: Math.min(right - left, far - near, high) };
    })
    .filter((s) => s.outline.length >= 3 && area(s.outline) > 0.01);
};

/** Every intrusion into the new panel's spaces that a finding speaks of, each thing once. */
export const intrusions = (job: Job, option: Option, plan: Plan): Intrusion[] => {
  const face = faceOf(wallFaces(job.site, 'after'), option.enclosure.on);
  if (!face) return [];
  const seen = new Set<Id>();
  return plan.findings
    .filter(
      (f) =>
        f.subject === option.enclosure.id &&
        f.effect !== null &&
        f.effect !== 'note' &&
        (WORKING.includes(f.rule) || f.rule === DEDICATED),
    )
    .flatMap((f) => intrusionsOf(job, option, f, face))
    .filter(({ id }) => !seen.has(id) && seen.add(id));
};

/** Beside what intrudes, how far it does: written in every drawing that shows it. */
export const nameIntrusion = ({ id, kind, by }: Intrusion, at: Pt): Label => ({
  item: 'label',
  id: `in the way: ${id}`,
  layer: 'names',
  lines: [{ say: say.intrudes({ thing: kind, by: formatFeetInches(by) }), lettering: 'small', tone: 'ink', size: 12 }],
  rank: 1,
  must: true,
  lead: at,
  places: ringPlaces(at, [10, 20, 34, 50, 70, 96]),
});

/** Space kept clear: dashed, open diagonals; what intrudes is crosshatched, with its size. */
export const drawSpaces = (job: Job, option: Option, plan: Plan): (Line | Label)[] => {
  const space = workingSpace(plan, option);
  return [
    ...(space ? [ring('space', 'working space', space, stroke('object', 'new', 'zone'), 'zone')] : []),
    ...intrusions(job, option, plan).flatMap((i) => [
      ring('space', `in the way: ${i.id}`, i.outline, stroke('thin', 'ink'), 'intrusion'),
      nameIntrusion(i, middle(i.outline)),
    ]),
  ];
};
