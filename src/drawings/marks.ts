import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import type { Id, Pt } from '../units/types';
import type { Mark } from './items';
import type { KeyNote } from './keyNotes';
import { canOutline } from './oldWork';
import { middle } from './things';

/** Where in plan a finding's subject is; null where it has no place of its own. */
const placeOf = (job: Job, option: Option, plan: Plan, subject: Id): Pt | null => {
  const enclosure = [option.enclosure, ...job.enclosures].find((e) => e.id === subject);
  const outline = enclosure && canOutline(job, enclosure);
  if (outline) return middle([outline[2]!, outline[3]!]);
  const box = plan.boxes.find((b) => b.id === subject);
  if (box) return [box.at[0], box.at[1]];
  const row = plan.rows.find((r) => r.id === subject);
  const at = row?.path[Math.floor(row.path.length / 2)];
  if (at) return [at[0], at[1]];
  const leg = plan.runs.find((r) => r.homeRun === subject)?.legs[0];
  if (leg) return [leg.from[0], leg.from[1]];
  if (subject === 'feeder') return [job.feeder.entersAt[0], job.feeder.entersAt[1]];
  return null;
};

/** The key of each note where it is about: at the shape it judges, else at its subject. Plain notes stay in the list. */
export const drawMarks = (job: Job, option: Option, plan: Plan, notes: readonly KeyNote[]): Mark[] =>
  notes.flatMap(({ number, effect, findings }): Mark[] => {
    if (effect === 'note') return [];
    for (const { finding } of findings) {
      const at = finding.shape
        ? middle(finding.shape.map(([x, y]): Pt => [x, y]))
        : placeOf(job, option, plan, finding.subject);
      if (at) return [{ item: 'mark', id: finding.rule, layer: 'marks', effect, number, at }];
    }
    return [];
  });
