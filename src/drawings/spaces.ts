import type { Finding, Plan } from '../facts/result';
import { type Polygon, signedArea } from '../geometry/polygon';
import { cross, subtract } from '../geometry/vector';
import type { Job, Option } from '../job/schema';
import { solids } from '../job/site';
import type { Pt } from '../units/types';
import { type Line, ring, stroke } from './items';

const WORKING = ['WS-DEPTH', 'WS-WIDTH', 'WS-HEIGHT', 'WS-STORE'];
const DEDICATED = 'DEDICATED';
/** Headroom of the working space, 6 ft 6 in: what starts above it does not stand in the plan of the space (110.26(A)(3)). */
const HEADROOM_IN = 78;

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

/** What stands in a space that a failing or open finding is about. */
const intrusions = (job: Job, option: Option, finding: Finding): { readonly id: string; readonly outline: Pt[] }[] => {
  const shape = flat(finding.shape);
  if (shape.length < 3) return [];
  const over = finding.rule === DEDICATED ? (finding.shape?.[0]?.[2] ?? 0) : 0;
  return solids(job.site, 'after', option.moves)
    .filter((s) => (finding.rule === DEDICATED ? s.foreign && s.toZ > over : s.blocksSpace && s.fromZ < HEADROOM_IN))
    .map((s) => ({ id: s.id, outline: clipConvex(s.outline, shape) }))
    .filter((s) => s.outline.length >= 3 && area(s.outline) > 0.01);
};

/** Space kept clear: dashed, open diagonals; what intrudes is crosshatched. */
export const drawSpaces = (job: Job, option: Option, plan: Plan): Line[] => {
  const space = workingSpace(plan, option);
  const bad = plan.findings.filter(
    (f) =>
      f.subject === option.enclosure.id &&
      f.effect !== null &&
      f.effect !== 'note' &&
      (WORKING.includes(f.rule) || f.rule === DEDICATED),
  );
  const seen = new Set<string>();
  return [
    ...(space ? [ring('space', 'working space', space, stroke('object', 'new', 'zone'), 'zone')] : []),
    ...bad
      .flatMap((f) => intrusions(job, option, f))
      .filter(({ id }) => !seen.has(id) && seen.add(id))
      .map(({ id, outline }) => ring('space', `in the way: ${id}`, outline, stroke('thin', 'ink'), 'intrusion')),
  ];
};
