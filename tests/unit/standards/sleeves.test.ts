import { expect, test } from 'vitest';
import type { Cable } from '../../../src/standards/cable';
import { sleeveSize } from '../../../src/standards/sleeves';

// Inside diameters of EMT: Chapter 9 Table 4. Outside of the cables: data sheets named in standards/cableDimensions.ts.
const nm = (size: string, over: Partial<Cable> = {}): Cable => ({
  kind: 'NM',
  size,
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
  ...over,
});
const ser = (size: string) => nm(size, { kind: 'SE-R', metal: 'Al', hots: 2 });

test.each([
  [nm('12'), '1/2'], // 0.422 in the wide way, 0.622 inside
  [nm('10'), '3/4'], // 0.505 + 1/8 is more than 0.622
  [ser('2'), '1'], // 0.895 + 1/8 in 1.049
  [ser('1/0'), '1-1/4'], // 1.182 + 1/8 in 1.38
  [ser('2/0'), '1-1/2'], // 1.279 + 1/8 is more than 1.38
  [ser('4/0'), '2'], // 1.52 in 2.067
])('$kind $size is pulled through tubing of the next size', (cable, size) => {
  expect(sleeveSize(cable)).toBe(size);
});

test('a cable whose outside is not known gets the largest', () => {
  expect(sleeveSize(nm('unknown'))).toBe('2');
});
