import { describe, expect, it } from 'vitest';
import type { Job, Obstacle, Option, Partition } from '../../../src/job/schema';
import { runPoints } from '../../../src/routing/existingRuns';
import { legsOf } from '../../../src/routing/legs';
import { membersCrossed } from '../../../src/routing/legsMembers';
import { buildNetwork, nodeAt, pointOf } from '../../../src/routing/network';
import { blockersOf } from '../../../src/routing/networkBlockers';
import { pathTo } from '../../../src/routing/path';
import { mayCrossUndersides, weigh } from '../../../src/routing/prices';
import { sweep } from '../../../src/routing/sweep';
import { panelEntries } from '../../../src/routing/terminals';
import type { CablePrices, Network } from '../../../src/routing/types';
import type { Pt, Pt3 } from '../../../src/units/types';
import { RUN, RUN_LENGTH, room } from './smallRoom';

/**
 * Routes in a room one can work by hand: 20 ft by 12 ft, poured walls, joists along y at 8 + 16 k, underside 92,
 * middle of the joists at 96-5/8. The new panel hangs on the north wall, its top at (112, 144, 72), in the middle of
 * the bay between the joists at 104 and 120. Prices are round so that sums can be done in the head.
 */
const PRICES: CablePrices = {
  perFt: 1_200, // 100 mills an inch
  hole: 600,
  boardPerFt: 2_400,
  sleevePerFt: 3_600,
  patchPerFt: 12_000,
  tilePerFt: 600,
  underside: false,
};
const Z = 96.625;
type Site = Job['site'];

const walls = (build: Site['outline'][number]['face']['now']['build'], studSpacing: number | null = null) =>
  room().job.site.outline.map((c) => {
    const face = { build, insulated: false };
    return { ...c, face: { now: face, after: face }, studSpacing };
  });

const house = (site: Partial<Site> = {}, option: Partial<Option> = {}) => {
  const made = room({ option });
  return { job: { ...made.job, site: { ...made.job.site, outline: walls('poured'), ...site } }, option: made.option };
};
/** The middles of the panel's sides only, so that sums stay round. */
const middles = (made: { job: Job; option: Option }, network: Network) => {
  const { on, size } = made.option.enclosure;
  const [x, z] = [on.left + size.width / 2, on.bottom + size.height / 2];
  return panelEntries(network, made.option.enclosure).filter((e) =>
    e.side === 'top' || e.side === 'bottom' ? Math.abs(e.point[0] - x) < 1e-9 : e.point[2] === z,
  );
};
const find = (made: { job: Job; option: Option }, target: Pt3, prices = PRICES) => {
  const network = buildNetwork(made.job, made.option, { points: [target] });
  const done = sweep(network, weigh(network, prices), middles(made, network));
  const node = nodeAt(network, target)!;
  const path = pathTo(done, node);
  return {
    mills: done.dist[node]! / 128,
    legs: legsOf(network, path, 'new', prices).map((l) => [l.by, l.from, l.to]),
    holes: membersCrossed(network, path, prices),
    blockers: () =>
      blockersOf(
        network,
        panelEntries(network, made.option.enclosure).map((e) => e.node),
        node,
      ),
  };
};
const box = (id: string, corner: Pt, width: number, depth: number, bottom: number, height: number): Obstacle => ({
  id,
  kind: 'duct',
  corner,
  turn: 0,
  size: { width, depth, height },
  sizes: 'measured',
  bottom,
  blocksCable: true,
  blocksSpace: false,
  foreign: false,
  clearance: 0,
  exists: { now: true, after: true },
  stored: false,
  moveCents: null,
});
const cover = (now: 'open joists' | 'drywall' | 'lay-in' | 'unknown', after = now): Site['areas'] => {
  const { areas } = room().job.site;
  const { state } = areas[0]!;
  return [{ ...areas[0]!, state: { now: { ...state.now, cover: now }, after: { ...state.after, cover: after } } }];
};
const framing = (more: Partial<Site['framing'][number]>): Site['framing'] => [
  { ...room().job.site.framing[0]!, ...more },
];
describe('along and across joists', () => {
  it('goes up the wall, along its bay and across, boring each joist on the way', () => {
    // 20 up the wall in a sleeve, 4-5/8 into the joists, 44 south in the bay, 48 east through joists at 120, 136, 152
    const found = find(house(), [160, 100, Z]);
    expect(found.legs).toEqual([
      ['sleeve', [112, 144, 72], [112, 144, 92]],
      ['joist side', [112, 144, 92], [112, 144, Z]],
      ['joist side', [112, 144, Z], [112, 100, Z]],
      ['through joists', [112, 100, Z], [160, 100, Z]],
    ]);
    expect(found.holes).toEqual([
      { kind: 'joist', of: 'f', at: [120, 100, Z] },
      { kind: 'joist', of: 'f', at: [136, 100, Z] },
      { kind: 'joist', of: 'f', at: [152, 100, Z] },
    ]);
    expect(found.mills).toBeCloseTo(400 * 20 + 100 * (4.625 + 44 + 48) + 3 * 600, 0);
  });

  it('a joist that the cable only ends on is not bored; one it passes is', () => {
    expect(find(house(), [120, 100, Z]).holes).toHaveLength(0);
    expect(find(house(), [120.25, 100, Z]).holes).toHaveLength(1);
  });

  it('nothing is bored in open-web trusses', () => {
    const found = find(house({ framing: framing({ kind: 'open-web truss' }) }), [160, 100, Z]);
    expect(found.holes).toEqual([]);
    expect(found.mills).toBeCloseTo(400 * 20 + 100 * (4.625 + 44 + 48), 0);
  });

  it('LVL is not bored: the cable crosses below it on a board', () => {
    const found = find(house({ framing: framing({ kind: 'LVL' }) }), [160, 100, Z]);
    expect(found.holes).toEqual([]);
    expect(found.legs.some(([by]) => by === 'running board')).toBe(true);
  });

  it('where holes are dear a board is laid, unless the cable may be fastened to the undersides (334.15(C))', () => {
    const dear = { ...PRICES, hole: 20_000 };
    const target: Pt3 = [160, 100, 92];
    const small = find(house(), target, dear);
    expect(small.legs.map(([by]) => by)).toContain('running board');
    const large = find(house(), target, { ...dear, underside: true });
    expect(large.legs.map(([by]) => by)).toContain('joist underside');
    // level with the joists' undersides: 20 up, 44 and 48 across; the board costs 200 an inch more than the cable alone
    expect(large.mills).toBeCloseTo(400 * 20 + 100 * (44 + 48), 0);
    expect(small.mills).toBeGreaterThan(large.mills);
  });

  it.each([
    ['NM', '6', 2, 'none', true],
    ['NM', '8', 2, 'insulated', true],
    ['NM', '8', 1, 'insulated', false],
    ['NM', '10', 2, 'insulated', false],
    ['NM', '1/0', 2, 'insulated', true],
    ['MC', '14', 1, 'insulated', true],
    ['AC', '12', 1, 'insulated', true],
    ['UF', '6', 2, 'insulated', false],
    ['NM', 'unknown', 2, 'insulated', false],
    ['unknown', '6', 2, 'insulated', false],
  ] as const)('%s of size %s, %s hots, neutral %s: across undersides %s', (kind, size, hots, neutral, may) => {
    expect(mayCrossUndersides({ kind, size, hots, neutral, metal: 'Cu', ground: true, insulation: 90 })).toBe(may);
  });
});

describe('ceilings', () => {
  const target: Pt3 = [160, 100, Z];
  const ways = (now: Parameters<typeof cover>[0], after?: Parameters<typeof cover>[1], dear = PRICES) =>
    new Set(find(house({ areas: cover(now, after) }), target, dear).legs.map(([by]) => by));

  it('drywall is opened at its price, and nothing hangs below it', () => {
    expect(ways('drywall')).toContain('opened drywall');
    const found = find(house({ areas: cover('drywall') }), target);
    // a sleeve costs 400 an inch, opened drywall 1100: 48 along the wall in the sleeve first, then 44 opened along the bay
    expect(found.mills).toBeCloseTo(400 * (20 + 48) + 100 * 4.625 + 1100 * 44, 0);
    expect(found.holes).toHaveLength(0);
  });
  it('nothing hangs below joists that will be covered, or may be', () => {
    const dear = { ...PRICES, hole: 20_000 };
    expect(ways('open joists', 'open joists', dear)).toContain('running board');
    expect(ways('open joists', 'drywall', dear)).not.toContain('running board');
    expect(ways('open joists', 'unknown', dear)).not.toContain('running board');
  });
  it('tiles are lifted over a lay-in ceiling', () => {
    const found = find(house({ areas: cover('lay-in') }), [160, 100, 92]);
    expect(found.legs.map(([by]) => by)).toEqual(['sleeve', 'above lay-in', 'above lay-in']);
    expect(found.mills).toBeCloseTo(400 * 20 + 150 * (44 + 48), 0);
  });
  it('an unknown cover, and a place in no area, cost as much as the dearest', () => {
    const dearest = find(house({ areas: cover('drywall') }), target).mills;
    expect(find(house({ areas: cover('unknown') }), target).mills).toBe(dearest);
    expect(find(house({ areas: [] }), target).mills).toBe(dearest);
  });
});

describe('walls', () => {
  const at: Pt3 = [112, 144, 84]; // 12 in straight above the panel
  it.each([
    ['plywood board', 'wall board', 100],
    ['poured', 'sleeve', 400],
    ['block', 'sleeve', 400],
    ['furred', 'sleeve', 400],
    ['open studs', 'stud bay', 100],
    ['finished studs', 'opened drywall', 1100],
    ['unknown', 'opened drywall', 1100],
  ] as const)('up a wall of %s: %s', (build, by, millsPerIn) => {
    const found = find(house({ outline: walls(build) }), at);
    expect(found.legs).toEqual([[by, [112, 144, 72], at]]);
    expect(found.mills).toBeCloseTo(12 * millsPerIn, 0);
  });
  it('an unknown wall is as dear as the dearer of a sleeve and a patch', () => {
    const dear = find(house({ outline: walls('unknown') }), at, { ...PRICES, sleevePerFt: 24_000 });
    expect(dear.legs[0]![0]).toBe('sleeve');
    expect(dear.mills).toBeCloseTo(12 * 2100, 0);
  });
  it('along open studs every begun spacing counts one stud', () => {
    // 40 in west of the panel's left side, over studs at 16 in: three
    const site = { outline: walls('open studs', 16), areas: cover('drywall') };
    const found = find(house(site), [64.75, 144, 54], PRICES);
    expect(found.legs).toEqual([['stud bay', [104.75, 144, 54], [64.75, 144, 54]]]);
    expect(found.holes.map((h) => h.kind)).toEqual(['stud', 'stud', 'stud']);
    expect(found.mills).toBeCloseTo(40 * 100 + (40 / 16) * 600, 0);
  });
  it('from a stud wall into the joists the plate is bored', () => {
    const found = find(house({ outline: walls('open studs', 16) }), [112, 100, Z]);
    expect(found.holes.map((h) => h.kind)).toEqual(['plate']);
  });
  it('goes around a door, not through it', () => {
    const door: Site['openings'][number] = {
      id: 'door',
      kind: 'door',
      exists: { now: true, after: true },
      on: { wall: 'w1', face: 'front', left: 20, bottom: 0 },
      width: 36,
      height: 80,
      sizes: 'measured',
      hinge: 'left',
      swings: 'front',
    };
    const target: Pt3 = [10, 144, 30];
    const site = { areas: cover('drywall') };
    const straight = find(house(site), target);
    const around = find(house({ ...site, openings: [door] }), target);
    // straight: from the panel's bottom, 6 down and 102 along. Around: from its top up to 80-1/2, along, and down to 30
    expect(straight.mills).toBeCloseTo(400 * (6 + 102), 0);
    expect(around.mills).toBeCloseTo(400 * (8.5 + 102 + 50.5), 0);
    const later = { ...door, exists: { now: false, after: true } };
    expect(find(house({ ...site, openings: [later] }), target).mills).toBe(around.mills);
  });
  it('turns the corner onto the next wall', () => {
    const found = find(house({ areas: cover('drywall') }), [0, 120, 54]);
    expect(found.legs).toEqual([
      ['sleeve', [104.75, 144, 54], [0, 144, 54]],
      ['sleeve', [0, 144, 54], [0, 120, 54]],
    ]);
  });
});

describe('things in the way', () => {
  it('a duct across the joists is passed by its side, with half a cable between', () => {
    // it stands in the joists over x 100…130, y 100…110, so the bay above the panel is shut; around its east side at 130-1/2
    const found = find(house({ obstacles: [box('duct', [100, 100], 30, 10, 88, 20)] }), [112, 60, Z]);
    const clear = find(house(), [112, 60, Z]);
    expect(found.mills).toBeGreaterThan(clear.mills);
    for (const [, from, to] of found.legs as [string, Pt3, Pt3][])
      for (const t of [0.25, 0.5, 0.75]) {
        const [x, y] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
        expect(x > 99.5 && x < 130.5 && y > 99.5 && y < 110.5).toBe(false);
      }
  });
  it('two that touch are one: nothing slips through the seam', () => {
    const wall = (ids: [string, string], seam: number) => [
      box(ids[0], [0, 80], seam, 10, 80, 40),
      box(ids[1], [seam, 80], 240 - seam, 10, 80, 40),
    ];
    for (const seam of [64, 112, 130.25]) {
      const found = find(house({ obstacles: wall(['west', 'east'], seam), areas: cover('open joists', 'drywall') }), [
        112,
        40,
        Z,
      ]);
      // the only way left is down the walls and past the ends below the things
      for (const [by, from, to] of found.legs as [string, Pt3, Pt3][])
        if (by === 'joist side' || by === 'through joists')
          expect(Math.min(from[1], to[1]) < 80 && Math.max(from[1], to[1]) > 90).toBe(false);
    }
  });
  it('a beam below the joists bars the board and not the joists; one among them bars both', () => {
    const target: Pt3 = [112, 60, Z];
    const below = find(house({ obstacles: [box('beam', [0, 100], 240, 4, 82, 10)] }), target);
    expect(below.mills).toBe(find(house(), target).mills);
    const flush = find(house({ obstacles: [box('beam', [0, 100], 240, 4, 92, 10)] }), target);
    for (const [by, from, to] of flush.legs as [string, Pt3, Pt3][])
      if (by === 'joist side' || by === 'through joists')
        expect(Math.min(from[1], to[1]) < 100 && Math.max(from[1], to[1]) > 104).toBe(false);
    expect(flush.mills).toBeGreaterThan(below.mills);
    const hung = find(house({ obstacles: [box('beam', [0, 100], 240, 4, 82, 7)] }), [112, 60, 92]);
    expect(hung.mills, 'a board passes over a pipe 3 in below the joists').toBe(find(house(), [112, 60, 92]).mills);
  });
  it('clearance widens a thing', () => {
    const near = { ...box('flue', [116, 90], 8, 8, 0, 120), clearance: 2 };
    expect(find(house({ obstacles: [near] }), [112, 60, Z]).mills).toBe(find(house(), [112, 60, Z]).mills);
    const wide = { ...near, clearance: 4 };
    expect(find(house({ obstacles: [wide] }), [112, 60, Z]).mills).toBeGreaterThan(find(house(), [112, 60, Z]).mills);
  });
  it('a thing that does not block cable, is gone in both states, or is moved away, is not in the way', () => {
    const duct = box('duct', [0, 100], 240, 10, 88, 20);
    const target: Pt3 = [112, 60, Z];
    const clear = find(house(), target).mills;
    expect(find(house({ obstacles: [duct] }), target).mills).toBeGreaterThan(clear);
    expect(find(house({ obstacles: [{ ...duct, blocksCable: false }] }), target).mills).toBe(clear);
    expect(find(house({ obstacles: [{ ...duct, exists: { now: false, after: false } }] }), target).mills).toBe(clear);
    const moves = [{ obstacle: 'duct', to: 'away' as const }];
    expect(find(house({ obstacles: [duct] }, { moves }), target).mills).toBe(clear);
    const later = { ...duct, exists: { now: false, after: true } };
    expect(find(house({ obstacles: [later] }), target).mills).toBeGreaterThan(clear);
  });
  it('a panned return may be crossed and not followed (300.22(C)); a blocked bay neither', () => {
    const outline: Pt[] = [
      [136, 0],
      [136, 144],
      [152, 144],
      [152, 0],
    ];
    const target: Pt3 = [200, 100, Z];
    const clear = find(house(), target).mills;
    expect(find(house({ bays: [{ id: 'b', outline, state: 'panned return' }] }), target).mills).toBe(clear);
    expect(find(house({ bays: [{ id: 'b', outline, state: 'blocked' }] }), target).mills).toBeGreaterThan(clear);
    const own = outline.map(([x, y]): Pt => [x - 32, y]); // the bay right above the panel
    const along = find(house({ bays: [{ id: 'b', outline: own, state: 'panned return' }] }), [112, 60, Z]);
    for (const [by, from, to] of along.legs as [string, Pt3, Pt3][])
      if (by === 'joist side' && from[2] === to[2]) expect(from[0] <= 104 || from[0] >= 120).toBe(true);
  });
  it('a keep-out pin is respected', () => {
    const outline: Pt[] = [
      [100, 90],
      [100, 100],
      [130, 100],
      [130, 90],
    ];
    const pins = [{ id: 'no', pin: 'keep out' as const, outline, fromZ: 60, toZ: 120 }];
    expect(find(house({}, { pins }), [112, 60, Z]).mills).toBeGreaterThan(find(house(), [112, 60, Z]).mills);
  });
});

describe('partitions', () => {
  const partition = (more: Partial<Partition> = {}): Partition => ({
    id: 'p',
    from: [0, 80],
    to: [240, 80],
    thickness: 4.5,
    height: 92,
    exists: { now: true, after: true },
    front: { now: { build: 'open studs', insulated: false }, after: { build: 'open studs', insulated: false } },
    back: { now: { build: 'open studs', insulated: false }, after: { build: 'open studs', insulated: false } },
    studSpacing: 16,
    ...more,
  });
  it('are crossed over among the joists, never below them where they reach them', () => {
    const dear = { ...PRICES, hole: 20_000 };
    const target: Pt3 = [112, 40, 92];
    const across = framing({ direction: 0 }); // joists along x: southward the cable crosses them
    const findAcross = (made: ReturnType<typeof house>, to: Pt3, prices: CablePrices) =>
      find({ ...made, job: { ...made.job, site: { ...made.job.site, framing: across } } }, to, prices);
    const found = findAcross(house({ partitions: [partition()] }), target, dear);
    for (const [by, from, to] of found.legs as [string, Pt3, Pt3][])
      if (by === 'running board') expect((from[1] - 80) * (to[1] - 80)).toBeGreaterThan(0);
    expect(Number.isFinite(found.mills)).toBe(true);
    expect(found.mills).toBeGreaterThan(findAcross(house(), target, dear).mills);
    const low = findAcross(house({ partitions: [partition({ height: 72 })] }), target, dear);
    expect(low.mills).toBe(findAcross(house(), target, dear).mills);
    const unknown = findAcross(house({ partitions: [partition({ height: 'unknown' })] }), target, dear);
    expect(unknown.mills).toBe(found.mills);
  });
  it('one that comes with the finishing is wired while its studs are open', () => {
    const finished = { build: 'finished studs', insulated: false } as const;
    const later = partition({
      exists: { now: false, after: true },
      front: { now: finished, after: finished },
      back: { now: finished, after: finished },
    });
    const found = find(house({ partitions: [later] }), [112, 82.25, 60]);
    expect(found.legs.at(-1)![0]).toBe('stud bay');
    const standing = find(house({ partitions: [{ ...later, exists: { now: true, after: true } }] }), [112, 82.25, 60]);
    expect(standing.legs.at(-1)![0]).toBe('opened drywall');
  });
  it('cable goes around the free end of one', () => {
    const short = partition({ from: [0, 80], to: [100, 80], height: 60 });
    const network = buildNetwork(house({ partitions: [short] }).job, house().option, {
      points: [
        [90, 77.75, 50],
        [90, 82.25, 50],
      ],
    });
    const done = sweep(network, weigh(network, PRICES), [{ node: nodeAt(network, [90, 77.75, 50])!, cost: 0 }]);
    const legs = legsOf(network, pathTo(done, nodeAt(network, [90, 82.25, 50])!), 'new', PRICES);
    expect(legs.map((l) => l.to)).toEqual([
      [100, 77.75, 50],
      [100, 82.25, 50],
      [90, 82.25, 50],
    ]);
  });
});

describe('panels, sleeves, existing runs', () => {
  it('a surface panel is entered on four sides, a recessed one on two', () => {
    const sides = (mount: 'surface' | 'recessed') => {
      const made = house({}, { enclosure: { ...house().option.enclosure, mount } });
      return panelEntries(buildNetwork(made.job, made.option, { points: [] }), made.option.enclosure);
    };
    const placed = (mount: 'surface' | 'recessed') => sides(mount).map((e) => `${e.side} ${e.point.join(' ')}`);
    const ends = [106.75, 112, 117.25].flatMap((x) => [`top ${x} 144 72`, `bottom ${x} 144 36`]);
    const flanks = [38, 54, 70].flatMap((z) => [`left 104.75 144 ${z}`, `right 119.25 144 ${z}`]);
    expect(placed('surface').sort()).toEqual([...ends, ...flanks].sort());
    expect(placed('recessed').sort()).toEqual([...ends].sort());
  });
  it('an old panel that stays is gone around, a removed one is not', () => {
    // the old can covers 60…74-1/2 and 44…68 of the west wall
    const target: Pt3 = [0, 30, 54];
    const site = { areas: cover('drywall') };
    const removed = find(house(site), target).mills;
    const kept = find(house(site, { replaces: [{ enclosure: 'old', becomes: 'splice can' }] }), target).mills;
    // around its bottom: 10 down and 10 up again
    expect(kept - removed).toBeCloseTo(400 * 20, 0);
  });
  it('a raceway that is already there is used at the price of the cable', () => {
    const wall: Partition = {
      id: 'p',
      from: [0, 80],
      to: [240, 80],
      thickness: 8,
      height: 92,
      exists: { now: true, after: true },
      front: { now: { build: 'poured', insulated: false }, after: { build: 'poured', insulated: false } },
      back: { now: { build: 'poured', insulated: false }, after: { build: 'poured', insulated: false } },
      studSpacing: null,
    };
    const through = { id: 's', from: [50, 84, 60] as Pt3, to: [50, 76, 60] as Pt3, diameter: 1.25, metal: true };
    const made = house({ partitions: [wall], sleeves: [through] });
    const network = buildNetwork(made.job, made.option, { points: [] });
    const done = sweep(network, weigh(network, PRICES), [{ node: nodeAt(network, through.from)!, cost: 0 }]);
    const node = nodeAt(network, through.to)!;
    expect(done.dist[node]! / 128).toBeCloseTo(800, 0);
    expect(legsOf(network, pathTo(done, node), 'new', PRICES)).toEqual([
      { from: [50, 84, 60], to: [50, 76, 60], cable: 'new', row: null, by: 'raceway' },
    ]);
  });
  it('an existing run has a node at every corner, mark and grid line, at the exact point and chainage', () => {
    const made = house();
    const network = buildNetwork(made.job, made.option, { points: [] });
    const points = runPoints(network, 'h1');
    expect(points[0]).toMatchObject({ chain: 0, point: RUN[0] });
    expect(points.at(-1)).toMatchObject({ chain: RUN_LENGTH, point: RUN[3] });
    expect(points.find((p) => p.chain === 28.625)!.point).toEqual(RUN[1]);
    expect(points.find((p) => p.chain === 121.125)!.point).toEqual([92.5, 67.25, Z]); // the pivot
    for (const middle of [16, 32, 48, 64, 80, 96])
      expect(points.some((p) => p.point[0] === middle && p.chain === 28.625 + middle)).toBe(true);
    for (const p of points) expect(pointOf(network, p.node)).toEqual(p.point);
    expect(points.map((p) => p.chain)).toEqual([...points.map((p) => p.chain)].sort((a, b) => a - b));
  });
  it('a run at another height in the joists is joined by a short upright piece', () => {
    const target: Pt3 = [112, 100, 100];
    const found = find(house(), target);
    expect(found.legs.at(-1)).toEqual(['joist side', [112, 100, Z], target]);
    expect(found.mills).toBeCloseTo(400 * 20 + 100 * (4.625 + 44 + 3.375), 0);
  });
});

describe('what cannot be reached', () => {
  it('names the thing that alone shuts a terminal in', () => {
    const shut = [box('tank', [140, 40], 40, 40, 0, 200), box('shelf', [10, 10], 10, 10, 0, 40)];
    const found = find(house({ obstacles: shut }), [160, 60, Z]);
    expect(found.mills).toBe(Number.POSITIVE_INFINITY);
    expect(found.legs).toEqual([]);
    expect(found.blockers()).toEqual(['tank']);
  });
  it('names both where each of two alone would do it', () => {
    const shut = [box('a', [140, 40], 40, 40, 0, 200), box('b', [140, 40], 40, 40, 0, 200)];
    expect(find(house({ obstacles: shut }), [160, 60, Z]).blockers()).toEqual(['a', 'b']);
  });
  it('names the wall before a terminal outside the room', () => {
    expect(find(house(), [112, 200, Z]).blockers()).toEqual(['w1']);
  });
});

describe('size', () => {
  const many = (count: number) => {
    const things = Array.from({ length: count }, (_, i) =>
      box(
        `x${i}`,
        [((i * 37) % 440) / 2, ((i * 53) % 250) / 2],
        3 + (i % 11) * 4,
        2 + (i % 7) * 5,
        70 + (i % 30),
        4 + (i % 9),
      ),
    );
    return house({ obstacles: things });
  };
  it('an ordinary room is built in well under a second, one thing or fifty', () => {
    for (const count of [1, 50]) {
      const made = many(count);
      const start = performance.now();
      const network = buildNetwork(made.job, made.option, { points: [] });
      expect(performance.now() - start).toBeLessThan(2000);
      expect(network.nodeCount).toBeGreaterThan(1000);
    }
  });
  it('an absurd one is read coarsely, clear all the same', () => {
    const made = many(1200);
    const network = buildNetwork(made.job, made.option, { points: [] });
    expect(network.nodeCount).toBeLessThan(1_500_000);
    const done = sweep(network, weigh(network, PRICES), panelEntries(network, made.option.enclosure));
    const free = made.job.site.obstacles.filter((o) => o.bottom + o.size.height > 92.01 && o.bottom < 101);
    expect(free.length).toBeGreaterThan(100);
    let checked = 0;
    for (let n = 0; n < network.nodeCount; n += 97) {
      if (done.dist[n] === Number.POSITIVE_INFINITY || network.pz[n]! <= 92) continue;
      const [x, y] = pointOf(network, n);
      checked++;
      for (const o of free)
        expect(
          x > o.corner[0] && x < o.corner[0] + o.size.width && y > o.corner[1] && y < o.corner[1] + o.size.depth,
        ).toBe(false);
    }
    expect(checked).toBeGreaterThan(5);
  });
});

describe('what is not known', () => {
  it('framing that was not surveyed is taken as likely, and every assumption is listed', () => {
    const made = house({ framing: [] });
    const network = buildNetwork(made.job, made.option, { points: [] });
    expect(network.assumed.map((a) => [a.path, a.value])).toEqual([
      ['/site/framing/0/direction', 90], // across the shorter side of a room 20 by 12 ft
      ['/site/framing/0/spacing', 16],
      ['/site/framing/0/firstJoist', 112], // a bay in the middle, at 120
      ['/site/framing/0/underside', 92],
      ['/site/framing/0/depth', 9.25],
      ['/site/framing/0/kind', 'sawn'],
    ]);
    expect(find(made, [160, 100, Z]).mills).toBeGreaterThan(0);
  });
  it.each(['direction', 'firstJoist', 'spacing', 'depth', 'kind', 'underside'] as const)('%s of the framing', (key) => {
    const found = find(house({ framing: framing({ [key]: 'unknown' }) }), [160, 100, Z]);
    expect(found.mills).toBeGreaterThan(0);
    expect(found.mills).toBeLessThan(1e6);
  });
  it('a panel on a wall that does not exist has no entries', () => {
    const made = house(
      {},
      { enclosure: { ...house().option.enclosure, on: { wall: 'no', face: 'front', left: 0, bottom: 0 } } },
    );
    expect(panelEntries(buildNetwork(made.job, made.option, { points: [] }), made.option.enclosure)).toEqual([]);
  });
});
