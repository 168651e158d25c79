import { expect, test } from 'vitest';
import { solidCables } from '../../../src/drawings/solidCables';
import { planOption } from '../../../src/plan/planOption';
import { buildTubes, tubeName } from '../../../src/scene/tubeGeometry';
import { demo, optionOf } from '../drawings/support';

const SIDES = 6;

test('rings of the tubes stand round the ends of the cables, and every corner belongs to one cable', () => {
  const job = demo('washer');
  const option = optionOf(job, 'relocate-b');
  const cables = solidCables(job, planOption(job, option).plan);
  const { geometry, parts } = buildTubes(cables, null, { sides: SIDES, steps: 4 });
  const position = geometry.getAttribute('position');
  const middle = (first: number) =>
    [0, 1, 2].map((k) => {
      let sum = 0;
      for (let i = 0; i < SIDES; i++) sum += position.getComponent(first + i, k);
      return sum / SIDES;
    });
  expect(parts.map((p) => p.id)).toEqual(cables.map(tubeName));
  expect(parts.reduce((n, p) => n + p.count, 0)).toBe(position.count);
  parts.forEach(({ start, count }, i) => {
    const { course } = cables[i]!;
    for (const [ring, want] of [
      [middle(start), course[0]!],
      [middle(start + count - SIDES), course.at(-1)!],
    ] as const)
      ring.forEach((n, k) => {
        expect(Math.abs(n - want[k]!)).toBeLessThan(1 / 64);
      });
  });
  expect([...position.array].every(Number.isFinite)).toBe(true);
});

test('a cable that is singled out is inked, the others are not', () => {
  const job = demo('washer');
  const cables = solidCables(job, null).filter((c) => c.what === 'home run');
  const { geometry, parts } = buildTubes(cables, 'h-05', { sides: SIDES, steps: 2 });
  const lay = geometry.getAttribute('lay');
  const inked = parts.filter((p) => lay.getX(p.start) === 0).map((p) => p.id);
  expect(inked).toEqual(cables.filter((c) => c.id === 'h-05').map(tubeName));
  expect(inked.length).toBeGreaterThan(0);
});
