import { describe, expect, it } from 'vitest';
import { firstShort, neededInside, reachOf } from '../../../src/routing/reach';

const can = {
  on: { wall: 'w', face: 'front' as const, left: 100, bottom: 36 },
  size: { width: 14, depth: 4, height: 40 },
  mount: 'surface' as const,
  mainAt: 'top' as const,
};
const cable = { neutral: 'insulated' as const, ground: true };
const whole = 1 / 64;

describe('conductor needed inside a can', () => {
  // Can 14 × 40 from 36 to 76 in; entry at the top, 4 in from the left side. Spans are common practice, no source.
  // hot: 30 % of 40 = 12 below the top; nearest breaker column 107 − 3.5 = 103.5, so 0.5 across; + 4 = 16.5
  // neutral: 25 % = 10 down, bar at 102, 2 across; + 4 = 16
  // ground: 30 % = 12 down, 2 across; + 4 = 18
  it('is worked by hand for a top entry', () => {
    expect(neededInside(can, { left: 104, z: 76 })).toEqual({ hot: 16.5, neutral: 16, ground: 18 });
  });

  it('from the bottom the ground bar is near and the breakers start at 92 %', () => {
    // hot: bottom 36 to 76 − 36.8 = 39.2, 3.2 up; 0.5 across; 4 → 7.7
    // neutral: 76 − 34 = 42, 6 up + 2 + 4 = 12; ground: 76 − 38 = 38, 2 up + 2 + 4 = 8
    const need = neededInside(can, { left: 104, z: 36 });
    expect(need.hot).toBeCloseTo(7.7, 9);
    expect(need.neutral).toBeCloseTo(12, 9);
    expect(need.ground).toBeCloseTo(8, 9);
  });

  it('a can with its main at the bottom is the same turned over', () => {
    const top = neededInside(can, { left: 104, z: 76 });
    const bottom = neededInside({ ...can, mainAt: 'bottom' }, { left: 104, z: 36 });
    for (const part of ['hot', 'neutral', 'ground'] as const) expect(bottom[part]).toBeCloseTo(top[part], 9);
  });
});

describe('four-part reach', () => {
  const base = {
    sheath: 60,
    sheathInside: 0.25,
    path: 59.75,
    tails: { hot: 16.25, neutral: 15.75, ground: 27.75 },
    need: { hot: 16.5, neutral: 16, ground: 28 },
    cable,
  };
  it('everything reaches to the last sixty-fourth', () => {
    expect(reachOf(base)).toEqual({ jacket: 0, hot: 0, neutral: 0, ground: 0 });
    expect(firstShort(reachOf(base))).toBeNull();
  });
  it('1/64 in more of path and the jacket is short before anything else', () => {
    const reach = reachOf({ ...base, path: 59.75 + whole });
    expect(reach.jacket).toBe(-whole);
    expect(firstShort(reach)).toBe('jacket');
  });
  it.each(['hot', 'neutral', 'ground'] as const)('1/64 in less of %s tail and that conductor is short', (part) => {
    const reach = reachOf({ ...base, tails: { ...base.tails, [part]: base.tails[part] - whole } });
    expect(reach[part]).toBe(-whole);
    expect(firstShort(reach)).toBe(part);
  });
  it('a cable without neutral or ground is not short of one', () => {
    const reach = reachOf({
      ...base,
      tails: { hot: 16.25, neutral: 0, ground: 0 },
      cable: { neutral: 'none', ground: false },
    });
    expect(firstShort(reach)).toBeNull();
    expect(reach.neutral).toBe(reach.hot);
  });
});
