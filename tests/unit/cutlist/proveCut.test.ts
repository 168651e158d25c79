import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { createSolver } from '../../../bin/solver';
import type { CutAsk } from '../../../src/cutlist/model';
import { modelOf, proveCut } from '../../../src/cutlist/proveCut';
import { type CutAnswer, prepared, solveCut } from '../../../src/cutlist/solve';
import type { Solve } from '../../../src/facts/routing';

let solve: Solve;
beforeAll(async () => {
  solve = await createSolver();
});

const anyAsk: fc.Arbitrary<CutAsk> = fc
  .record({
    pieces: fc.array(fc.record({ length: fc.integer({ min: 6, max: 60 }), count: fc.integer({ min: 1, max: 2 }) }), {
      minLength: 1,
      maxLength: 5,
    }),
    truck: fc.array(fc.integer({ min: 20, max: 90 }), { maxLength: 2 }),
    share: fc.constantFrom(0, 0.5),
  })
  .map(({ pieces, truck, share }) => ({
    stocks: [
      ...truck.map((length, i) => ({ id: `t${i}`, length, dollars: 0, have: 1 })),
      { id: 'small', length: 60, dollars: 31, have: null },
      { id: 'large', length: 120, dollars: 55, have: null },
    ],
    pieces,
    keepFrom: share === 0 ? null : 30,
    remnantShare: share,
  }));

describe('the solver behind the search', () => {
  test('agrees with our own proven answers', async () => {
    await fc.assert(
      fc.asyncProperty(anyAsk, async (ask) => {
        const own = solveCut(ask) as CutAnswer;
        fc.pre(typeof own !== 'string' && own.proven);
        const said = await solve(modelOf(prepared(ask).whole, Number.POSITIVE_INFINITY));
        expect(said.status === 'optimal' && Math.abs(said.objective - own.net)).toBeLessThan(1e-3);
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  const ask: CutAsk = {
    stocks: [
      { id: 'small', length: 60, dollars: 31, have: null },
      { id: 'large', length: 120, dollars: 55, have: null },
    ],
    pieces: [
      { length: 50, count: 2 },
      { length: 35, count: 3 },
    ],
    keepFrom: null,
    remnantShare: 0,
  };
  test('proves an answer left open, and takes a cheaper one', async () => {
    const own = solveCut(ask) as CutAnswer;
    const open = { ...own, bound: 0, proven: false };
    expect(await proveCut(ask, open, solve)).toMatchObject({ net: own.net, bound: own.net, proven: true });
    const dear = { ...open, net: own.net + 40, outlay: own.outlay + 40 };
    expect(await proveCut(ask, dear, solve)).toMatchObject({ net: own.net, proven: true });
    expect(await proveCut(ask, 'undecided', solve)).toMatchObject({ net: own.net, proven: true });
  });
  test('asks nothing where there is nothing to ask, and keeps our own where the solver stops or fails', async () => {
    const own = solveCut(ask) as CutAnswer;
    const never: Solve = async () => {
      throw new Error('asked');
    };
    expect(await proveCut(ask, own, never)).toBe(own);
    expect(await proveCut(ask, 'too long', never)).toBe('too long');
    const open = { ...own, bound: 1, proven: false };
    expect(await proveCut(ask, open, async () => ({ status: 'failed', say: '' }))).toBe(open);
    expect(await proveCut(ask, open, async () => ({ status: 'stopped', bound: own.net - 2 }))).toMatchObject({
      bound: own.net - 2,
      proven: false,
    });
  });
});
