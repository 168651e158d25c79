import { expect, test } from 'vitest';
import { directMills, indexBook, missingFor, unitMills } from '../../../src/pricing/assemblies';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { assemblyOf } from '../../../src/pricing/items';

const unit = unitMills(defaultBook);
const rate = defaultBook.dollarsPerCrewHour;
const material = (id: string) => defaultBook.materials.find((entry) => entry.id === id)!.dollars;

test('a unit is its materials and its likely hours, in whole mills', () => {
  expect(unit('hole')).toBe(Math.round(0.06 * rate * 1000));
  expect(unit('cable:12/2 NM')).toBe(Math.round(material('cable:12/2 NM') * 1000));
  expect(unit('splice')).toBe(Math.round(3 * material('splice:14-10 Cu') * 1000 + 0.25 * rate * 1000));
  expect(unit('breaker:1p 20 AFCI')).toBe(Math.round(material('breaker:1p 20 AFCI') * 1000 + 0.35 * rate * 1000));
  expect(unit('splice Al')! - unit('splice')!).toBe(
    Math.round((3 * (material('splice:Al-Cu') - material('splice:14-10 Cu')) + 0.15 * rate) * 1000),
  );
});

test('the landing goes with the breaker', () => {
  const task = (item: string) => assemblyOf(item)?.tasks[0]?.id;
  expect(task('breaker:1p 15')).toBe('land 1p');
  expect(task('breaker:1p 15 AFCI+GFCI')).toBe('land AFCI');
  expect(task('breaker:2p 20 AFCI')).toBe('land AFCI');
  expect(task('breaker:2p 30')).toBe('land 2p');
  expect(task('breaker:2p 50')).toBe('land range');
  expect(task('feeder breaker:2p 90')).toBe('feeder breaker');
  expect(task('box:4-11/16 x 2-1/8')).toBe('hang box');
  expect(task('box:12x12x4')).toBe('hang large box');
});

test('what the book does not have has no price and is named', () => {
  const without = { ...defaultBook, tasks: defaultBook.tasks.filter((task) => task.id !== 'land 1p') };
  expect(unitMills(without)('breaker:1p 20')).toBeUndefined();
  expect(missingFor(indexBook(without), 'breaker:1p 20')).toEqual(['land 1p']);
  expect(missingFor(indexBook(defaultBook), 'cable:9/9 NM')).toEqual(['cable:9/9 NM']);
  for (const item of ['breaker:3p 20', 'breaker:', 'constructor', 'constructor:x', 'toString:x', '', ':', 'nothing'])
    expect([item, unit(item), missingFor(indexBook(defaultBook), item)]).toEqual([item, undefined, [item]]);
});

test('the job’s own price of a splice spot counts before the book’s', () => {
  expect(unit('splice spot')).toBe(45_000);
  expect(unitMills(defaultBook, { spliceSpotCents: 6_250 })('splice spot')).toBe(62_500);
});

test('the sum of work is unit price times quantity, with money entered in the job added', () => {
  const piece = (item: string, quantity: number, more = {}) => ({
    item,
    quantity,
    homeRuns: [],
    rule: null,
    alternate: null,
    ...more,
  });
  const work = [
    piece('hole', 20),
    piece('pull ft', 8.25),
    piece('move:washer', 1, { cents: 12_345 }),
    piece('move:tank', 1, { cents: null }),
  ];
  expect(directMills(work, defaultBook)).toBe(Math.round(20 * unit('hole')! + 8.25 * unit('pull ft')! + 123_450));
  expect(directMills([...work].reverse(), defaultBook)).toBe(directMills(work, defaultBook));
});
