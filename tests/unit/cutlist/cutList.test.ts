import { describe, expect, test } from 'vitest';
import { type CutListAsk, cutList, FEEDER } from '../../../src/cutlist/cutList';
import { orderList } from '../../../src/cutlist/order';
import { materialsOf } from '../../../src/pricing/assemblies';
import { defaultBook } from '../../../src/pricing/defaultBook';
import type { Cable } from '../../../src/standards/cable';

const nm = (size: string, hots: 1 | 2 = 1): Cable => ({
  kind: 'NM',
  size,
  metal: 'Cu',
  hots,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
});
const ser: Cable = {
  kind: 'SE-R',
  size: '2',
  metal: 'Al',
  hots: 2,
  neutral: 'insulated',
  ground: true,
  insulation: 75,
};
const ask = (more: Partial<CutListAsk> = {}): CutListAsk => ({
  runs: [
    { homeRun: 'b', newCable: nm('12'), cutLength: 300 },
    { homeRun: 'a', newCable: nm('12'), cutLength: 300 },
    { homeRun: 'c', newCable: nm('14', 2), cutLength: 150 },
    { homeRun: 'reused', newCable: null, cutLength: 0 },
  ],
  feeder: { cable: ser, length: 306, way: 'replaced' },
  book: defaultBook,
  stock: [],
  ...more,
});
const price = (id: string) => defaultBook.materials.find((entry) => entry.id === id)!.dollars;

describe('cutList', () => {
  test('by cable, pieces named, cheapest coils', () => {
    const cuts = cutList(ask());
    expect(cuts.map((cut) => cut.cable)).toEqual(['12/2 NM', '14/3 NM', '2-2-2-4 Al SER']);
    const [twelve, three, feeder] = cuts;
    expect(twelve).toMatchObject({
      coils: [
        {
          length: 600,
          bought: true,
          left: 0,
          kept: false,
          pieces: [
            { homeRun: 'a', length: 300 },
            { homeRun: 'b', length: 300 },
          ],
        },
      ],
      cents: Math.round(price('cable:12/2 NM@50') * 100),
      proof: { best: true },
    });
    expect(three?.coils).toHaveLength(1);
    // 25.5 ft of a cable without coils in the book: bought by the foot, 26 ft.
    expect(feeder).toEqual({
      cable: '2-2-2-4 Al SER',
      coils: [{ length: 312, bought: true, left: 6, kept: false, pieces: [{ homeRun: FEEDER, length: 306 }] }],
      cents: Math.round(26 * price('cable:2-2-2-4 Al SER') * 100),
      proof: { best: true },
    });
  });

  test('what is in the truck is used first and not bought', () => {
    const cuts = cutList(
      ask({
        stock: [
          { cable: '12/2 NM', lengths: [310, 640] },
          { cable: '2-2-2-4 Al SER', lengths: [240, 360] },
        ],
      }),
    );
    const twelve = cuts.find(({ cable }) => cable === '12/2 NM')!;
    expect(twelve.cents).toBe(0);
    expect(twelve.coils.every((coil) => !coil.bought)).toBe(true);
    const feeder = cuts.find(({ cable }) => cable === '2-2-2-4 Al SER')!;
    expect(feeder).toMatchObject({ cents: 0, coils: [{ length: 360, bought: false, left: 54 }] });
  });

  test('a kept feeder needs no cable; one not sold anywhere has no entry', () => {
    expect(cutList(ask({ feeder: { cable: ser, length: 306, way: 'kept' } })).map((cut) => cut.cable)).toEqual([
      '12/2 NM',
      '14/3 NM',
    ]);
    expect(
      cutList(
        ask({
          runs: [{ homeRun: 'x', newCable: nm('500'), cutLength: 100 }],
          feeder: { cable: ser, length: 0, way: 'kept' },
        }),
      ),
    ).toEqual([]);
  });

  test('the order of the runs changes nothing', () => {
    expect(cutList(ask({ runs: [...ask().runs].reverse() }))).toEqual(cutList(ask()));
  });
});

describe('orderList', () => {
  const piece = (item: string, quantity: number) => ({ item, quantity, homeRuns: [], rule: null, alternate: null });
  test('whole coils from the cut list, the rest with its waste, rounded up', () => {
    const work = [
      piece('cable:12/2 NM', 50),
      piece('cable:14/3 NM', 12.5),
      piece('cable:2-2-2-4 Al SER', 25.5),
      piece('connector:1/2', 14),
      piece('staple', 31),
      piece('splice', 14),
      piece('running board', 7.25),
      piece('breaker:1p 20', 3),
    ];
    const order = orderList(materialsOf(work, defaultBook), cutList(ask()), defaultBook);
    const of = (item: string) => order.find((line) => line.item === item);
    expect(of('cable:12/2 NM@50')).toMatchObject({ item: 'cable:12/2 NM@50', quantity: 1, unit: 'each' });
    expect(of('cable:12/2 NM')).toBeUndefined();
    expect(of('cable:2-2-2-4 Al SER')).toMatchObject({ item: 'cable:2-2-2-4 Al SER', quantity: 26, unit: 'ft' });
    expect(of('connector:1/2')?.quantity).toBe(16); // 15.4
    expect(of('staple')?.quantity).toBe(38); // 37.2
    expect(of('splice:14-10 Cu')?.quantity).toBe(42);
    expect(of('running board')).toMatchObject({ item: 'running board', quantity: 8, unit: 'ft' });
    expect(of('breaker:1p 20')?.quantity).toBe(3);
    expect(order.map((line) => line.item)).toEqual([...order.map((line) => line.item)].sort());
  });
  test('ten connectors and ten percent are eleven, not twelve', () => {
    expect(orderList([{ id: 'connector:1/2', quantity: 10, unit: 'each' }], [], defaultBook)[0]?.quantity).toBe(11);
  });
});
