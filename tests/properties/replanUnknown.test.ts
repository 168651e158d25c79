import { describe, expect, test } from 'vitest';
import { checkJob } from '../../src/job/parse';
import type { Job } from '../../src/job/schema';
import { planJob } from '../../src/plan/planJob';
import { DEMOS, demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { forgotten, jobFaults, resultFaults } from '../support/planFaults';
import { random } from '../support/random';
import { unknowablePlaces } from '../support/unknowable';

/** Routes are planned again here: whatever the surveyor does not know, there is a plan without holes in it. */

const SMALL = 'small-house';
const kindOf = (place: string) => place.replace(/\/\d+/g, '/*');
const oneOfEachKind = (job: Job): string[] => [
  ...new Map(
    unknowablePlaces(job)
      .reverse()
      .map((p) => [kindOf(p), p]),
  ).values(),
];

describe('one field unknown', () => {
  const job = demoJob(SMALL);
  const places = unknowablePlaces(job);

  test('every one of the small house, in place and relocated', () => {
    expect(places.length).toBeGreaterThan(200);
    const some = places.filter((_, i) => i % cases(2, 1) === 0);
    const faults = some.flatMap((place, i) => {
      const blind = forgotten(job, place);
      // cables that go together are sought at final grade only, at three times the price
      const whole = i % 4 === 0 ? jobFaults(blind, 'final') : jobFaults(blind, 'live');
      return whole.map((f) => `${place} ${f}`);
    });
    expect(faults).toEqual([]);
  });

  const seen = new Set(places.map(kindOf));
  test.each(DEMOS.filter((d) => d !== SMALL))(
    '%s: the kinds of field it adds, and every twelfth of the rest',
    (name) => {
      const other = demoJob(name);
      const kinds = oneOfEachKind(other).filter((p, i) => !seen.has(kindOf(p)) || i % 4 === 0);
      expect(kinds.length).toBeGreaterThan(30);
      const faults = kinds.flatMap((place, i) => {
        const blind = forgotten(other, place);
        return jobFaults(blind, 'live', [blind.options[i % 2]!]).map((f) => `${place} ${f}`);
      });
      expect(faults).toEqual([]);
    },
  );
});

describe('many unknown', () => {
  test('pairs and handfuls at random', () => {
    const job = demoJob(SMALL);
    const places = unknowablePlaces(job);
    const r = random(2);
    const faults = Array.from({ length: 45 }, (_, i) => {
      const some = Array.from({ length: i < 30 ? 2 : r.int(3, 60) }, () => r.pick(places));
      return jobFaults(forgotten(job, ...some), 'live').map((f) => `${some.join(' ')} ${f}`);
    }).flat();
    expect(faults).toEqual([]);
  });

  test.each(DEMOS)('%s: everything', (name) => {
    const job = demoJob(name);
    const blind = forgotten(job, ...unknowablePlaces(job));
    expect(unknowablePlaces(blind)).toEqual([]);
    expect(checkJob(blind).ok).toBe(true);
    const result = planJob(blind, { grade: 'live' });
    expect(resultFaults(blind, result)).toEqual([]);
    // what was assumed for the routes and what the rules wait for is all listed, and nothing is called priced
    expect(result.unknown.length).toBeGreaterThan(50);
    expect(result.plans.every((p) => !p.price.complete)).toBe(true);
    expect(result.plans.every((p) => p.findings.some((f) => f.outcome === 'cannot be told'))).toBe(true);
  });
});
