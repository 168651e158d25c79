import { expect, test } from 'vitest';
import type { Job, Pin } from '../../../src/job/schema';
import { planJob } from '../../../src/plan/planJob';
import { demoJob } from '../../support/demos';

const OPTION = 'relocate-a';
const pinned = (pins: readonly Pin[]): Job => {
  const job = demoJob('small-house');
  return { ...job, options: job.options.map((o) => (o.id === OPTION ? { ...o, pins: [...pins] } : o)) };
};
const planOf = (pins: readonly Pin[]) => planJob(pinned(pins), { options: [OPTION] }).plans[0]!;
const anew: Pin = { id: 'pin-1', pin: 'way', homeRun: 'h-05', way: 'new home run' };
const asIs: Pin = { id: 'pin-2', pin: 'way', homeRun: 'h-06', way: 'cut-in' };

test('a pin costs what the plan costs with it less what it costs without it, each of several by itself', () => {
  const price = (pins: readonly Pin[]) => planOf(pins).tally.likelyCents;
  const both = planOf([anew, asIs]);
  expect(both.pins.map((p) => [p.pin, p.cents])).toEqual([
    ['pin-1', both.tally.likelyCents - price([asIs])],
    ['pin-2', both.tally.likelyCents - price([anew])],
  ]);
  expect(both.pins[0]!.cents).toBeGreaterThan(0);
  expect(both.pins[0]!.say).toMatch(/^The plan costs \$[\d,.]+ more than without it\.$/);
  // the program cuts this one in anyway
  expect(both.pins[1]).toEqual({ pin: 'pin-2', cents: 0, say: 'The plan costs the same without it.' });
});

test('a pin that cannot hold has no cost and says why', () => {
  const { pins, runs } = planOf([anew, { ...anew, id: 'pin-3', way: 'cut-in' }]);
  expect(pins.map((p) => p.cents)).toEqual([null, null]);
  const { why } = runs.find((r) => r.homeRun === 'h-05')!;
  expect(pins[0]!.say).toBe(`It cannot hold. ${why}`);
});
