import { describe, expect, test } from 'vitest';
import type { Work } from '../../../src/facts/work';
import { DEFAULT_TERMS } from '../../../src/job/practice';
import type { Way } from '../../../src/job/schema';
import { conditionWork } from '../../../src/pricing/conditions';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { takesOldPlace } from '../../../src/pricing/oldPlace';
import { type TimeAsk, timePlan as timePlanOf } from '../../../src/pricing/time';
import { demoJob } from '../job/demo';

/** A home run here is its only circuit. */
const timePlan = (ask: Omit<TimeAsk, 'circuitsOf' | 'terms' | 'spaceAtSource'> & Partial<TimeAsk>) =>
  timePlanOf({ circuitsOf: (id) => [id], terms: DEFAULT_TERMS, spaceAtSource: true, ...ask });

const piece = (item: string, quantity = 1, homeRuns: readonly string[] = []): Work => ({
  item,
  quantity,
  homeRuns,
  rule: null,
  alternate: null,
});
const ids = (prefix: string, count: number) => Array.from({ length: count }, (_, i) => `${prefix}${i + 1}`);
const reused = ids('r', 10);
const spliced = ids('s', 14);
const runs = [
  ...reused.map((homeRun) => ({ homeRun, way: 'reuse' as Way })),
  ...spliced.map((homeRun) => ({ homeRun, way: 'cut-in' as Way })),
];

/**
 * A worked example of common practice, no source: 24 cables, 10 reused, 14 spliced in 4 boxes, 8 ft extensions, 20 holes,
 * 20 ft feeder with six lugs, 8 AFCI breakers, two inspections, two days.
 */
const work: readonly Work[] = [
  piece('reuse', 10, reused),
  piece('splice', 14, spliced),
  piece('box:4-11/16 x 2-1/8', 4, spliced),
  piece('pull', 14, spliced),
  piece('pull ft', 14 * 8, spliced),
  piece('hole', 20, spliced),
  piece('mount panel'),
  piece('strip old panel'),
  piece('strip cable', 24, [...reused, ...spliced]),
  piece('breaker:1p 20', 10, reused),
  piece('breaker:1p 20', 2, spliced.slice(0, 2)),
  piece('breaker:1p 20 AFCI', 8, spliced.slice(2, 10)),
  piece('breaker:2p 30', 4, spliced.slice(10)),
  piece('feeder'),
  piece('feeder ft', 20),
  piece('lug', 3),
  piece('lug at source', 3),
  piece('spd'),
  piece('ground bar'),
  piece('shutdown'),
  piece('test'),
  piece('test circuit', 24),
  piece('directory', 24),
  piece('inspection', 2),
  piece('load in', 2),
  piece('AFCI trouble', 8),
];
const circuits = [...reused, ...spliced];
/** A cabinet on a new place, with a new feeder. */
const elsewhere = { inOldPlace: false, feederKept: false };
const answer = timePlan({ ...elsewhere, work, book: defaultBook, runs, circuits });
const sum = (...names: string[]) =>
  answer.plan.byTask.filter(({ id }) => names.includes(id)).reduce((all, { hours }) => all + hours, 0);

describe('hours', () => {
  test('the worked example part by part (common practice, no source)', () => {
    expect(sum('reuse')).toBeCloseTo(3.5, 3);
    expect(sum('splice')).toBeCloseTo(3.5, 3);
    expect(sum('hang box')).toBeCloseTo(1.4, 3);
    expect(sum('pull', 'pull ft')).toBeCloseTo(3.4, 1);
    expect(sum('hole')).toBeCloseTo(1.2, 3);
    expect(sum('mount panel')).toBeCloseTo(1.5, 3);
    expect(sum('strip old panel', 'strip cable')).toBeCloseTo(1.95, 3);
    expect(sum('land 1p', 'land AFCI', 'land 2p')).toBeCloseTo(6.6, 3);
    expect(sum('feeder', 'feeder ft', 'lug')).toBeCloseTo(3.3, 3);
    expect(sum('test', 'test circuit', 'directory')).toBeCloseTo(3.9, 1);
    expect(answer.crewHours).toBeGreaterThan(37.5);
    expect(answer.crewHours).toBeLessThan(38.5);
    expect(answer.plan.days).toBeCloseTo(2 + 1 / 3, 1);
  });

  test('its outage: 13.95 labor-hours, 7.0 hours for two (the example rounds the 24 tests from 1.44 h to 1.5 h)', () => {
    const outage = answer.plan.byTask
      .filter(({ when }) => when === 'outage')
      .reduce((all, { hours }) => all + hours, 0);
    expect(outage).toBeCloseTo(13.95 - 0.06, 3);
    expect(answer.outageHours).toBeCloseTo(7, 0.5);
    expect(answer.plan.byTask).toContainEqual(expect.objectContaining({ id: 'land 1p', hours: 2, when: 'outage' }));
    expect(answer.plan.byTask).toContainEqual(
      expect.objectContaining({ id: 'land 1p', hours: 0.4, when: 'before outage' }),
    );
    expect(answer.plan.byTask).toContainEqual(expect.objectContaining({ id: 'lug', hours: 0.75, when: 'outage' }));
    expect(answer.crewHours - outage).toBeCloseTo(24, 0);
  });

  test('every circuit is off for the whole outage', () => {
    expect(answer.plan.outage).toHaveLength(24);
    expect(new Set(answer.plan.outage.map(({ hours }) => hours))).toEqual(new Set([answer.outageHours]));
  });

  test('order of the input changes nothing', () => {
    expect(
      timePlan({
        ...elsewhere,
        work: [...work].reverse(),
        book: defaultBook,
        runs: [...runs].reverse(),
        circuits: [...circuits].reverse(),
      }),
    ).toEqual(answer);
  });

  test('one electrician has power off twice as long and needs twice the days', () => {
    const alone = timePlan({
      ...elsewhere,
      work,
      book: defaultBook,
      runs,
      circuits,
      terms: { ...DEFAULT_TERMS, people: 1 },
    });
    expect(alone.crewHours).toBe(answer.crewHours);
    expect(alone.outageHours).toBeCloseTo(2 * answer.outageHours, 3);
    expect(alone.plan.days).toBeCloseTo(2 * answer.plan.days, 3);
  });

  test('an occupied house slows every part alike', () => {
    const slower = [...work, ...conditionWork(work, defaultBook, { occupied: true, crowded: false })];
    const slow = timePlan({ ...elsewhere, work: slower, book: defaultBook, runs, circuits });
    const share = defaultBook.tasks.find(({ id }) => id === 'occupied')!.likely;
    expect(slow.crewHours).toBeCloseTo(answer.crewHours * (1 + share), 2);
    expect(slow.outageHours).toBeCloseTo(answer.outageHours * (1 + share), 2);
  });

  test('nothing says a landing can be done ahead: it counts in the outage', () => {
    const unknown = timePlan({
      ...elsewhere,
      work: [piece('breaker:1p 20')],
      book: defaultBook,
      runs: [],
      circuits: [],
    });
    expect(unknown.plan.byTask).toMatchObject([{ id: 'land 1p', hours: 0.2, when: 'outage' }]);
  });

  // Work on what is live in the old cabinet is done dead: OSHA 29 CFR 1910.333(a)(1), from memory; order: common practice.
  const whens = (items: readonly string[], place: typeof elsewhere) =>
    timePlan({
      work: items.map((item) => piece(item)),
      book: defaultBook,
      runs: [],
      circuits: [],
      ...place,
    }).plan.byTask.map(({ id, when }) => [id, when]);
  test('a cabinet on the old one’s place: down, up and landed in the outage', () => {
    const items = ['remove old panel', 'mount panel', 'mount on masonry', 'lug', 'main:100', 'spd'];
    for (const [id, when] of whens(items, { inOldPlace: true, feederKept: false }))
      expect([id, when]).toEqual([id, 'outage']);
  });
  test('a cabinet elsewhere is hung before it, the old one comes down after it', () => {
    expect(whens(['remove old panel', 'mount panel', 'lug', 'main:100'], elsewhere)).toEqual([
      ['lug', 'before outage'],
      ['main', 'before outage'],
      ['mount panel', 'before outage'],
      ['remove old panel', 'after'],
    ]);
  });
  test('a kept feeder is landed in the outage wherever the cabinet hangs', () => {
    expect(whens(['mount panel', 'lug'], { inOldPlace: false, feederKept: true })).toEqual([
      ['lug', 'outage'],
      ['mount panel', 'before outage'],
    ]);
  });
  test('a service disconnect is tied in in the outage', () => {
    expect(whens(['service disconnect:100'], elsewhere)).toEqual([['service disconnect', 'outage']]);
  });
  test('on the old place even an extended cable is landed in the outage', () => {
    const same = timePlan({ ...elsewhere, inOldPlace: true, work, book: defaultBook, runs, circuits });
    expect(same.plan.byTask.filter(({ id, when }) => id === 'land 1p' && when === 'before outage')).toEqual([]);
    // mounting 1.5 h, landings of extended cables, three lugs and the surge device are added; the sum is the same
    expect(same.crewHours).toBeCloseTo(answer.crewHours, 3);
    expect(same.outageHours).toBeGreaterThan(answer.outageHours + 0.75);
  });
});

describe('the day', () => {
  const at = (terms: Partial<typeof DEFAULT_TERMS>, more: Partial<TimeAsk> = {}) =>
    timePlan({ ...elsewhere, work, book: defaultBook, runs, circuits, ...more, terms: { ...DEFAULT_TERMS, ...terms } });

  test('one, two and three people: labor is the same, a third at two cabinets saves less than a third', () => {
    const [one, two, three] = ([1, 2, 3] as const).map((people) => at({ people }));
    expect(one!.crewHours).toBe(three!.crewHours);
    expect(one!.outageHours).toBeCloseTo(13.89, 2); // 13.95 labor-hours of the example, its tests unrounded
    expect(two!.outageHours).toBeCloseTo(13.89 / 2, 2);
    // at the cabinets: shutdown .75, strip 1.95, lugs .75, ten landings 2.0, tests 1.44 = 6.89 for two at once
    expect(three!.outageHours).toBeCloseTo(Math.max(13.89 / 3, 6.89 / 2), 2);
    expect(
      at({})
        .plan.crews.filter((c) => c.cutOver === 'all at once')
        .map((c) => c.outageHours),
    ).toEqual([one, two, three].map((a) => a!.outageHours));
  });

  test('rolled over: the house is dark only for the feeder, each extended circuit for its own work', () => {
    const { plan, crewHours, outageHours } = at({ cutOver: 'roll-over' });
    expect(plan.cutOver).toBe('roll-over');
    expect(outageHours).toBeCloseTo((0.75 + 3 * 0.25) / 2, 3); // shutdown, three lugs at the source, for two
    expect(crewHours).toBe(answer.crewHours); // the asker adds the switching work; here it is not in it
    const off = new Map(plan.outage.map(({ circuit, hours }) => [circuit, hours]));
    // strip .05 + splice .25 + test .06, one electrician, after the house outage
    expect(off.get('s1')).toBeCloseTo(outageHours + 0.05 + 0.25 + 0.06, 3);
    expect(off.get('r1')).toBeGreaterThan(off.get('s1')!);
    expect(plan.byTask.filter(({ id, when }) => id === 'splice' && when === 'outage')).toEqual([]);
  });

  test.each([
    ['old place', { inOldPlace: true }],
    ['feeder kept', { feederKept: true }],
    ['no space', { spaceAtSource: false }],
    ['space unknown', { spaceAtSource: 'unknown' }],
  ] as const)('not rolled over: %s', (_, more) => {
    const asked = at({ cutOver: 'roll-over' }, more);
    expect(asked.plan.cutOver).toBe('all at once');
    expect(asked.plan.remarks.map((r) => r.id)).toContain('no roll-over');
    expect(asked.plan.crews.some((c) => c.cutOver === 'roll-over')).toBe(false);
    expect(asked.outageHours).toBe(at({}, more).outageHours);
  });

  test('the last hour to shut off ends, nine times of ten, within the day; a longer outage is remarked', () => {
    const { plan, outageHours } = at({});
    expect(plan.longOutageHours).toBeGreaterThan(outageHours);
    expect(plan.goNoGo! + plan.longOutageHours).toBeLessThanOrEqual(17);
    expect(17.25 - plan.longOutageHours).toBeGreaterThan(plan.goNoGo!);
    expect(plan.remarks).toEqual([]);
    const alone = at({ people: 1 });
    expect(alone.plan.goNoGo).toBeNull();
    expect(alone.plan.remarks.map((r) => r.id)).toEqual(['outage over a day']);
  });

  test('inspections hold the work: rough-in where it is moved, release where the utility pulled', () => {
    expect(at({}).plan.holds.map((h) => h.id)).toEqual(['rough-in', 'final']);
    const more = { work: [...work, piece('permit'), piece('utility pull'), piece('patch', 4)] };
    expect(at({}, more).plan.holds.map((h) => h.id)).toEqual(['permit', 'rough-in', 'release', 'final']);
    expect(at({}, { work: [piece('inspection')] }).plan.holds.map((h) => h.id)).toEqual(['final']);
  });
});

describe('the place of the old cabinet', () => {
  const job = demoJob('washer');
  test.each(job.options.map((o) => [o.id, o] as const))('%s', (id, option) => {
    expect(takesOldPlace(job, option)).toBe(id === 'in-place');
  });
});
