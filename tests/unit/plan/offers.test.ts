import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { demoJob } from '../../support/demos';

const job = demoJob('small-house');
const planned = (more: Partial<Job> = {}, option = 'relocate-a') => {
  const changed = { ...job, ...more };
  return planOption(changed, changed.options.find((o) => o.id === option)!).plan;
};
const taking = (...ids: readonly string[]) => ({ alternates: ids.map((id) => ({ id, taken: true })) });
const base = planned();
/** The first cable that is cut, sold in lengths of one foot only. */
const cable = base.cuts[0]!.cable;
const shortCoils = {
  ...defaultBook,
  id: 'own',
  materials: [
    ...defaultBook.materials.filter((m) => m.id !== `cable:${cable}` && !m.id.startsWith(`cable:${cable}@`)),
    { id: `cable:${cable}@1`, unit: 'each', dollars: 1, source: '' },
  ],
};
const alternate = (plan: typeof base, id: string) => plan.price.alternates.find((a) => a.id === id);

describe('what the owner may take', () => {
  test('finishes, covers, connected breakers, GFCI too, spares, a tidy board, a circuit more: priced by their difference', () => {
    const ids = ['white finish', 'finish to match', 'solid cover', 'clear cover', 'connected', 'spares', 'tidy board'];
    for (const id of [...ids, 'extra circuit']) {
      const taken = planned(taking(id));
      expect(taken.tally.likelyCents - base.tally.likelyCents).toBe(alternate(base, id)?.cents);
      expect(alternate(taken, id)).toMatchObject({ taken: true, required: false });
      expect(taken.tally.crewHours - base.tally.crewHours).toBeCloseTo(alternate(base, id)!.hours, 0);
    }
  });
  test('a larger panel brings spaces, a hub takes two, a circuit one', () => {
    expect(alternate(base, 'spares')!.spaces).toBeLessThanOrEqual(-6);
    expect(alternate(base, 'connected')!.spaces).toBe(2);
    expect(alternate(base, 'extra circuit')!.spaces).toBe(1);
  });
  test('of two finishes one is taken', () => {
    const both = planned(taking('white finish', 'finish to match'));
    expect([alternate(both, 'white finish')!.taken, alternate(both, 'finish to match')!.taken]).toEqual([false, true]);
    expect(both.tally.likelyCents).toBe(planned(taking('finish to match')).tally.likelyCents);
  });
  test('what the book cannot price is not offered, and is missing where it was taken', () => {
    const priceBook = { ...defaultBook, id: 'own', materials: defaultBook.materials.filter((m) => m.id !== 'hub') };
    expect(alternate(planned({ priceBook }), 'connected')).toBeUndefined();
    expect(planned({ priceBook, ...taking('connected') }).price.missing).toContain('hub');
  });
});

describe('packages', () => {
  test('good is the job as it must be; each costs what taking its alternates costs', () => {
    expect(base.price.packages.map((p) => [p.id, p.taken])).toEqual([
      ['good', true],
      ['better', false],
      ['best', false],
    ]);
    for (const p of base.price.packages) {
      const taken = planned(taking(...p.alternates));
      expect(taken.tally.likelyCents).toBe(p.likelyCents);
      expect(taken.tally.lowCents).toBe(p.lowCents);
      expect(taken.price.packages.find((x) => x.id === p.id)?.taken).toBe(true);
    }
    const [good, better, best] = base.price.packages.map((p) => p.likelyCents);
    expect(good).toBeLessThan(better!);
    expect(better).toBeLessThan(best!);
  });
  test('a required alternate is in every one of them and in no list', () => {
    const washer = demoJob('washer');
    const { price } = planOption(washer, washer.options.find((o) => o.id === 'relocate-a')!).plan;
    expect(price.alternates.find((a) => a.id === 'spd')).toMatchObject({ required: true, taken: true });
    for (const p of price.packages) expect(p.alternates).not.toContain('spd');
    expect(price.packages[0]!.likelyCents).toBe(price.lines.reduce((sum, l) => sum + l.likelyCents, 0));
  });
});

test('a price that forgets AFCI is short by what its breakers, landings and allowance come to', () => {
  const { afci, price } = base;
  const counted = afci.filter((a) => a.required === 'yes' || a.required === 'cannot be told').length;
  expect(price.forgettingAfci.circuits).toBe(counted);
  expect(counted).toBeGreaterThan(0);
  expect(price.forgettingAfci.cents).toBeGreaterThan(0);
});

test('coils too short for the longest piece leave the price incomplete, by their place in the book', () => {
  const { price } = planned({ priceBook: shortCoils, stock: [] });
  const at = price.missing.indexOf(`/priceBook/materials/${shortCoils.materials.length - 1}`);
  expect(price.complete).toBe(false);
  expect(price.missingSay[at]).toMatch(/^No coil of .* holds the longest piece, .*: the longest there is is 1'-0"/);
});
