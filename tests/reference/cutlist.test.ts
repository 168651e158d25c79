import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { CalcInput } from '../../src/calculations/types';
import { calcCut } from '../../src/cutlist/cut';
import { markupOf } from '../../src/pricing/price';

/** Cutting and packing problems with published answers; the copied file names where each was found. */
interface Example {
  readonly id: string;
  readonly input: {
    readonly stock_length?: number;
    readonly capacity?: number;
    readonly sizes?: readonly number[];
    readonly demand?: readonly number[];
    readonly items?: readonly number[];
  };
  readonly expected: Readonly<Record<string, unknown>>;
  readonly source: { readonly publication: string; readonly title: string };
  readonly published: string;
}
const all: readonly Example[] = JSON.parse(
  readFileSync(new URL('./published/worked-examples.json', import.meta.url), 'utf8'),
);
const examples = all.filter(({ id }) => id.startsWith('OR-') || id.startsWith('SP-'));
const byId = (id: string): Example => examples.find((example) => example.id === id)!;

/** Every stock length costs a dollar, so that the outlay counts them. */
const count = ({ input }: Example) => {
  const pieces: CalcInput['cut']['pieces'] = input.sizes
    ? input.sizes.map((length, i) => ({ length, count: input.demand![i]! }))
    : input.items!.map((length) => ({ length, count: 1 }));
  const length = input.stock_length ?? input.capacity!;
  const answer = calcCut({ coils: [{ length, dollars: 1, have: null }], pieces, keepFrom: null, remnantShare: 0 });
  if (!answer.ok) throw new Error(answer.error.error.say);
  const { outlayCents, proven, wasteIn } = answer.value.figures;
  const total = pieces.reduce((sum, piece) => sum + piece.length * piece.count, 0);
  return { coils: (outlayCents as number) / 100, proven, wasteIn: wasteIn as number, total, length };
};

const CASES: readonly (readonly [id: string, coils: number, from: string])[] = [
  ['OR-01', 73, 'encyclopedia article on the cutting-stock problem, its example; the text prints the bound 72.7'],
  [
    'OR-02',
    453,
    'linear-programming textbook (1983) p. 195, data as in two model libraries; no answer is printed there, 453 recomputed',
  ],
  ['OR-06', 48, 'operations-research benchmark library, bin-packing file 1, u120_00: best known 48'],
  ['OR-07', 46, 'the same, u120_02: 46'],
  ['OR-08', 49, 'the same, u120_19: 49'],
  ['OR-10', 5, 'decision mathematics examination, carpet from 50 m rolls; answer recomputed'],
  ['OR-11', 4, 'decision mathematics examination, planks from 5 m stock (decimal lengths); answer recomputed'],
];
/** Examples of these topics that the cut list does not answer, and why. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'SP-01':
    'a shortest path between listed points: no cutting; and the route search builds its own grid from a room and takes no list of points',
};

describe('published cutting problems', () => {
  test.each(CASES)('%s: %d (%s)', (id, coils) => {
    const example = byId(id);
    const { min_stock, optimum } = example.expected;
    expect(min_stock ?? optimum).toBe(coils);
    const answer = count(example);
    expect(answer).toMatchObject({ coils, proven: true });
    expect(answer.wasteIn).toBeCloseTo(coils * answer.length - answer.total, 6);
  });

  test('first-fit and best-fit decreasing are worse by one on the benchmark, so the search has to find the answer', () => {
    for (const id of ['OR-06', 'OR-07', 'OR-08']) expect(byId(id).expected.bfd).toBe(count(byId(id)).coils + 1);
  });

  test('every example of the topics is asserted here or has its reason', () => {
    expect([...CASES.map(([id]) => id), ...Object.keys(ELSEWHERE)].sort()).toEqual(examples.map(({ id }) => id).sort());
  });
});

describe('markup and margin', () => {
  test('published pairs of markup and margin', () => {
    const table: { markupMath: { examples: readonly { markup: number; margin: number }[] } } = JSON.parse(
      readFileSync(new URL('./published/12_labour_rates_markup.json', import.meta.url), 'utf8'),
    );
    // Printed to three figures; m / (1 + m).
    for (const { markup, margin } of table.markupMath.examples)
      expect(Math.abs(markupOf({ as: 'margin', rate: margin })! - markup)).toBeLessThan(0.0025);
  });
});
