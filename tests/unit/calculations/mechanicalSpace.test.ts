import { describe, expect, test } from 'vitest';
import { type SpaceAsk, searchSpace } from '../../../src/calculations/spaceSearch';
import type { SpaceBlocker } from '../../../src/calculations/spaceZone';
import type { Pt } from '../../../src/units/types';

// NFPA 70 (NEC) 110.26(A)(1)–(3), (B), (E)(1). A panel 14-1/2 in wide, 4 in deep, from 38 to 72 in, at 60 in on a 144 in face.
const box = (
  id: string,
  [x0, x1]: readonly [number, number],
  [y0, y1]: readonly [number, number],
  [z0, z1]: readonly [number, number] = [0, 96],
  over: Partial<SpaceBlocker> = {},
): SpaceBlocker => ({
  id,
  outline: [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
  fromZ: z0,
  toZ: z1,
  blocksSpace: true,
  foreign: false,
  stored: false,
  ...over,
});
const panel = { left: 60, right: 74.5, bottom: 38, top: 72, out: 4, depth: 4 };
const search = (blockers: readonly SpaceBlocker[], over: Partial<SpaceAsk> = {}) =>
  searchSpace({
    panel,
    faceLength: 144,
    blockers,
    structureZ: 92,
    hinge: 'left',
    existingDwelling: false,
    amps: 200,
    ...over,
  });

test('a bare room holds everywhere, with nothing measured', () => {
  const answer = search([]);
  for (const v of [answer.depth, answer.width, answer.height, answer.door, answer.above, answer.below, answer.body])
    expect(v).toMatchObject({ outcome: 'holds', intruders: [] });
  expect(answer.depth.measuredIn).toBeNull();
  expect(answer.workingSpace).toEqual({ along: [52.25, 82.25], out: [4, 40], z: [0, 78] });
});

describe('depth', () => {
  const washer = (from: number) => search([box('washer', [50, 90], [from, from + 27], [0, 38])]).depth;
  test('36 in from the panel front, not from the wall', () => {
    expect(washer(40)).toMatchObject({ outcome: 'holds', measuredIn: 36 });
    expect(washer(40 + 1 / 64)).toMatchObject({ outcome: 'holds', measuredIn: 36 + 1 / 64 });
    expect(washer(40 - 1 / 64)).toMatchObject({
      outcome: 'fails',
      measuredIn: 36 - 1 / 64,
      intruders: [{ id: 'washer', byIn: 1 / 64 }],
    });
  });
  test('a thing lower than the panel counts; one that ends at the floor or lies flush does not', () => {
    expect(search([box('low', [62, 70], [10, 20], [0, 1])]).depth.outcome).toBe('fails');
    expect(search([box('flush', [62, 70], [10, 20], [-6, 0])]).depth.outcome).toBe('holds');
  });
  test('a thing that does not block space is no bar', () => {
    expect(search([box('cable tray', [62, 70], [10, 20], [0, 30], { blocksSpace: false })]).depth.outcome).toBe(
      'holds',
    );
  });
});

describe('width', () => {
  const between = (left: number, right: number) =>
    search([box('a', [left - 20, left], [4, 30], [0, 60]), box('b', [right, right + 20], [4, 30], [0, 60])]);
  test('the window slides: 30 in, wherever the panel stands in it', () => {
    expect(between(60, 90).width).toMatchObject({ outcome: 'holds', measuredIn: 30 });
    expect(between(44.5, 74.5).width).toMatchObject({ outcome: 'holds', measuredIn: 30 });
    expect(between(44.5, 74.5).workingSpace.along).toEqual([44.5, 74.5]);
    expect(between(60, 90 - 1 / 64).width).toMatchObject({
      outcome: 'fails',
      intruders: [
        { id: 'a', byIn: 1 / 64 },
        { id: 'b', byIn: 1 / 64 },
      ],
    });
  });
  test('a turned box bars from its corner', () => {
    const diamond = (tip: number): SpaceBlocker => ({
      ...box('turned', [0, 0], [0, 0], [0, 60]),
      outline: [
        [tip, 20],
        [tip + 10, 30],
        [tip + 20, 20],
        [tip + 10, 10],
      ] satisfies Pt[],
    });
    const left = box('a', [20, 60], [4, 30], [0, 60]);
    expect(search([left, diamond(90)]).width.outcome).toBe('holds');
    expect(search([left, diamond(89.9)]).width.outcome).toBe('fails');
  });
});

describe('headroom', () => {
  const duct = (underside: number, along: readonly [number, number] = [0, 144]) => [
    box('duct', along, [4, 30], [underside, underside + 14]),
  ];
  test('78 in under a duct: at, below, above', () => {
    expect(search(duct(78)).height).toMatchObject({ outcome: 'holds', measuredIn: 78, requiredIn: 78 });
    expect(search(duct(77)).height).toMatchObject({
      outcome: 'fails',
      measuredIn: 77,
      intruders: [{ id: 'duct', byIn: 1 }],
    });
    expect(search(duct(79)).height).toMatchObject({ outcome: 'holds', measuredIn: 79 });
    expect([search(duct(77)).depth.outcome, search(duct(77)).width.outcome]).toEqual(['holds', 'holds']);
  });
  test('the window slides out from under a duct that leaves room beside it', () => {
    expect(search(duct(70, [74.5, 100])).height.outcome).toBe('holds');
    expect(search(duct(70, [74.5, 100])).workingSpace.along).toEqual([44.5, 74.5]);
    expect(search(duct(70, [74, 100])).height.outcome).toBe('fails');
  });
  test('existing dwelling up to 200 A: holds, marked as the exception; rating not known cannot be told', () => {
    const low = (over: Partial<SpaceAsk>) => search(duct(70), { existingDwelling: true, ...over }).height;
    expect(low({ amps: 200 })).toMatchObject({ outcome: 'holds', exception: true });
    expect(low({ amps: 225 })).toMatchObject({ outcome: 'fails', exception: false });
    expect(low({ amps: 'unknown' })).toMatchObject({ outcome: 'cannot be told', exception: false });
    expect(search(duct(80), { existingDwelling: true }).height.exception).toBe(false);
  });
});

describe('door', () => {
  test('sweeps a quarter circle from its hinge', () => {
    // 12 in out and 12 in along from the left hinge is 16.97 in away: clear of a 14-1/2 in door hinged left.
    const post = [box('post', [72, 74.5], [16, 18], [0, 60])];
    expect(search(post, { hinge: 'left' }).door.outcome).toBe('holds');
    expect(search(post, { hinge: 'right' }).door).toMatchObject({
      outcome: 'fails',
      intruders: [{ id: 'post', byIn: 2.5 }],
    });
    expect(search(post, { hinge: 'unknown' }).door.outcome).toBe('cannot be told');
    expect(search(post, { hinge: 'lift-off' }).door.outcome).toBe('holds');
  });
  test('a wall beside the hinge still lets it open to 90°; a thing at the hinge leaves nothing', () => {
    expect(search([box('wall', [50, 60], [0, 60])], { hinge: 'left' }).door.outcome).toBe('holds');
    expect(search([box('block', [50, 70], [4, 30])], { hinge: 'left' }).door).toMatchObject({
      outcome: 'fails',
      measuredIn: 0,
    });
    expect(search([box('slab', [0, 144], [2, 60])], { hinge: 'left' }).door).toMatchObject({
      outcome: 'fails',
      measuredIn: 0,
    });
  });
  test('only what stands at the height of the door is in its way', () => {
    expect(search([box('low', [60, 74], [6, 20], [0, 38])], { hinge: 'left' }).door.outcome).toBe('holds');
  });
});

describe('dedicated zone and the panel itself', () => {
  const pipe = (along: readonly [number, number], out: readonly [number, number], z: readonly [number, number]) =>
    box('pipe', along, out, z, { foreign: true, blocksSpace: false });
  test('a foreign thing over the footprint fails; in front of it, beside it or above the joists it does not', () => {
    expect(search([pipe([62, 63], [1, 2], [80, 90])]).above).toMatchObject({
      outcome: 'fails',
      intruders: [{ id: 'pipe', byIn: 1 }],
    });
    expect(search([pipe([62, 63], [4, 5], [80, 90])]).above.outcome).toBe('holds');
    expect(search([pipe([74.5, 76], [1, 2], [80, 90])]).above.outcome).toBe('holds');
    expect(search([pipe([62, 63], [1, 2], [92, 93])]).above.outcome).toBe('holds');
    expect(search([pipe([62, 63], [1, 2], [10, 20])]).below.outcome).toBe('fails');
    expect(search([box('beam', [0, 144], [0, 6], [84, 92])]).above.outcome).toBe('holds'); // structure is not foreign
  });
  test('structural ceiling not known: a thing up there cannot be told, an empty zone holds', () => {
    const over = { structureZ: 'unknown' } as const;
    expect(search([pipe([62, 63], [1, 2], [92, 93])], over).above.outcome).toBe('cannot be told');
    expect(search([], over).above.outcome).toBe('holds');
    expect(search([pipe([62, 63], [1, 2], [144, 150])], over).above.outcome).toBe('holds'); // 72 + 72
  });
  test('the panel needs room for itself on its face and under the joists', () => {
    expect(search([box('shelf', [70, 90], [0, 3], [50, 52], { blocksSpace: false })]).body.outcome).toBe('fails');
    expect(search([], { faceLength: 74 }).body).toMatchObject({ outcome: 'fails', measuredIn: 0.5 });
    expect(search([], { structureZ: 71 }).body).toMatchObject({ outcome: 'fails', measuredIn: 1 });
  });
});

test('stored goods are named but bar nothing', () => {
  const answer = search([box('boxes', [55, 80], [4, 30], [0, 40], { stored: true })]);
  expect(answer.stored).toEqual(['boxes']);
  expect([answer.depth.outcome, answer.width.outcome, answer.body.outcome]).toEqual(['holds', 'holds', 'holds']);
});

test('the order of things changes nothing', () => {
  const things = [
    box('b', [20, 55], [4, 30], [0, 60]),
    box('a', [80, 99], [4, 30], [0, 60]),
    box('duct', [0, 144], [4, 30], [70, 80]),
    box('c', [70, 72], [20, 22], [0, 9]),
  ];
  expect(JSON.stringify(search([...things].reverse()))).toBe(JSON.stringify(search(things)));
});
