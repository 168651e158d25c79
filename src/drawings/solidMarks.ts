import type { Effect, Finding, Plan } from '../facts/result';
import { isFeederDrawn } from '../job/feeder';
import type { Job, Option } from '../job/schema';
import type { Id, Pt3 } from '../units/types';
import { boxPlace } from './boxPlace';
import type { KeyNote } from './keyNotes';
import { canPlace } from './solidPanels';
import { pointIn } from './solidShapes';
import { intrusions } from './solidSpaces';

/** The key of a finding and the point in the house it is about. */
export interface SolidMark {
  readonly number: number;
  readonly effect: Effect;
  readonly at: Pt3;
}

const middle = (points: readonly Pt3[]): Pt3 => {
  const sum = points.reduce<Pt3>((s, p) => [s[0] + p[0], s[1] + p[1], s[2] + p[2]], [0, 0, 0]);
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length];
};

const subjectAt = (job: Job, option: Option, plan: Plan, subject: Id): Pt3 | null => {
  const enclosure = [option.enclosure, ...job.enclosures].find((e) => e.id === subject);
  const place = enclosure && canPlace(job, enclosure);
  if (place) return pointIn(place, 0.5, 0, 0.5);
  const box = plan.boxes.find((b) => b.id === subject);
  if (box) return pointIn(boxPlace(job, box), 0.5, 0, 0.5);
  const row = plan.rows.find((r) => r.id === subject);
  if (row) return row.path[Math.floor(row.path.length / 2)] ?? null;
  const leg = plan.runs.find((r) => r.homeRun === subject)?.legs[0];
  if (leg) return leg.from;
  return subject === 'feeder' && isFeederDrawn(job) ? job.feeder.entersAt : null;
};

/** At what stands in the way, else at the space it judges, else at its subject. Plain notes stay in the list. */
export const solidMarks = (job: Job, option: Option, plan: Plan, notes: readonly KeyNote[]): SolidMark[] => {
  const bad = intrusions(job, option, plan);
  const placeOf = (finding: Finding): Pt3 | null => {
    const hit = bad.find((i) => i.rule === finding.rule && finding.subject === option.enclosure.id);
    if (hit) return middle(hit.outline.map(([x, y]): Pt3 => [x, y, (hit.fromZ + hit.toZ) / 2]));
    return finding.shape ? middle(finding.shape) : subjectAt(job, option, plan, finding.subject);
  };
  return notes.flatMap(({ number, effect, findings }): SolidMark[] => {
    if (effect === 'note') return [];
    for (const { finding } of findings) {
      const at = placeOf(finding);
      if (at) return [{ number, effect, at }];
    }
    return [];
  });
};
