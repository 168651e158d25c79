import { expect, test } from 'vitest';
import type { Plan } from '../../src/facts/result';
import type { Job, Option } from '../../src/job/schema';
import { planOption } from '../../src/plan/planOption';
import { demoJob } from '../support/demos';
import { cases } from '../support/effort';
import { newLength } from '../support/walkLegs';

/**
 * NFPA 70 (NEC) 2020 210.12(D), 2023 210.12(E): an extension of not more than 6 ft adds no arc-fault protection;
 * conductors inside cabinets and boxes are not measured. Rooms: 210.12(A) of 2020, (B) of 2023. Judged here from the
 * plan's legs alone, with a list of rooms and a tape of the test's own.
 */
const LISTED = new Set([
  'bedroom',
  'kitchen',
  'living',
  'family',
  'dining',
  'den',
  'library',
  'sunroom',
  'recreation',
  'hall',
  'laundry',
  'clothes closet',
  'other closet',
]);
const SIX_FEET = 72;
const FLOAT_DUST = 1 / 1024;

/** Circuits the rule speaks of whose new cable measures more than 6 ft. */
const past = (job: Job, plan: Plan): string[] =>
  job.circuits
    .filter((c) => {
      const lineToNeutral = c.volts === 120 || c.partner !== null;
      const rated = c.amps === 15 || c.amps === 20;
      const rooms = c.serves !== 'unknown' && c.serves.some((use) => LISTED.has(use));
      const longest = Math.max(
        0,
        ...plan.runs
          .filter((r) => job.homeRuns.find((h) => h.id === r.homeRun)!.circuits.includes(c.id))
          .map(newLength),
      );
      return lineToNeutral && rated && rooms && longest > SIX_FEET + FLOAT_DUST;
    })
    .map((c) => c.id)
    .sort();

const at = (option: Option, left: number): Option => ({
  ...option,
  enclosure: { ...option.enclosure, on: { ...option.enclosure.on, left } },
});

test('the panel stepped along its wall: AFCI circuits are those whose re-measured length is over 72 in', () => {
  const job = demoJob('washer');
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const flips = new Map<string, number>();
  let before: string[] | null = null;
  for (let left = 86; left <= 164; left += cases(3, 1)) {
    const { plan } = planOption(job, at(option, left));
    const required = plan.afci
      .filter((a) => a.required === 'yes')
      .map((a) => a.circuit)
      .sort();
    expect({ left, required }).toEqual({ left, required: past(job, plan) });
    expect(plan.tally.afciAdded).toBe(required.length);
    for (const c of required) if (before && !before.includes(c) && !flips.has(c)) flips.set(c, left);
    before = required;
  }
  expect(new Set(flips.values()).size).toBeGreaterThanOrEqual(3);
}, 300_000);

test('exactly 6 ft 0 in is exempt, 6 ft 0-1/64 in is not', () => {
  const job = demoJob('washer');
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  // from a place where a listed circuit's only way is an extension, the panel slid so that the extension reads 72 in
  let checked = 0;
  for (let left = 90; left <= 160 && checked < cases(1, 2); left += 5) {
    const { plan } = planOption(job, at(option, left));
    for (const run of plan.runs) {
      const shift = Math.round((SIX_FEET - newLength(run)) * 64) / 64;
      if (run.newCable === null || Math.abs(shift) > 4 || shift === 0) continue;
      const circuits = job.homeRuns.find((h) => h.id === run.homeRun)!.circuits;
      const read = (offset: number) => {
        const moved = planOption(job, at(option, offset)).plan;
        const again = moved.runs.find((r) => r.homeRun === run.homeRun)!;
        return {
          length: newLength(again),
          required: moved.afci.filter((a) => circuits.includes(a.circuit) && a.required === 'yes').length,
        };
      };
      const exact = [left + shift, left - shift]
        .map((offset) => ({ offset, ...read(offset) }))
        .find((x) => Math.abs(x.length - SIX_FEET) < 1e-9);
      if (!exact) continue;
      expect(exact.required).toBe(0);
      const sideways = Math.sign(exact.offset - left) * Math.sign(shift);
      const over = [1, -1]
        .map((s) => read(exact.offset + (s * sideways) / 64))
        .find((x) => x.length > SIX_FEET + FLOAT_DUST);
      if (!over) continue;
      const inScope = past(job, planOption(job, at(option, exact.offset + 1 / 64)).plan).concat(
        past(job, planOption(job, at(option, exact.offset - 1 / 64)).plan),
      );
      if (!circuits.some((c) => inScope.includes(c))) continue;
      expect(over.length).toBeCloseTo(SIX_FEET + 1 / 64, 9);
      expect(over.required).toBeGreaterThan(0);
      checked++;
      break;
    }
  }
  expect(checked).toBeGreaterThan(0);
}, 300_000);
