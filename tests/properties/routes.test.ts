import { describe, expect, it } from 'vitest';
import type { Job, Option } from '../../src/job/schema';
import { legsOf } from '../../src/routing/legs';
import { buildNetwork, nodeAt } from '../../src/routing/network';
import { pathTo } from '../../src/routing/path';
import { lengthWeights, weigh } from '../../src/routing/prices';
import { sweep } from '../../src/routing/sweep';
import { panelEntries } from '../../src/routing/terminals';
import type { CablePrices, Network, Sweep } from '../../src/routing/types';
import type { Pt, Pt3 } from '../../src/units/types';
import { random } from '../support/random';
import { faultsOf } from './routesClear';
import { MOVES, moved, movePoint3 } from './routesMoves';
import { askew, PRICES, routeRoom } from './routesRooms';

const FROM_PANEL = (network: Network, option: Option, prices: CablePrices = PRICES): Sweep =>
  sweep(network, weigh(network, prices), panelEntries(network, option.enclosure));
const costsTo = (job: Job, option: Option, targets: readonly Pt3[], lines: readonly Pt[] = []): number[] => {
  const network = buildNetwork(job, option, { points: targets, lines });
  const { dist } = FROM_PANEL(network, option);
  return targets.map((p) => dist[nodeAt(network, p)!]!);
};
const seeds = (from: number, count: number) => Array.from({ length: count }, (_, i) => from + i);

describe('the grid holds a cheapest path', () => {
  const everyFourInches: Pt[] = Array.from({ length: 105 }, (_, i) => [i * 4, i * 4]);
  it('costs the same as with lines every 4 in besides, in 60 rooms', () => {
    let reached = 0;
    for (const seed of seeds(1, 60)) {
      const { job, option, targets } = routeRoom(seed);
      const plain = costsTo(job, option, targets);
      expect(costsTo(job, option, targets, everyFourInches), `room ${seed}`).toEqual(plain);
      reached += plain.filter(Number.isFinite).length;
    }
    expect(reached).toBeGreaterThan(350);
  });
});

describe('paths in space', () => {
  const rooms = [
    ...seeds(400, 40).map((seed) => ({ seed, ...routeRoom(seed) })),
    ...seeds(500, 25).map((seed) => ({ seed, ...askew(routeRoom(seed), seed) })),
  ];
  const walked = rooms.flatMap(({ seed, job, option, targets }) => {
    const network = buildNetwork(job, option, { points: targets });
    const done = FROM_PANEL(network, option);
    return targets.flatMap((target) => {
      const path = pathTo(done, nodeAt(network, target)!);
      const legs = legsOf(network, path, 'new', PRICES);
      return path.length > 1 ? [{ seed, job, option, target, network, path, legs }] : [];
    });
  });

  it('run through nothing, by an independent walk', () => {
    expect(walked.length).toBeGreaterThan(300);
    for (const { seed, job, option, target, legs } of walked)
      expect(faultsOf(job, option, legs), `room ${seed} to ${target}`).toEqual([]);
  });

  it('the walk catches a leg put through a thing, a wall, a door and a closed ceiling', () => {
    const { job, option } = routeRoom(3);
    const leg = (by: 'sleeve' | 'joist side' | 'running board', from: Pt3, to: Pt3) => ({
      by,
      from,
      to,
      cable: 'new' as const,
      row: null,
    });
    const z = 96 + 4.75;
    expect(faultsOf(job, option, [leg('joist side', [130, 100, z], [200, 100, z])])).toContain('through t0');
    expect(faultsOf(job, option, [leg('joist side', [-5, 20, z], [60, 20, z])])).toContain('out of the room');
    expect(faultsOf(job, option, [leg('running board', [2, 150, 96], [90, 150, 96])]).join()).toContain('drywall');
    const door = job.site.openings[0]!;
    expect(faultsOf(job, option, [leg('sleeve', [276 - 60 - 16, 0, 10], [276 - 60 - 16, 0, 60])]), door.id).toContain(
      'through door',
    );
  });

  it('begin at the panel and end at the terminal, exactly', () => {
    for (const { target, legs, option, network } of walked) {
      expect(legs.at(-1)!.to).toEqual(target);
      const starts = panelEntries(network, option.enclosure).map((e) => e.point);
      expect(starts.some((p) => Math.hypot(...p.map((c, k) => c - legs[0]!.from[k]!)) < 1e-6)).toBe(true);
    }
  });

  it('are never shorter than the straight line, nor than the rectilinear way where walls are square', () => {
    for (const { job, target, legs } of walked) {
      const start = legs[0]!.from;
      const long = legs.reduce((n, l) => n + Math.hypot(...l.to.map((c, k) => c - l.from[k]!)), 0);
      const d = target.map((c, k) => Math.abs(c - start[k]!));
      expect(long).toBeGreaterThan(Math.hypot(...d) - 1e-6);
      const askewed = job.site.partitions.some((q) => q.id === 'diagonal');
      const square =
        !askewed &&
        job.site.outline.every((c, i, all) => {
          const next = all[(i + 1) % all.length]!.at;
          return c.at[0] === next[0] || c.at[1] === next[1];
        });
      if (square) expect(long).toBeGreaterThan(d[0]! + d[1]! + d[2]! - 1e-6);
    }
  });

  it('measured from their points are as long as the search says, to a few 1/64 in on sloped walls', () => {
    for (const { network, path, legs } of walked) {
      const along = sweep(network, lengthWeights(network), [{ node: path[0]!, cost: 0 }]);
      const long = legs.reduce((n, l) => n + Math.hypot(...l.to.map((c, k) => c - l.from[k]!)), 0);
      expect(along.dist[path.at(-1)!]! / 64).toBeLessThan(long + 0.25);
    }
  });
});

describe('what must not matter does not', () => {
  it.each(MOVES)('the house $name: every cost stays', (move) => {
    for (const seed of seeds(700, 16)) {
      const { job, option, targets } = routeRoom(seed);
      const there = moved(move, job, option);
      const costs = costsTo(
        there.job,
        there.option,
        targets.map((p) => movePoint3(move, p)),
      );
      expect(costs, `room ${seed}`).toEqual(costsTo(job, option, targets));
    }
  });

  it('the order of lists: the same network, number by number', () => {
    for (const seed of seeds(800, 15)) {
      const { job, option, targets } = routeRoom(seed);
      const r = random(seed);
      const shuffled = <T>(list: readonly T[]): T[] =>
        list
          .map((value) => ({ value, key: r.next() }))
          .sort((a, b) => a.key - b.key)
          .map(({ value }) => value);
      const { site } = job;
      const mixed: Job = {
        ...job,
        enclosures: shuffled(job.enclosures),
        cableGroups: shuffled(job.cableGroups),
        homeRuns: shuffled(job.homeRuns),
        site: {
          ...site,
          partitions: shuffled(site.partitions),
          openings: shuffled(site.openings),
          areas: shuffled(site.areas),
          obstacles: shuffled(site.obstacles),
          bays: shuffled(site.bays),
        },
      };
      const figures = (n: Network) => ({ ...n, made: null });
      expect(figures(buildNetwork(mixed, option, { points: shuffled(targets) }))).toEqual(
        figures(buildNetwork(job, option, { points: targets })),
      );
    }
  });

  it('one more thing in the way never makes a route cheaper', () => {
    let dearer = 0;
    for (const seed of seeds(900, 16)) {
      const { job, option, targets } = routeRoom(seed);
      let before = targets.map(() => 0);
      job.site.obstacles.forEach((_, i, all) => {
        const some: Job = { ...job, site: { ...job.site, obstacles: all.slice(0, i) } };
        const costs = costsTo(some, option, targets);
        costs.forEach((cost, t) => {
          expect(cost, `room ${seed}, ${i} things, to ${targets[t]}`).toBeGreaterThanOrEqual(before[t]!);
          if (i > 0 && cost > before[t]!) dearer++;
        });
        before = costs;
      });
    }
    expect(dearer).toBeGreaterThan(5);
  });

  it('not knowing how a wall is built, what covers a ceiling or how high a partition is never makes a route cheaper', () => {
    const unknownFace = { build: 'unknown', insulated: 'unknown' } as const;
    for (const seed of seeds(1000, 12)) {
      const { job, option, targets } = routeRoom(seed);
      const { site } = job;
      const known = costsTo(job, option, targets);
      const blind: Job['site'][] = [
        ...site.outline.map((c) => ({
          ...site,
          outline: site.outline.map((o) => (o === c ? { ...o, face: { ...o.face, now: unknownFace } } : o)),
        })),
        ...site.areas.flatMap((a) =>
          (['now', 'after'] as const).map((when) => ({
            ...site,
            areas: site.areas.map((o) =>
              o === a ? { ...o, state: { ...o.state, [when]: { ...o.state[when], cover: 'unknown' as const } } } : o,
            ),
          })),
        ),
        { ...site, partitions: site.partitions.map((p) => ({ ...p, height: 'unknown' as const })) },
      ];
      for (const unknown of blind)
        costsTo({ ...job, site: unknown }, option, targets).forEach((cost, i) => {
          expect(cost, `room ${seed}, ${targets[i]}`).toBeGreaterThanOrEqual(known[i]!);
        });
    }
  });
});
