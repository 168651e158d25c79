import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CutAsk } from '../../../src/cutlist/model';
import { type CutAnswer, solveCut } from '../../../src/cutlist/solve';

/** Every way there is: each piece into any coil already opened or a new one of any stock. Shares no code with the product. */
const exhaustive = (ask: CutAsk): number => {
  const pieces = ask.pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  const have = ask.stocks.map((stock) => stock.have ?? pieces.length);
  const open: { stock: number; left: number }[] = [];
  let least = Number.POSITIVE_INFINITY;
  const walk = (k: number): void => {
    if (k === pieces.length) {
      const net = open.reduce((sum, { stock, left }) => {
        const { dollars, length } = ask.stocks[stock]!;
        const kept = ask.keepFrom !== null && left >= ask.keepFrom;
        return sum + dollars - (kept ? (ask.remnantShare * dollars * left) / length : 0);
      }, 0);
      least = Math.min(least, net);
      return;
    }
    for (const coil of [...open])
      if (coil.left >= pieces[k]!) {
        coil.left -= pieces[k]!;
        walk(k + 1);
        coil.left += pieces[k]!;
      }
    for (const [i, stock] of ask.stocks.entries())
      if (have[i]! > 0 && stock.length >= pieces[k]!) {
        have[i]!--;
        open.push({ stock: i, left: stock.length - pieces[k]! });
        walk(k + 1);
        open.pop();
        have[i]!++;
      }
  };
  walk(0);
  return least;
};

/** Recounted from the pieces named in the answer. */
const recount = (ask: CutAsk, answer: CutAnswer) => {
  const cut = answer.used.flatMap((coil) => coil.pieces).sort((a, b) => a - b);
  const wanted = ask.pieces
    .flatMap(({ length, count }) => Array.from({ length: count }, () => length))
    .sort((a, b) => a - b);
  expect(cut).toEqual(wanted);
  for (const stock of ask.stocks) {
    const used = answer.used.filter((coil) => coil.stock.id === stock.id).length;
    expect(used).toBeLessThanOrEqual(stock.have ?? Number.POSITIVE_INFINITY);
  }
  return answer.used.reduce((sum, { stock, pieces }) => {
    const left = stock.length - pieces.reduce((all, piece) => all + piece, 0);
    expect(left).toBeGreaterThanOrEqual(-1e-9);
    expect(pieces.length).toBeGreaterThan(0);
    const kept = ask.keepFrom !== null && left >= ask.keepFrom - 1e-9;
    return sum + stock.dollars - (kept ? (ask.remnantShare * stock.dollars * left) / stock.length : 0);
  }, 0);
};

const stock = (length: number, dollars: number, have: number | null, i: number) => ({
  id: `s${i}`,
  length,
  dollars,
  have,
});
const anyAsk = (step: number): fc.Arbitrary<CutAsk> =>
  fc
    .record({
      coils: fc.array(
        fc.tuple(fc.integer({ min: 4, max: 20 }), fc.integer({ min: 0, max: 40 }), fc.constantFrom(null, null, 1, 2)),
        { minLength: 1, maxLength: 3 },
      ),
      pieces: fc.array(fc.integer({ min: 1, max: 14 }), { minLength: 1, maxLength: 6 }),
      keepFrom: fc.constantFrom(null, 2, 4, 7),
      remnantShare: fc.constantFrom(0, 0.3, 0.5, 0.9, 1),
    })
    .map(({ coils, pieces, keepFrom, remnantShare }) => ({
      stocks: coils.map(([length, dollars, have], i) => stock(length * step, dollars / 4, have, i)),
      pieces: pieces.map((length) => ({ length: length * step, count: 1 })),
      keepFrom: keepFrom === null ? null : keepFrom * step,
      remnantShare,
    }));

describe('solveCut', () => {
  test.each([1, 6, 0.25, 0.1])('agrees with an exhaustive search on small cases (step %d in)', (step) => {
    let proven = 0;
    fc.assert(
      fc.property(anyAsk(step), (ask) => {
        // 0.1-in steps are no binary fractions: the exhaustive search counts them in tenths.
        const tenths = step === 0.1 ? scaled(ask, 10) : ask;
        const least = exhaustive(tenths);
        const answer = solveCut(ask);
        if (typeof answer === 'string') {
          expect(least).toBe(Number.POSITIVE_INFINITY);
          expect(answer).not.toBe('undecided');
          return;
        }
        if (step !== 0.1) expect(recount(ask, answer)).toBeCloseTo(answer.net, 6);
        expect(answer.bound).toBeLessThanOrEqual(least + 1e-6);
        expect(answer.net).toBeGreaterThanOrEqual(least - 1e-6);
        if (answer.proven) {
          proven++;
          expect(answer.net).toBeCloseTo(least, 6);
        }
      }),
      { numRuns: 250, seed: 11 },
    );
    expect(proven).toBeGreaterThan(150);
  });

  test('a made-up house of pieces: net recounted, bound below it, proven in most', () => {
    let proven = 0;
    const runs = 40;
    let state = 1;
    const random = (n: number) => {
      state = (state * 48271) % 2147483647;
      return state % n;
    };
    for (let run = 0; run < runs; run++) {
      const many = 8 + random(36);
      const ask: CutAsk = {
        stocks: [
          stock(300, 27, null, 0),
          stock(600, 45, null, 1),
          stock(1200, 72, null, 2),
          stock(3000, 150, null, 3),
          stock(12_000, 564, null, 4),
          stock(222, 0, 1, 5),
        ],
        pieces: Array.from({ length: many }, () => ({ length: 36 + 6 * random(50), count: 1 })),
        keepFrom: 180,
        remnantShare: 0.5,
      };
      const answer = solveCut(ask) as CutAnswer;
      expect(recount(ask, answer)).toBeCloseTo(answer.net, 6);
      expect(answer.bound).toBeLessThanOrEqual(answer.net + 1e-9);
      if (answer.proven) proven++;
      else expect((answer.net - answer.bound) / answer.bound).toBeLessThan(0.05);
    }
    expect(proven).toBeGreaterThanOrEqual(0.9 * runs);
  });

  test('why there is no answer', () => {
    const ask = (length: number, have: number | null, pieces: number[]): CutAsk => ({
      stocks: [stock(length, 1, have, 0)],
      pieces: pieces.map((piece) => ({ length: piece, count: 1 })),
      keepFrom: null,
      remnantShare: 0,
    });
    expect(solveCut(ask(10, null, [11]))).toBe('too long');
    expect(solveCut(ask(10, 2, [6, 6, 6]))).toBe('too little');
    expect(solveCut(ask(10, 2, [6, 6, 8]))).toBe('too little');
    expect(solveCut({ ...ask(10, null, [1]), stocks: [] })).toBe('too long');
    expect(solveCut(ask(10, null, []))).toMatchObject({ net: 0, proven: true, used: [] });
  });
});

const scaled = (ask: CutAsk, factor: number): CutAsk => ({
  ...ask,
  stocks: ask.stocks.map((entry) => ({ ...entry, length: Math.round(entry.length * factor) })),
  pieces: ask.pieces.map((piece) => ({ ...piece, length: Math.round(piece.length * factor) })),
  keepFrom: ask.keepFrom === null ? null : Math.round(ask.keepFrom * factor),
});
