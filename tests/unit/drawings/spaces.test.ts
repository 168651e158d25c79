import { expect, test } from 'vitest';
import { clipConvex, drawSpaces } from '../../../src/drawings/spaces';
import type { Finding, Plan } from '../../../src/facts/result';
import { signedArea } from '../../../src/geometry/polygon';
import type { Pt, Pt3 } from '../../../src/units/types';
import { demo, optionOf } from './support';

const square = (x: number, y: number, w: number, h: number): Pt[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const area = (p: readonly Pt[]): number => Math.abs(signedArea(p));

test('clipping: corner in, all in, outside, turned by 45 degrees', () => {
  expect(area(clipConvex(square(0, 0, 10, 10), square(6, 6, 10, 10)))).toBeCloseTo(16, 9);
  expect(area(clipConvex(square(2, 2, 3, 3), square(0, 0, 10, 10)))).toBeCloseTo(9, 9);
  expect(clipConvex(square(0, 0, 4, 4), square(6, 6, 4, 4))).toHaveLength(0);
  const diamond: Pt[] = [
    [5, -5],
    [15, 5],
    [5, 15],
    [-5, 5],
  ];
  // the square 0…10 lies inside the diamond but for nothing: its corners touch it
  expect(area(clipConvex(square(0, 0, 10, 10), diamond))).toBeCloseTo(100, 9);
  expect(area(clipConvex([...square(0, 0, 10, 10)].reverse(), [...square(5, 0, 10, 10)].reverse()))).toBeCloseTo(50, 9);
});

const finding = (rule: string, outcome: 'holds' | 'fails', shape: Pt3[]): Finding => ({
  rule,
  subject: 'new-a',
  outcome,
  effect: outcome === 'fails' ? 'stops the job' : null,
  measured: null,
  required: null,
  unit: 'in',
  section: '110.26(A)',
  standing: 'confirmed',
  amendment: null,
  split: null,
  say: '',
  look: null,
  remedies: [],
  shape,
});

test('what stands in a space that fails is crosshatched, only as far as it stands in it', () => {
  const job = demo('washer');
  const option = optionOf(job, 'relocate-a');
  // the washer stands at 31…58 by 140…167; a space from 40 to 70, 128 to 164 takes 18 × 24 of it
  const shape = square(40, 128, 30, 36).map(([x, y]): Pt3 => [x, y, 0]);
  const planned = (outcome: 'holds' | 'fails') =>
    ({ findings: [finding('WS-WIDTH', outcome, shape)] }) as unknown as Plan;
  const drawn = drawSpaces(job, option, planned('fails'));
  expect(drawn.find((l) => l.id === 'working space')).toMatchObject({ fill: 'zone', stroke: { dash: 'zone' } });
  const washer = drawn.flatMap((l) => (l.item === 'line' && l.id === 'in the way: washer' ? [l] : []));
  expect(washer.map((l) => l.fill)).toEqual(['intrusion']);
  expect(area(washer[0]!.points)).toBeCloseTo(18 * 24, 6);
  // its size is written: 18 in of it stand in the space, the shorter way
  expect(drawn.flatMap((l) => (l.item === 'label' ? l.lines.map((t) => t.say) : []))).toEqual(['washer 1′-6″ in']);
  expect(drawSpaces(job, option, planned('holds')).some((l) => l.item === 'line' && l.fill === 'intrusion')).toBe(
    false,
  );
});

test('a foreign thing anywhere between the floor and the top of the dedicated space is crosshatched', () => {
  const job = demo('washer');
  const option = optionOf(job, 'relocate-a');
  const shape = square(40, 140, 14.5, 4).map(([x, y]): Pt3 => [x, y, 92]);
  const plan = { findings: [finding('DEDICATED', 'fails', shape)] } as unknown as Plan;
  const hatchedWith = (bottom: number, foreign: boolean) => {
    const obstacles = job.site.obstacles.map((o) =>
      o.id === 'washer' ? { ...o, foreign, bottom, size: { ...o.size, height: 6 } } : o,
    );
    const drawn = drawSpaces({ ...job, site: { ...job.site, obstacles } }, option, plan);
    return drawn.some((l) => l.item === 'line' && l.fill === 'intrusion' && l.id === 'in the way: washer');
  };
  expect([hatchedWith(84, true), hatchedWith(10, true)]).toEqual([true, true]);
  expect([hatchedWith(92, true), hatchedWith(84, false)]).toEqual([false, false]);
});
