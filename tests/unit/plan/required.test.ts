import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { planJob } from '../../../src/plan/planJob';
import { planOption } from '../../../src/plan/planOption';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { PANEL_SPACES, panelSpacesFor } from '../../../src/standards/panelSpaces';
import { demoJob } from '../../support/demos';

const small = demoJob('small-house');
const planned = (spaces: number | 'unknown', book: Job['priceBook'] = 'default') => {
  const [option] = small.options.filter((o) => o.kind === 'in place');
  const changed = { ...option!, enclosure: { ...option!.enclosure, spaces } };
  return planOption({ ...small, priceBook: book, options: [changed] }, changed).plan;
};
const panelOf = ({ price }: ReturnType<typeof planned>) =>
  price.lines.filter((l) => l.item.startsWith('panel:')).map((l) => [l.item, l.quantity]);

describe('the panel that is bought', () => {
  test('every size panels are sold in has a price in the default book', () => {
    const ids = defaultBook.materials.map((m) => m.id);
    expect(PANEL_SPACES.filter((n) => !ids.includes(`panel:${n}`))).toEqual([]);
  });
  test.each([
    [1, 8],
    [13, 16],
    [23, 24],
    [25, 30],
    [31, 32],
    [41, 42],
    [66, 66],
    [67, 68],
  ])('%i spaces: one of %i', (needed, sold) => {
    expect(panelSpacesFor(needed)).toBe(sold);
  });
  test('spaces as the option has them where panels are sold so, else the next larger', () => {
    expect(panelOf(planned(24))).toEqual([['panel:24', 1]]);
    expect(panelOf(planned(13))).toEqual([['panel:16', 1]]);
    expect(panelOf(planned(33))).toEqual([['panel:40', 1]]);
  });
  test('spaces not known: the smallest panel that holds the breakers with the spares asked for, and its directory', () => {
    const plan = planned('unknown');
    const used = plan.directory.filter((d) => d.circuit !== null).length;
    const bought = Number(panelOf(plan)[0]![0]!.toString().split(':')[1]);
    expect(PANEL_SPACES).toContain(bought);
    expect(bought).toBeGreaterThanOrEqual(used + small.practice.spareSpaces);
    expect(PANEL_SPACES.filter((n) => n >= used + small.practice.spareSpaces && n < bought)).toEqual([]);
    expect(plan.directory.length).toBe(bought);
    expect(plan.price.missing).toEqual([]);
  });
  test('a size nobody sells, or one the book has no price for, is named as missing and not made cheaper', () => {
    expect(planned(77).price.missing).toEqual(['panel:77']);
    const without = { ...defaultBook, materials: defaultBook.materials.filter((m) => m.id !== 'panel:24') };
    expect(planned(24, without).price.missing).toEqual(['panel:24']);
    expect(panelOf(planned(23, without))).toEqual([['panel:30', 1]]);
  });
});

describe('a surge device', () => {
  const spdOf = (job: Job) => {
    const option = job.options.find((o) => o.kind === 'in place')!;
    return planOption(job, option).plan.price;
  };
  test('that a rule requires cannot be declined, and shows what it costs', () => {
    const washer = demoJob('washer');
    const price = spdOf(washer);
    const spd = price.alternates.find((a) => a.id === 'spd')!;
    expect(spd).toMatchObject({ required: true, taken: true, rule: 'SPD-FDR' });
    const lines = price.lines.filter((l) => l.alternate === 'spd');
    expect(lines.map((l) => l.item)).toEqual(['occupied', 'spd', 'spd']); // material, its hours, and what an occupied house adds to them
    // what it adds is its lines and what overhead, profit and tax put on them
    expect(spd.cents).toBeGreaterThan(lines.reduce((n, l) => n + l.likelyCents, 0));
    expect(spdOf({ ...washer, alternates: [{ id: 'spd', taken: false }] })).toEqual(price);
  });
  test('that none requires is left until it is taken, and then adds just what it said', () => {
    const left = spdOf(small);
    const taken = spdOf({ ...small, alternates: [{ id: 'spd', taken: true }] });
    const sum = (price: typeof left) => price.lines.reduce((n, l) => n + l.likelyCents, 0);
    expect(left.alternates.find((a) => a.id === 'spd')).toMatchObject({ required: false, taken: false });
    expect(sum(taken) - sum(left)).toBe(left.alternates.find((a) => a.id === 'spd')!.cents);
  });
});

test('what hangs on an old panel is moved over; what ends with the work is not, and what nobody told waits', () => {
  // no source: the survey says which
  const hung = (becomes: 'moves' | 'ends' | 'unknown') => {
    const attached = [{ kind: 'timer', becomes, answer: 'as told' }];
    const job = { ...small, enclosures: small.enclosures.map((e) => ({ ...e, attached })) };
    return planOption(job, job.options.find((o) => o.kind === 'in place')!).plan.price;
  };
  const hours = (of: ReturnType<typeof hung>) => of.lines.filter((l) => l.item === 'attached device').length;
  expect([hours(hung('moves')), hours(hung('ends')), hours(hung('unknown'))]).toEqual([1, 0, 1]);
  expect([hung('moves').missing, hung('ends').missing]).toEqual([[], []]);
  expect(hung('unknown').missing).toEqual(['/enclosures/0/attached/0/becomes']);
});

describe('what a price waits for', () => {
  const planOf = (job: Job, id: string) => planOption(job, job.options.find((o) => o.id === id)!).plan;
  const fed = (job: Job, feeder: Partial<Job['feeder']>): Job => ({ ...job, feeder: { ...job.feeder, ...feeder } });
  /** What the price says of a pointer it waits for; null where it does not wait. */
  const waits = (job: Job, id: string, pointer: string) => {
    const { missing, missingSay, complete } = planOf(job, id).price;
    const at = missing.indexOf(pointer);
    if (at >= 0) expect(complete).toBe(false);
    return missingSay[at] ?? null;
  };
  // no source: what nobody measured is not in a price
  test('a new feeder outside the room, until it is measured, unless its source stands in the room or it is kept', () => {
    const OUTSIDE = '/feeder/outside';
    const unmeasured = fed(small, { outside: 'unknown' });
    expect(waits(small, 'relocate-a', OUTSIDE)).toBeNull();
    expect(waits(unmeasured, 'relocate-a', OUTSIDE)).toContain('follow it from the meter');
    expect(waits(unmeasured, 'in-place', OUTSIDE)).toBeNull();
    const subpanel = { ...unmeasured, options: small.options.map((o) => ({ ...o, serviceDisconnect: null })) };
    const from = (panel: string) => fed(subpanel, { from: { ...small.feeder.from, panel } });
    expect(waits(from('panel in the garage'), 'relocate-a', OUTSIDE)).toContain('its source (panel in the garage)');
    expect(waits(from(small.enclosures[0]!.id), 'relocate-a', OUTSIDE)).toBeNull();
  });
  // the crew's own rule, job file: slack 5 %, at least 6 in; 48 in left at each end; cut in steps of 6 in
  test('measured, its length is cut, pulled and held along with the way in the room', () => {
    const known = planOf(fed(small, { outside: 270 }), 'relocate-a').feeder;
    const without = planOf(fed(small, { outside: 'unknown' }), 'relocate-a').feeder;
    const inRoom = known.legs.reduce((n, l) => n + Math.hypot(...l.from.map((c, i) => c - l.to[i]!)), 0);
    const cut = (way: number) => Math.ceil((way * 1.05 + 2 * 48) / 6) * 6;
    expect([known.outside, known.cutLength]).toEqual([270, cut(inRoom + 270)]);
    expect([without.outside, without.cutLength]).toEqual(['unknown', cut(inRoom)]);
    expect(known.supports - without.supports).toBe(5); // 334.30: 270 in at most 54 in apart
  });
  test('a feeder nobody drew: no length is made up from where it might come in', () => {
    const undrawn = fed(small, { path: [], entersAt: [0, 0, 0] });
    expect(planOf(undrawn, 'in-place').feeder.why).toContain('cannot be told');
    for (const { id } of small.options) {
      const { feeder, price } = planOf(undrawn, id);
      expect([feeder.way, feeder.cutLength, feeder.legs, feeder.outside]).toEqual(['replaced', 0, [], 'unknown']);
      expect(price.lines.filter((l) => l.item === 'feeder ft')).toEqual([]);
      expect(waits(undrawn, id, '/feeder/path')).toContain('cannot be told');
    }
  });
  test('a breaker nobody read the rating of: the rating stands among what is unknown', () => {
    const job = demoJob('washer');
    const { plans, unknown } = planJob(job, { options: ['in-place'] });
    const at = job.circuits.findIndex((c) => c.amps === 'unknown');
    expect(plans[0]!.price.missing).toEqual([`breaker:rating unknown (${job.circuits[at]!.id})`]);
    expect(unknown.find((u) => u.path === `/circuits/${at}/amps`)?.blocks).toContain('price');
  });
});
