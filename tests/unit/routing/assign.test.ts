import { describe, expect, it } from 'vitest';
import { assign } from '../../../src/routing/assign';
import { type Choice, costOf, type Problem } from '../../../src/routing/choice';
import { makePacker, type SpliceLoad } from '../../../src/routing/packing';
import { prune } from '../../../src/routing/prune';
import { Standing } from '../../../src/routing/standing';
import { type Random, random } from '../../support/random';

const load: SpliceLoad = { key: 'a', conductors: [{ awg: '12', count: 4 }], grounds: [], connectors: [] };
// boxes of 2 and of 4 cables: 9 cu in. a cable
const packer = makePacker(
  [load],
  [
    { size: 'small', material: 'metal', volumeIn3: 18, clamps: false },
    { size: 'large', material: 'metal', volumeIn3: 36, clamps: false },
  ],
  (c) => c.conductors.reduce((s, x) => s + x.count * 2.25, 0),
  { box: (k) => (k.size === 'small' ? 20_000 : 28_000), connector: () => 0 },
);

const problemOf = (r: Random): Problem => {
  const spots = Array.from({ length: 4 }, (_, j) => ({ key: `s${j}`, mills: 45_000, boxes: j < 3 }));
  const penalties = [50_000, 60_000, 55_000];
  const runs = Array.from({ length: 5 }, (_, i): Choice[] => {
    const home: Choice = {
      id: 'z',
      spot: null,
      load: null,
      mills: r.int(80, 300) * 1000,
      penalties: r.chance(0.5) ? [i % 3] : [],
    };
    const at = spots.flatMap((s, j): Choice[] =>
      r.chance(0.7)
        ? [
            {
              id: s.key,
              spot: j,
              load: s.boxes ? 0 : null,
              mills: r.int(10, 90) * 1000,
              penalties: r.chance(0.4) ? [i % 3] : [],
            },
          ]
        : [],
    );
    return [...at, home];
  });
  return { runs, spots, penalties, maxSpots: r.int(0, 3), packer };
};

const exhaustive = (p: Problem): number => {
  let best = Number.POSITIVE_INFINITY;
  const go = (picks: number[]) => {
    if (picks.length === p.runs.length) best = Math.min(best, costOf(p, picks));
    else for (const i of p.runs[picks.length]!.keys()) go([...picks, i]);
  };
  go([]);
  return best;
};

describe('joint choice of ways, spots and boxes', () => {
  it('is within 1.2 % of the exhaustive optimum on every small case, and exact on nearly all', () => {
    let exact = 0;
    const cases = 150;
    for (let seed = 1; seed <= cases; seed++) {
      const p = problemOf(random(seed));
      const best = exhaustive(p);
      const found = assign(p)!;
      expect(found.mills).toBe(costOf(p, found.picks));
      expect(found.mills).toBeGreaterThanOrEqual(best);
      expect(found.mills).toBeLessThanOrEqual(best * 1.012);
      if (found.mills === best) exact++;
    }
    expect(exact).toBeGreaterThan(cases * 0.95);
  });

  it('a choice changed one home run at a time costs what it costs worked out anew', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const r = random(seed);
      const p = problemOf(r);
      const all = p.spots.map((_, j) => j);
      const standing = new Standing(
        p,
        all,
        p.runs.map(() => 0),
      );
      for (let step = 0; step < 40; step++) {
        const run = r.int(0, p.runs.length - 1);
        standing.set(run, r.int(0, p.runs[run]!.length - 1));
        if (r.chance(0.5)) continue;
        const anew = costOf(p, standing.picks);
        expect(standing.cost()).toBeCloseTo(anew, 6);
        expect(standing.cost(anew)).toBe(Number.POSITIVE_INFINITY);
      }
    }
  });

  it('pruning never loses the optimum', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const p = problemOf(random(seed));
      expect(exhaustive(prune(p))).toBe(exhaustive(p));
    }
  });

  it('a penalty shared by two home runs of one circuit counts once', () => {
    const one = (id: string): Choice[] => [{ id, spot: null, load: null, mills: 10_000, penalties: [0] }];
    const p: Problem = { runs: [one('a'), one('b')], spots: [], penalties: [50_000], maxSpots: 0, packer };
    expect(costOf(p, [0, 0])).toBe(70_000);
  });
});
