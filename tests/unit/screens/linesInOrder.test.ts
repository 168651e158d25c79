import { expect, test } from 'vitest';
import { planOption } from '../../../src/plan/planOption';
import { linesInOrder } from '../../../src/screens/price/linesInOrder';
import { demoJob } from '../job/demo';

test('every line stands once, under its kind, with its own place in the result; the largest of a kind first', () => {
  const job = demoJob('washer');
  const { lines } = planOption(job, job.options[1]!).plan.price;
  const groups = linesInOrder(lines);
  const placed = groups.flatMap((g) => g.lines);
  expect(placed.map((l) => l.at).sort((a, b) => a - b)).toEqual(lines.map((_, i) => i));
  for (const { line, at } of placed) expect(lines[at]).toBe(line);
  const labor = groups.find((g) => g.kind === 'labor')!.lines.map((l) => l.line);
  expect(labor.every((l) => l.kind === 'labor')).toBe(true);
  expect(labor.map((l) => l.likelyCents)).toEqual(labor.map((l) => l.likelyCents).sort((a, b) => b - a));
  expect(groups.at(-1)!.lines.map((l) => l.line.kind)).toEqual(['overhead', 'profit', 'tax']);
});
