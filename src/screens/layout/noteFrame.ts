import type { KeyNote } from '../../drawings/keyNotes';
import { placeOfNote, runsOf } from '../../drawings/marks';
import { coursesOf } from '../../drawings/newWork';
import type { Plan } from '../../facts/result';
import { type Bounds, bounds } from '../../geometry/polygon';
import type { Job, Option } from '../../job/schema';
import type { Pt, Pt3 } from '../../units/types';

/** The part of a drawing a note is about: its shapes, else its home runs, else its place; `see` puts points into the drawing. */
export const noteFrame = (
  job: Job,
  option: Option,
  plan: Plan,
  note: KeyNote,
  see: (p: Pt3) => Pt | null,
): Bounds | null => {
  const shapes = note.findings.flatMap(({ finding }) => finding.shape ?? []);
  const place = placeOfNote(job, option, plan, note);
  const runs = new Set(note.findings.flatMap(({ finding }) => runsOf(job, plan, finding.subject)));
  const courses = coursesOf(plan).flatMap(({ cable, course }) => (runs.has(cable) ? course : []));
  const about = shapes.length > 0 ? shapes : courses.length > 0 ? courses : place ? [place] : [];
  const points = about.flatMap((p): Pt[] => {
    const at = see(p);
    return at ? [at] : [];
  });
  return points.length > 0 ? bounds(points) : null;
};
