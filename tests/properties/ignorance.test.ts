import { expect, test } from 'vitest';
import { setValue } from '../../src/job/change';
import type { Job } from '../../src/job/schema';
import { judge, planOption } from '../../src/plan/planOption';
import { stageOf } from '../../src/plan/stages';
import { DEMOS, demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { unknowablePlaces } from '../support/unknowable';

/** Page 2 rule 4 of the design: with the routes kept, not knowing a thing never turns out well. */

const forgotten = (job: Job, place: string): Job => {
  const changed = setValue(job, place, 'unknown');
  if (!changed.ok) throw new Error(changed.error.error.say);
  return changed.value as Job;
};
const outcomes = (findings: readonly { rule: string; subject: string; outcome: string }[]) =>
  new Map(findings.map((f) => [`${f.rule} ${f.subject}`, f.outcome]));

test('the walk finds the unknowable fields of every record', () => {
  const kinds = new Set(DEMOS.flatMap((d) => unknowablePlaces(demoJob(d))).map((p) => p.replace(/\/\d+/g, '/*')));
  for (const kind of [
    '/code/edition',
    '/feeder/from/lugs',
    '/enclosures/*/role',
    '/cableGroups/*/tails',
    '/circuits/*/serves',
    '/options/*/enclosure/spaces',
    '/site/framing/*/spacing',
    '/homeRuns/*/cable/insulation',
  ])
    expect(kinds).toContain(kind);
});

test.each(DEMOS)(
  'ignorance never helps: %s, every field of every record, routes kept',
  (name) => {
    const job = demoJob(name);
    const places = unknowablePlaces(job);
    expect(places.length).toBeGreaterThan(100);
    const faults: string[] = [];
    job.options.forEach((option, at) => {
      const { answer } = planOption(job, option);
      const before = outcomes(judge(job, option, answer, stageOf(job, option, 'final')).findings);
      // every third field, another third for the next option; all of them in `npm run hard`
      for (const place of places.filter((_, i) => (i + at) % cases(3, 1) === 0)) {
        const blind = forgotten(job, place);
        const seen = blind.options[at]!;
        const after = outcomes(judge(blind, seen, answer, stageOf(blind, seen, 'final')).findings);
        for (const [key, outcome] of after)
          if (outcome === 'holds' && before.get(key) !== 'holds')
            faults.push(`${option.id} ${place}: ${key} was ${before.get(key)}, holds`);
        for (const [key, outcome] of before)
          if (outcome === 'fails' && !['fails', 'cannot be told'].includes(after.get(key) ?? 'gone'))
            faults.push(`${option.id} ${place}: ${key} failed, ${after.get(key) ?? 'gone'}`);
      }
    });
    expect(faults).toEqual([]);
  },
  300_000,
);
