import { describe, expect, test } from 'vitest';
import { holeCentersApart, holeDiameter } from '../../../src/calculations/holes';
import {
  cableToSupportIn,
  canRunOnUndersides,
  heldAtEveryJoist,
  supportCount,
} from '../../../src/calculations/supports';
import { boxCatalogue } from '../../../src/standards/boxCatalogue';
import { conductorVolume } from '../../../src/standards/boxVolumes';
import type { Cable } from '../../../src/standards/cable';
import { cableDiameter } from '../../../src/standards/cableDimensions';
import { cableFromName } from '../../../src/standards/cableFromName';
import { cableTrade } from '../../../src/standards/cableNames';
import { connectorSize } from '../../../src/standards/connectors';
import { torqueFor } from '../../../src/standards/torque';
import { marginFromMarkup, markupFromMargin } from '../../../src/standards/wages';
import { OPEN_DOOR_WAY } from '../../../src/standards/workingSpace';

const nm = (name: string, over: Partial<Cable> = {}): Cable => {
  const [size, count] = name.split('/') as [string, string];
  return {
    kind: 'NM',
    size,
    metal: 'Cu',
    hots: count === '3' ? 2 : 1,
    neutral: 'insulated',
    ground: true,
    insulation: 90,
    ...over,
  };
};
const ser = (size: string, over: Partial<Cable> = {}): Cable =>
  nm(`${size}`, { kind: 'SE-R', size, metal: 'Al', hots: 2, ...over });

test('the box catalogue: smallest first, volumes by the table or the inside size', () => {
  const volumes = boxCatalogue.map((b) => b.volumeIn3);
  expect(volumes).toEqual([...volumes].sort((a, b) => a - b));
  const of = (size: string) => boxCatalogue.find((b) => b.size === size)?.volumeIn3;
  // Table 314.16(A); 12 × 12 × 4 in inside, 314.16(A)(2).
  expect(['4 x 1-1/2', '4 x 2-1/8', '4-11/16 x 2-1/8', '12x12x4'].map(of)).toEqual([21, 30.3, 42, 576]);
});

test('a name that is a key of every object is no conductor', () => {
  expect(conductorVolume('toString')).toBeUndefined();
  expect(cableDiameter(nm('toString/2'))).toBeUndefined();
});

describe('holes (trade-review defaults: 3/4 in to two, 1 in to three two-wire; common practice)', () => {
  test('two-wire branch cable goes by the rule of thumb, and a fourth by area', () => {
    const of = (count: number) => holeDiameter(Array.from({ length: count }, () => nm('12/2')));
    expect([1, 2, 3, 4].map(of)).toEqual([0.75, 0.75, 1, 1]);
    expect(holeDiameter(Array.from({ length: 3 }, () => nm('10/2')))).toBe(1);
  });
  test('thicker cable by its diameter and an eighth of play', () => {
    expect(holeDiameter([nm('6/3')])).toBe(1);
    expect(holeDiameter([ser('2')])).toBe(1.125);
    expect(holeDiameter([ser('4/0')])).toBe(1.75);
  });
  test('more cable never takes a smaller hole; an unknown size has none', () => {
    const kinds = [nm('14/2'), nm('14/3'), nm('12/2'), nm('10/3'), nm('6/3')];
    for (const a of kinds)
      for (const b of kinds) expect(holeDiameter([a, b])!).toBeGreaterThanOrEqual(holeDiameter([a])!);
    expect(holeDiameter([nm('12/2'), nm('12/2', { size: 'unknown' })])).toBeUndefined();
    expect(holeDiameter([])).toBeUndefined();
  });
  test('centers keep 3 in, and 2 in of wood between large holes', () => {
    expect([holeCentersApart(0.75, 1), holeCentersApart(1.75, 1.75)]).toEqual([3, 3.75]);
  });
});

describe('supports (334.30: 54 in apart, 12 in from an entry)', () => {
  test.each([
    [0, 0],
    [12, 1],
    [24, 1],
    [24.1, 2],
    [78, 2],
    [78.1, 3],
    [132, 3],
    [132.1, 4],
  ])('%d in of NM: %d', (inches, count) => expect(supportCount(inches)).toBe(count));
  test('metal-clad cable goes 72 in (330.30)', () =>
    expect([96, 96.1].map((x) => supportCount(x, 'MC'))).toEqual([2, 3]));
  test('cable between entry and first support: no cap in 2017, 18 in after, the strictest when not known', () =>
    expect([2017, 2020, 2023, 2026, 'unknown'].map((e) => cableToSupportIn(e as 2017))).toEqual([
      null,
      18,
      18,
      18,
      18,
    ]));
});

test('joist undersides (334.15(C)): not smaller than 6/2 or 8/3; armored at every joist', () => {
  expect(['14/2', '8/2', '6/2', '10/3', '8/3', '6/3'].map((n) => canRunOnUndersides(nm(n)))).toEqual([
    false,
    false,
    true,
    false,
    true,
    true,
  ]);
  expect(canRunOnUndersides(nm('8/2', { hots: 'unknown' }))).toBe('unknown');
  expect(canRunOnUndersides(nm('6/2', { hots: 'unknown' }))).toBe(true);
  expect(canRunOnUndersides(nm('10/2', { hots: 'unknown' }))).toBe(false);
  expect(canRunOnUndersides(nm('12/2', { size: 'unknown' }))).toBe('unknown');
  expect(canRunOnUndersides(nm('12/2', { kind: 'unknown' }))).toBe('unknown');
  expect(canRunOnUndersides(nm('12/2', { kind: 'MC' }))).toBe(true);
  expect([heldAtEveryJoist('MC'), heldAtEveryJoist('NM')]).toEqual([true, false]);
});

test('connectors: one trade size a cable, larger cable never a smaller one (common practice)', () => {
  expect(['14/2', '10/2', '8/3', '6/3'].map((n) => connectorSize(nm(n)))).toEqual(['1/2', '1/2', '3/4', '3/4']);
  expect(['2', '1/0', '4/0'].map((s) => connectorSize(ser(s)))).toEqual(['1', '1-1/4', '2']);
  expect(connectorSize(nm('14/2', { kind: 'knob-and-tube' }))).toBeUndefined();
});

test('sizes that no data sheet was read for say so', () => {
  expect(cableDiameter(nm('12/2'))?.standing).toBe('one source');
  expect(cableDiameter(nm('6/3'))?.standing).toBe('memory');
  expect(cableDiameter(nm('12/2', { metal: 'unknown' }))?.standing).toBe('unverified');
  expect(cableDiameter(ser('2', { metal: 'Cu' }))?.standing).toBe('unverified');
});

test('a trade name read back gives the cable it was written from', () => {
  for (const cable of [
    nm('12/2'),
    nm('14/3'),
    nm('12/2', { metal: 'Al' }),
    nm('12/2', { kind: 'MC' }),
    nm('14/2', { kind: 'UF' }),
    nm('14/2', { kind: 'NM without ground', ground: false }),
    ser('2'),
    ser('4/0', { metal: 'Cu' }),
  ]) {
    const read = cableFromName(cableTrade(cable));
    expect(read).toEqual({
      kind: cable.kind,
      size: cable.size,
      insulated: cable.hots === 2 ? 3 : 2,
      metal: cable.metal,
    });
  }
  for (const text of ['', '12', '12/9', '2-2-3-4 SER', '?/2 NM']) expect(cableFromName(text)).toBeUndefined();
});

test('torque says when it is from memory, and is silent where the table is (Annex I Table I.1)', () => {
  expect(torqueFor({ awg: '2', screw: 'hex, other' })).toEqual({ lbIn: 150, standing: 'confirmed' });
  expect(torqueFor({ awg: '500', screw: 'hex, other' })?.standing).toBe('memory');
  expect(torqueFor({ awg: '1/0', screw: 'slotted, narrow slot' })).toBeUndefined();
  expect(torqueFor({ awg: '2000', screw: 'hex, other' })).toBeUndefined();
});

test('markup and margin are not the same: 25 % on cost is 20 % of price (file 12)', () => {
  expect(marginFromMarkup(0.25)).toBeCloseTo(0.2, 12);
  expect(markupFromMargin(marginFromMarkup(0.5))).toBeCloseTo(0.5, 12);
});

test('the way past open doors is asked from 2023, at 90° from 2026 (rules E4)', () => {
  expect([OPEN_DOOR_WAY[2017], OPEN_DOOR_WAY[2020]]).toEqual([null, null]);
  expect([OPEN_DOOR_WAY[2023]?.doorsAt90, OPEN_DOOR_WAY[2026]?.doorsAt90]).toEqual([false, true]);
});
