import { cautionsAt } from '../../documents/cautions';
import { type KeyNote, keyNotes } from '../../drawings/keyNotes';
import type { Effect, Plan } from '../../facts/result';
import type { Job } from '../../job/schema';
import { closeoutWords as say } from '../../words/en/closeout';
import { screenWords } from '../../words/en/screens';
import { thingName } from '../parts/names';

/** What the summary tells of the findings, under which heads. */
export const SHOWN: readonly (readonly [Effect, string])[] = [
  ['stops the job', say.stopsTitle],
  ['extra work', say.extraTitle],
  ['verify in field', say.verifyTitle],
];

/** What the findings of a note after its first are about, each once. */
export const othersOf = (job: Job, note: KeyNote): string =>
  [...new Set(note.findings.slice(1).map(({ finding }) => thingName(job, finding.subject)))].join(', ');

/** The summary's sentences under each of its heads, as long as they are printed: what decides how much room they take. */
export const noteTexts = (job: Job, plan: Plan): string[][] => {
  const notes = keyNotes(plan.findings);
  const texts = SHOWN.map(([effect]) =>
    notes
      .filter((note) => note.effect === effect)
      .map((note) => {
        const others = othersOf(job, note);
        const first = note.findings[0]?.finding;
        return [
          first?.say,
          first ? screenWords.cited(first) : note.section,
          others && say.also({ names: others }),
        ].join(' ');
      }),
  );
  const cautions = cautionsAt(job, 'owner').map((c) => `${c.say} ${c.cited}`);
  return [...texts, cautions, [...plan.price.missingSay], plan.price.assumed.map((one) => one.say)];
};
