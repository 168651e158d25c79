import type { Plan } from '../facts/result';
import { isFeederDrawn } from '../job/feeder';
import type { Job, Option } from '../job/schema';
import type { Id, Pt, Pt3 } from '../units/types';
import type { Mark } from './items';
import type { KeyNote } from './keyNotes';
import { canOutline } from './oldWork';
import { middle } from './things';

/** The home runs a finding is about: itself one, those of a circuit, of a row, of a box. */
export const runsOf = (job: Job, plan: Plan, subject: Id): readonly Id[] => {
  const group = [...plan.rows, ...plan.boxes].find((g) => g.id === subject);
  if (group) return group.homeRuns;
  return job.homeRuns.filter((h) => h.id === subject || h.circuits.includes(subject)).map((h) => h.id);
};

/** Where a finding's subject is; null where it has no place of its own. */
const placeOf = (job: Job, option: Option, plan: Plan, subject: Id): Pt3 | null => {
  const enclosure = [option.enclosure, ...job.enclosures].find((e) => e.id === subject);
  const outline = enclosure && canOutline(job, enclosure);
  if (outline) {
    const [x, y] = middle([outline[2]!, outline[3]!]);
    return [x, y, enclosure.on.bottom + enclosure.size.height / 2];
  }
  const box = plan.boxes.find((b) => b.id === subject);
  if (box) return box.at;
  const row = plan.rows.find((r) => r.id === subject);
  const at = row?.path[Math.floor(row.path.length / 2)];
  if (at) return at;
  const legs = plan.runs.find((r) => runsOf(job, plan, subject).includes(r.homeRun))?.legs;
  const leg = legs?.find((l) => l.cable === 'new') ?? legs?.[0];
  if (leg) return leg.from;
  return subject === 'feeder' && isFeederDrawn(job) ? job.feeder.entersAt : null;
};

/** Where a note stands: in the middle of the shape it judges, else at its subject; null where it has no place. */
export const placeOfNote = (job: Job, option: Option, plan: Plan, note: KeyNote): Pt3 | null => {
  for (const { finding } of note.findings) {
    const { shape } = finding;
    if (shape && shape.length > 0) {
      const [x, y] = middle(shape.map(([px, py]): Pt => [px, py]));
      return [x, y, shape.reduce((n, p) => n + p[2], 0) / shape.length];
    }
    const at = placeOf(job, option, plan, finding.subject);
    if (at) return at;
  }
  return null;
};

/** The key of each note where it is about, as `see` puts it in the drawing. Plain notes stay in the list. */
export const drawMarks = (
  job: Job,
  option: Option,
  plan: Plan,
  notes: readonly KeyNote[],
  see: (place: Pt3) => Pt | null = ([x, y]) => [x, y],
): Mark[] =>
  notes.flatMap((note): Mark[] => {
    if (note.effect === 'note') return [];
    const place = placeOfNote(job, option, plan, note);
    const at = place && see(place);
    return at ? [{ item: 'mark', id: note.rule, layer: 'marks', effect: note.effect, number: note.number, at }] : [];
  });
