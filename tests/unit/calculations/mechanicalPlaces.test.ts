import { expect, test } from 'vitest';
import { legalIntervals, type PlacesAsk } from '../../../src/calculations/legalIntervals';
import { type SpaceAnswer, searchSpace } from '../../../src/calculations/spaceSearch';
import type { SpaceBlocker } from '../../../src/calculations/spaceZone';
import type { Interval } from '../../../src/geometry/freeIntervals';
import type { Pt } from '../../../src/units/types';
import { random } from '../../support/random';

// The exact intervals against brute force: every 1/8 in, every window on the same grid, and an intersection test that
// shares nothing with the product's sweep (separating axes of convex outlines).

const STEP = 1 / 8;
const W = 30; // 110.26(A)(2)
const D = 36; // 110.26(A)(1)

type Rect = readonly [x0: number, x1: number, y0: number, y1: number];
/** Do a convex outline and a rectangle share inside points? Touching does not count. */
const meets = (outline: readonly Pt[], [x0, x1, y0, y1]: Rect): boolean => {
  const box: Pt[] = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
  const axes: Pt[] = [
    [1, 0],
    [0, 1],
    ...outline.map((p, i): Pt => {
      const q = outline[(i + 1) % outline.length]!;
      const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
      return [(q[1] - p[1]) / length, (p[0] - q[0]) / length];
    }),
  ];
  return axes.every(([ax, ay]) => {
    const range = (points: readonly Pt[]) => {
      const at = points.map(([x, y]) => x * ax + y * ay);
      return [Math.min(...at), Math.max(...at)] as const;
    };
    const [a0, a1] = range(outline);
    const [b0, b1] = range(box);
    return Math.min(a1, b1) - Math.max(a0, b0) > 1e-6;
  });
};
const zMeets = (b: SpaceBlocker, from: number, to: number) => Math.min(b.toZ, to) - Math.max(b.fromZ, from) > 1e-6;
const clear = (blockers: readonly SpaceBlocker[], rect: Rect, fromZ: number, toZ: number) =>
  rect[3] <= rect[2] || !blockers.some((b) => zMeets(b, fromZ, toZ) && meets(b.outline, rect));

/** Which offsets of the grid are clear by trying every window of the grid; `slack` shrinks the window. */
const bruteForce = (ask: PlacesAsk, slack: number) => {
  const { size, bottom, out, blockers } = ask;
  const top = bottom + size.height;
  const zoneTop = Math.min(top + 72, ask.structureZ as number);
  const full = Math.max(W, size.width);
  const window = full - slack;
  const keepsOut = blockers.filter((b) => b.blocksSpace);
  const foreign = blockers.filter((b) => b.foreign);
  const windows = new Map<number, boolean>();
  const windowClear = (k: number): boolean => {
    const known = windows.get(k);
    if (known !== undefined) return known;
    const answer = clear(keepsOut, [k * STEP, k * STEP + window, out, out + D], 0, Math.max(78, top));
    windows.set(k, answer);
    return answer;
  };
  return (offset: number): boolean => {
    const right = offset + size.width;
    if (!clear(blockers, [offset, right, 0, out], bottom, top)) return false;
    if (!clear(foreign, [offset, right, out - size.depth, out], top, zoneTop)) return false;
    if (!clear(foreign, [offset, right, out - size.depth, out], 0, bottom)) return false;
    for (let k = Math.ceil((right - full) / STEP); k * STEP <= offset + slack; k++) if (windowClear(k)) return true;
    return false;
  };
};

const turned = (x: number, y: number, w: number, d: number, degrees: number): Pt[] => {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [
    [0, 0],
    [w, 0],
    [w, d],
    [0, d],
  ].map(([u, v]): Pt => [x + u! * c - v! * s, y + u! * s + v! * c]);
};

/** A face of 12 to 20 ft with boxes, turned and straight, hanging and standing, and the neighboring walls' planes. */
const randomAsk = (seed: number): PlacesAsk => {
  const { next } = random(seed);
  const r = (from: number, to: number) => from + (to - from) * next();
  const eighth = (from: number, to: number) => Math.round(r(from, to) * 8) / 8;
  const faceLength = eighth(144, 240);
  const blockers: SpaceBlocker[] = [];
  const count = Math.floor(r(0, 7));
  for (let i = 0; i < count; i++) {
    const hanging = r(0, 1) < 0.3;
    const fromZ = hanging ? eighth(50, 95) : 0;
    blockers.push({
      id: `thing ${i}`,
      outline: turned(eighth(0, faceLength), eighth(0, 60), eighth(2, 36), eighth(2, 30), r(0, 1) < 0.5 ? 0 : r(0, 90)),
      fromZ,
      toZ: fromZ + eighth(2, 70),
      blocksSpace: r(0, 1) < 0.85,
      foreign: hanging && r(0, 1) < 0.7,
      stored: false,
    });
  }
  // Neighboring walls at 90°, leaning over the face (45°) or away from it (135°), 6 in thick.
  for (const [id, x, sign] of [
    ['wall left', 0, -1],
    ['wall right', faceLength, 1],
  ] as const) {
    const angle = (([45, 90, 135] as const)[Math.floor(r(0, 3))]! * Math.PI) / 180;
    const along: Pt = [-sign * Math.cos(angle) * 200, Math.sin(angle) * 200];
    const away: Pt = [sign * Math.sin(angle) * 6, Math.cos(angle) * 6];
    blockers.push({
      id,
      outline: [
        [x, 0],
        [x + along[0], along[1]],
        [x + along[0] + away[0], along[1] + away[1]],
        [x + away[0], away[1]],
      ],
      fromZ: 0,
      toZ: 120,
      blocksSpace: true,
      foreign: false,
      stored: false,
    });
  }
  const recessed = r(0, 1) < 0.2;
  return {
    faceLength,
    size: { width: r(0, 1) < 0.15 ? 32 : 14.5, depth: 4, height: 34 },
    bottom: 38,
    out: recessed ? 0 : 4,
    blockers,
    structureZ: 92,
    headroomException: false,
  };
};

const inside = (intervals: readonly Interval[], x: number) =>
  intervals.some(([from, to]) => x >= from - 1e-6 && x <= to + 1e-6);
const clearBySearch = (answer: SpaceAnswer) =>
  [answer.depth, answer.width, answer.height, answer.above, answer.below, answer.body].every(
    (v) => v.outcome === 'holds',
  );

test('legal intervals agree with brute force and with the search at one offset, on random rooms', () => {
  let clearSeen = 0;
  let barredSeen = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const ask = randomAsk(seed);
    const intervals = legalIntervals(ask);
    const exact = bruteForce(ask, 0);
    const lenient = bruteForce(ask, STEP); // a clear window off the grid holds a slightly smaller one on the grid
    for (let offset = 0; offset <= ask.faceLength - ask.size.width; offset += STEP) {
      const legal = inside(intervals, offset);
      if (exact(offset)) expect([seed, offset, legal]).toEqual([seed, offset, true]);
      if (legal) expect([seed, offset, lenient(offset)]).toEqual([seed, offset, true]);
      if (legal) clearSeen++;
      else barredSeen++;
      if (offset % 3 !== 0) continue;
      const panel = {
        left: offset,
        right: offset + ask.size.width,
        bottom: ask.bottom,
        top: ask.bottom + ask.size.height,
        out: ask.out,
        depth: ask.size.depth,
      };
      const answer = searchSpace({ ...ask, panel, hinge: 'left', existingDwelling: false, amps: 200 });
      expect([seed, offset, clearBySearch(answer)]).toEqual([seed, offset, legal]);
      if (legal) expect([seed, offset, answer.door.outcome]).toEqual([seed, offset, 'holds']);
    }
  }
  expect(Math.min(clearSeen, barredSeen)).toBeGreaterThan(4000); // both kinds were really met
});

test('ends of an interval are exact: clear at the end, barred 1/64 in beyond', () => {
  let ends = 0;
  for (let seed = 100; seed < 140; seed++) {
    const ask = randomAsk(seed);
    for (const [from, to] of legalIntervals(ask))
      for (const [end, beyond] of [
        [from, from - 1 / 64],
        [to, to + 1 / 64],
      ] as const) {
        const at = (left: number) =>
          clearBySearch(
            searchSpace({
              ...ask,
              panel: {
                left,
                right: left + ask.size.width,
                bottom: ask.bottom,
                top: ask.bottom + ask.size.height,
                out: ask.out,
                depth: ask.size.depth,
              },
              hinge: 'lift-off',
              existingDwelling: false,
              amps: 200,
            }),
          );
        expect([seed, end, at(end)]).toEqual([seed, end, true]);
        if (!inside(legalIntervals(ask), beyond)) expect([seed, beyond, at(beyond)]).toEqual([seed, beyond, false]);
        ends++;
      }
  }
  expect(ends).toBeGreaterThan(40);
});

test('a bare face between square walls is clear from end to end; a gap of exactly 30 in is enough, 1/64 less is not', () => {
  const wall = (id: string, x0: number, x1: number): SpaceBlocker => ({
    id,
    outline: [
      [x0, 0],
      [x1, 0],
      [x1, 120],
      [x0, 120],
    ],
    fromZ: 0,
    toZ: 96,
    blocksSpace: true,
    foreign: false,
    stored: false,
  });
  const ask = (faceLength: number): PlacesAsk => ({
    faceLength,
    size: { width: 14.5, depth: 4, height: 34 },
    bottom: 38,
    out: 4,
    blockers: [wall('a', -6, 0), wall('b', faceLength, faceLength + 6)],
    structureZ: 'unknown',
    headroomException: false,
  });
  expect(legalIntervals(ask(120))).toEqual([[0, 105.5]]);
  expect(legalIntervals(ask(30))).toEqual([[0, 15.5]]);
  expect(legalIntervals(ask(30 - 1 / 64))).toEqual([]);
  expect(legalIntervals(ask(10))).toEqual([]);
});
