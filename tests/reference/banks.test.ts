import { expect, test } from 'vitest';
import { planJob } from '../../src/plan/planJob';
import { bankFacts, sum } from '../support/demoFacts';
import { demoJob } from '../support/demos';

// Source of the expected figures: demo/FACTS.md, worked by hand from the sizes of the boxes.

test.each(bankFacts)(
  'boxes side by side: $job $option',
  (fact) => {
    expect(sum(fact.parts)).toBe(fact.apart);
    const { boxes } = planJob(demoJob(fact.job), { options: [fact.option] }).plans[0]!;
    const places = fact.boxes.map((size) => boxes.filter((b) => b.size === size).map((b) => b.at));
    const apart = places[0]!.flatMap((a) => places[1]!.map((b) => Math.hypot(...a.map((x, k) => x - b[k]!))));
    expect(Math.min(...apart)).toBeCloseTo(fact.apart, 6);
  },
  60_000,
);
