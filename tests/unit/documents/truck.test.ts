import { expect, test } from 'vitest';
import { readLengths, truckAfter, withLengths } from '../../../src/documents/truck';
import type { Cut } from '../../../src/facts/result';

const coil = (length: number, bought: boolean, left: number): Cut['coils'][number] => ({
  length,
  bought,
  left,
  kept: left >= 180,
  pieces: [{ homeRun: 'h', length: length - left }],
});
const cut = (cable: string, ...coils: Cut['coils']): Cut => ({ cable, coils, cents: 0, proof: { best: true } });

test('what is cut leaves the truck, remnants of 15 ft come into it, the rest stays', () => {
  const stock = [
    { cable: 'cable:12/2 NM', lengths: [300, 144, 300] },
    { cable: '14/2 NM', lengths: [200] },
  ];
  const cuts = [
    cut('12/2 NM', coil(300, false, 20), coil(600, true, 180), coil(600, true, 179.5)),
    cut('10/3 NM', coil(300, true, 204)),
    cut('14/2 NM', coil(200, false, 0)),
  ];
  expect(truckAfter(stock, cuts)).toEqual([
    { cable: '10/3 NM', lengths: [204] },
    { cable: '12/2 NM', lengths: [300, 180, 144] },
  ]);
  expect(truckAfter([], [])).toEqual([]);
});

test('lengths as typed, and the one that is none', () => {
  expect(readLengths(`25', 18' 6"; 140`)).toEqual({ ok: true, value: [300, 222, 140] });
  expect(readLengths('')).toEqual({ ok: true, value: [] });
  expect(readLengths(`25', much`)).toEqual({ ok: false, error: 'much' });
  expect(readLengths('0')).toEqual({ ok: false, error: '0' });
});

test('a cable’s lengths are set, and none takes it away', () => {
  const stock = [{ cable: '12/2 NM', lengths: [300] }];
  expect(withLengths(stock, 'cable:14/2 NM', [96, 120])).toEqual([
    { cable: '12/2 NM', lengths: [300] },
    { cable: '14/2 NM', lengths: [120, 96] },
  ]);
  expect(withLengths(stock, '12/2 NM', [])).toEqual([]);
});
