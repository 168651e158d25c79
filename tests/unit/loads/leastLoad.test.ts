import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { panelLoad } from '../../../src/loads/panelLoad';
import { EDITIONS } from '../../../src/units/types';
import { baseJob, type Changes, changed } from '../rules/support';

/** Loads of the panel; `changes` as in the rule fixtures. */
const jobOf = (loads: Job['house']['loads'], changes: Changes = {}): Job =>
  changed(baseJob, {
    '/code/edition': 2023,
    '/feeder/wholeDwelling': false,
    '/house/panelAreaFt2': 1500,
    '/house/smallApplianceCircuits': 2,
    '/house/laundryCircuits': 1,
    '/house/loads': loads,
    ...changes,
  });
const on = (kind: string, va: number | 'unknown', onPanel: boolean | 'unknown' = true) => ({
  id: `${kind} ${va} ${onPanel}`,
  kind,
  va,
  onPanel,
});
const known = [
  on('dishwasher', 1200),
  on('disposal', 900),
  on('microwave', 1500),
  on('water heater', 4500),
  on('dryer', 5000),
  on('range', 11_000),
];

describe('what is known of a load, with one appliance unread', () => {
  // Worked by hand by the standard method, NEC 2023 220.42 to 220.60 (figures of the tables from memory): lighting
  // 1500 × 3 + 3 × 1500 = 9000 → 3000 + 0.35 × 6000 = 5100; four fixed 8100 × 0.75 = 6075; dryer 5000; one range to
  // 12 kW 8000; largest motor 0.25 × 900 = 225. Together 24,400 VA = 101.67 A.
  test('an air conditioner counts nothing', () => {
    const load = panelLoad(jobOf([...known, on('air conditioner', 'unknown')]));
    expect(load).toMatchObject({ method: 'cannot be told', amps: 'unknown', missing: ['/house/loads/6/va'] });
    expect(load.least).toBeCloseTo(24_400 / 240, 6);
  });
  test('a floor area counts nothing: three circuits of 1500 VA are left, 4500 → 3000 + 525', () => {
    const load = panelLoad(jobOf(known, { '/house/panelAreaFt2': 'unknown' }));
    expect(load.least).toBeCloseTo((24_400 - 5100 + 3525) / 240, 6);
  });
  test('an electric vehicle supply on the panel is 7200 VA at the least (220.57 of 2023)', () => {
    expect(panelLoad(jobOf([...known, on('EV charger', 'unknown')])).least).toBeCloseTo((24_400 + 7200) / 240, 6);
    expect(panelLoad(jobOf([...known, on('EV charger', 'unknown', 'unknown')])).least).toBeCloseTo(24_400 / 240, 6);
  });
  test('an appliance that may be the fourth brings the others down to 75 % (220.53)', () => {
    const three = [on('dishwasher', 1200), on('microwave', 1500), on('water heater', 4500)];
    const sure = panelLoad(jobOf(three)).least;
    expect(panelLoad(jobOf([...three, on('disposal', 'unknown', 'unknown')])).least).toBeCloseTo(
      sure - (0.25 * 7200) / 240,
      6,
    );
  });
  test('where all is known the least is the load', () => {
    const load = panelLoad(jobOf(known));
    expect(load.least).toBe(load.amps);
  });
});

/** The house rule behind it: whatever the unknown turns out to be, the load is not less. */
describe('never more than the load turns out to be', () => {
  const KINDS = ['dishwasher', 'disposal', 'dryer', 'range', 'oven', 'air conditioner', 'heat pump', 'electric heat'];
  const houses = [
    known,
    [on('oven', 8750), on('range', 8750), on('cooktop', 8750), on('oven', 8700)],
    [on('dryer', 10_000), on('dryer', 9000), on('dryer', 9500), on('dryer', 9900)],
    [on('electric heat', 10_000), on('air conditioner', 9000), on('dishwasher', 1200)],
    [on('dishwasher', 1200), on('microwave', 1500), on('water heater', 4500), on('heat pump', 6000)],
  ];
  test.each(EDITIONS)('in %i', (edition) => {
    for (const house of houses)
      for (const whole of [true, false])
        for (const kind of [...KINDS, 'EV charger']) {
          const set = { '/code/edition': edition, '/feeder/wholeDwelling': whole };
          const open = panelLoad(jobOf([...house, on(kind, 'unknown', 'unknown')], set)).least;
          const yearless = panelLoad(
            jobOf([...house, on(kind, 'unknown', 'unknown')], {
              '/code/edition': 'unknown',
              '/feeder/wholeDwelling': 'unknown',
            }),
          ).least;
          for (const va of [200, 1000, 3500, 8000, 10_000]) {
            const told = panelLoad(jobOf([...house, on(kind, va)], set));
            if (told.amps === 'unknown') throw new Error(`${kind} ${va}: not told`);
            expect(open, `${kind} ${va}`).toBeLessThanOrEqual(told.amps + 1e-9);
            expect(yearless, `${kind} ${va}, year unknown`).toBeLessThanOrEqual(told.amps + 1e-9);
          }
          expect(open).toBeLessThanOrEqual(panelLoad(jobOf(house, set)).least + 1e-9);
        }
  });
});
