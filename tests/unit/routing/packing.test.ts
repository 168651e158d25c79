import { describe, expect, it } from 'vitest';
import type { BoxKind } from '../../../src/facts/routing';
import { type BoxContents, makePacker, mostCables, type SpliceLoad } from '../../../src/routing/packing';

// 314.16(B): 14 = 2.0, 12 = 2.25, 10 = 2.5 cu in.; grounds from 2020: four are one allowance of the largest, each more a quarter.
const VOLUME: Record<string, number> = { '14': 2, '12': 2.25, '10': 2.5 };
const fill = (c: BoxContents): number => {
  const sum = c.conductors.reduce((s, x) => s + x.count * VOLUME[x.awg]!, 0);
  const grounds = c.grounds.reduce((s, x) => s + x.count, 0);
  const largest = Math.max(0, ...c.grounds.map((x) => VOLUME[x.awg]!));
  const clamps = c.clamps ? Math.max(0, ...c.conductors.map((x) => VOLUME[x.awg]!)) : 0;
  return sum + clamps + (grounds === 0 ? 0 : largest * (1 + Math.max(0, grounds - 4) / 4));
};
const two = (awg: string): SpliceLoad => ({
  key: `${awg}/2`,
  conductors: [{ awg, count: 4 }],
  grounds: [{ awg, count: 2 }],
  connectors: ['1/2', '1/2'],
});
const three = (awg: string): SpliceLoad => ({
  key: `${awg}/3`,
  conductors: [{ awg, count: 6 }],
  grounds: [{ awg, count: 2 }],
  connectors: ['1/2', '1/2'],
});
const kinds: BoxKind[] = [
  { size: '4 x 1-1/2', material: 'metal', volumeIn3: 21, clamps: false },
  { size: '4 x 2-1/8', material: 'metal', volumeIn3: 30.3, clamps: false },
  { size: '4-11/16 x 2-1/8', material: 'metal', volumeIn3: 42, clamps: false },
  { size: 'plastic', material: 'nonmetallic', volumeIn3: 22.5, clamps: true },
];
const PRICE: Record<string, number> = {
  '4 x 1-1/2': 24_000,
  '4 x 2-1/8': 27_000,
  '4-11/16 x 2-1/8': 33_000,
  plastic: 22_500,
};
const price = { box: (k: BoxKind) => PRICE[k.size]!, connector: () => 1_200 };

/** Every partition of a handful of cables, each part in its cheapest box. */
const brute = (loads: readonly SpliceLoad[]): number => {
  let best = Number.POSITIVE_INFINITY;
  const cost = (part: readonly SpliceLoad[]): number => {
    const contents = { conductors: part.flatMap((l) => l.conductors), grounds: part.flatMap((l) => l.grounds) };
    const fits = kinds.filter(
      (k) => part.length <= mostCables(k) && fill({ ...contents, clamps: k.clamps }) <= k.volumeIn3 + 1e-9,
    );
    return Math.min(...fits.map((k) => PRICE[k.size]! + (k.clamps ? 0 : part.length * 2400)), Number.POSITIVE_INFINITY);
  };
  const place = (i: number, parts: SpliceLoad[][]) => {
    if (i === loads.length) {
      best = Math.min(
        best,
        parts.reduce((s, p) => s + cost(p), 0),
      );
      return;
    }
    parts.forEach((_, k) => {
      place(
        i + 1,
        parts.map((p, j) => (j === k ? [...p, loads[i]!] : p)),
      );
    });
    place(i + 1, [...parts, [loads[i]!]]);
  };
  place(0, []);
  return best;
};

describe('splice boxes', () => {
  it('three 12/2 splices do not fit 30.3 cu in. from 2020 on, and do fit 42', () => {
    // 12 conductors × 2.25 = 27, grounds 6: 2.25 × 1.5 = 3.375; 30.375 > 30.3 (314.16(B)(5), trade review (d))
    const packer = makePacker([two('12')], kinds, fill, price);
    const packed = packer.pack([3])!;
    expect(packed.boxes.map((b) => b.kind.size)).toEqual(['4-11/16 x 2-1/8']);
    expect(packed.boxes[0]!.fillIn3).toBeCloseTo(30.375, 9);
  });

  it('is the cheapest of all partitions, for every mix of up to seven cables', () => {
    const all = [two('14'), two('12'), three('12'), two('10')];
    const packer = makePacker(all, kinds, fill, price);
    const order = packer.types.map((t) => all.find((l) => l.key === t.key)!);
    for (let a = 0; a <= 3; a++)
      for (let b = 0; b <= 3; b++)
        for (let c = 0; c <= 1; c++) {
          const counts = [0, a, c, b];
          const loads = counts.flatMap((n, i) => Array.from({ length: n }, () => order[i]!));
          if (loads.length === 0) continue;
          const packed = packer.pack(counts)!;
          expect(packed.exact).toBe(true);
          expect(packed.mills).toBe(brute(loads));
          const back = order.map((_, i) => packed.boxes.reduce((s, box) => s + box.counts[i]!, 0));
          expect(back).toEqual(counts);
        }
  });

  it('a cable that fits no box has no packing', () => {
    const big: SpliceLoad = { ...two('12'), key: 'big', conductors: [{ awg: '12', count: 40 }] };
    expect(makePacker([big], kinds, fill, price).pack([1])).toBeNull();
  });

  it('a bank too large for the exact search is packed, each box within its volume', () => {
    const all = [two('14'), two('12'), three('12'), three('14')];
    const packed = makePacker(all, kinds, fill, price).pack([12, 12, 9, 9])!;
    expect(packed.exact).toBe(false);
    for (const b of packed.boxes) expect(b.fillIn3).toBeLessThanOrEqual(b.kind.volumeIn3 + 1e-9);
    expect(packed.boxes.reduce((s, b) => s + b.counts.reduce((x, y) => x + y, 0), 0)).toBe(42);
  });
});
