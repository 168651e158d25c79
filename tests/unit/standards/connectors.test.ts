import { expect, test } from 'vitest';
import { CABLE_KINDS, type Cable } from '../../../src/standards/cable';
import { CONNECTOR_RANGE, connectorSize, connectorToOrder } from '../../../src/standards/connectors';
import { SIZES } from '../../../src/standards/sizes';

const cable = (over: Partial<Cable>): Cable => ({
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
  ...over,
});
const KINDS = [...CABLE_KINDS, 'unknown'] as const;
const every = KINDS.flatMap((kind) =>
  (['Cu', 'Al', 'unknown'] as const).flatMap((metal) =>
    ([1, 2, 'unknown'] as const).flatMap((hots) =>
      (['insulated', 'bare', 'none', 'unknown'] as const).map((neutral) => cable({ kind, metal, hots, neutral })),
    ),
  ),
);
const rank = (size: string) => CONNECTOR_RANGE.findIndex((c) => c.size === size);

test('what is ordered is what the one table says, wherever the table has the cable', () => {
  for (const one of every)
    for (const size of [...SIZES, 'unknown']) {
      const at = { ...one, size };
      const told = connectorSize(at);
      if (told !== undefined) expect(connectorToOrder(at)).toBe(told);
    }
});

test('a cable in no table gets a connector of the table, larger conductors never a smaller one', () => {
  for (const one of every) {
    const ranks = SIZES.map((size) => rank(connectorToOrder({ ...one, size })));
    expect(Math.min(...ranks)).toBeGreaterThanOrEqual(0);
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  }
});

test('stand-ins: NM of the same conductors, then SE of the next larger, then the largest', () => {
  // 8/3 NM for UF of the same conductors; 2 AWG SER (0.895 in) for 3 AWG; nothing is larger than the table
  expect(connectorToOrder(cable({ kind: 'UF', size: '8', hots: 2 }))).toBe('3/4');
  expect(connectorToOrder(cable({ kind: 'SE-U', size: '3', hots: 2, neutral: 'bare', metal: 'Al' }))).toBe('1');
  expect(connectorToOrder(cable({ kind: 'SE-U', size: '500', hots: 2 }))).toBe('2-1/2');
  expect(connectorToOrder(cable({ size: 'unknown' }))).toBe('3/4');
});
