import type { Job } from '../../src/job/schema';
import type { Pt } from '../../src/units/types';

/** The same house put elsewhere on the sheet: every point of the job mapped, whatever its kind. */

type Map2 = (p: Pt) => Pt;
const three =
  (map: Map2) =>
  (p: readonly [number, number, number]): [number, number, number] => {
    const [x, y] = map([p[0], p[1]]);
    return [x, y, p[2]];
  };

interface Motion {
  readonly map: Map2;
  /** Degrees added to directions of joists. */
  readonly direction: (degrees: number) => number;
  /** Plan corner and turn of a box-shaped thing after the motion. */
  readonly box: (corner: Pt, width: number, depth: number, turn: number) => { corner: Pt; turn: number; swap: boolean };
  readonly firstJoist: (first: number, direction: number) => number;
}

const move = (job: Job, m: Motion): Job => {
  const p3 = three(m.map);
  return {
    ...job,
    feeder: { ...job.feeder, entersAt: p3(job.feeder.entersAt), path: job.feeder.path.map(p3) },
    cableGroups: job.cableGroups.map((g) => ({ ...g, path: g.path.map(p3) })),
    homeRuns: job.homeRuns.map((h) => ({ ...h, ownPath: h.ownPath?.map(p3) ?? null })),
    options: job.options.map((o) => ({
      ...o,
      moves: o.moves.map((x) => {
        const thing = job.site.obstacles.find((b) => b.id === x.obstacle)!;
        return x.to === 'away' ? x : { ...x, to: m.box(x.to, thing.size.width, thing.size.depth, thing.turn).corner };
      }),
    })),
    site: {
      ...job.site,
      outline: job.site.outline.map((c) => ({ ...c, at: m.map(c.at) })),
      partitions: job.site.partitions.map((p) => ({ ...p, from: m.map(p.from), to: m.map(p.to) })),
      areas: job.site.areas.map((a) => ({ ...a, outline: a.outline.map(m.map) })),
      bays: job.site.bays.map((b) => ({ ...b, outline: b.outline.map(m.map) })),
      framing: job.site.framing.map((f) => ({
        ...f,
        outline: f.outline?.map(m.map) ?? null,
        direction: f.direction === 'unknown' ? f.direction : m.direction(f.direction),
        firstJoist:
          f.firstJoist === 'unknown' || f.direction === 'unknown'
            ? f.firstJoist
            : m.firstJoist(f.firstJoist, f.direction),
      })),
      obstacles: job.site.obstacles.map((o) => {
        const { corner, turn, swap } = m.box(o.corner, o.size.width, o.size.depth, o.turn);
        const size = swap ? { ...o.size, width: o.size.depth, depth: o.size.width } : o.size;
        return { ...o, corner, turn, size };
      }),
      sleeves: job.site.sleeves.map((s) => ({ ...s, from: p3(s.from), to: p3(s.to) })),
    },
  };
};

/** Along x and y by whole 1/64 in. */
export const shifted = (job: Job, dx: number, dy: number): Job =>
  move(job, {
    map: (p) => [p[0] + dx, p[1] + dy],
    direction: (d) => d,
    box: (c, _w, _d, turn) => ({ corner: [c[0] + dx, c[1] + dy], turn, swap: false }),
    firstJoist: (first, direction) => first + (direction % 180 === 0 ? dy : dx),
  });

/** A quarter turn counter-clockwise about the origin; joists along x or y only. */
export const quarterTurned = (job: Job): Job =>
  move(job, {
    map: (p) => [-p[1] + 0, p[0]],
    direction: (d) => (d + 90) % 360,
    box: (c, _w, _d, turn) => ({ corner: [-c[1] + 0, c[0]], turn: turn + 90, swap: false }),
    // joists along x were counted in y, now lie along y and are counted in x = -y
    firstJoist: (first, direction) => (direction % 180 === 0 ? -first : first),
  });

/** Seen in a mirror: x becomes -x. Walls keep their ids, so each starts at its other end. */
export const mirrored = (job: Job): Job => {
  const flipped = move(job, {
    map: (p) => [-p[0] + 0, p[1]],
    direction: (d) => (180 - d + 360) % 360,
    box: (c, w, _d, turn) =>
      turn === 0
        ? { corner: [-c[0] - w, c[1]], turn: 0, swap: false }
        : { corner: [-c[0] + 0, c[1]], turn: 90 - turn, swap: true },
    firstJoist: (first, direction) => (direction % 180 === 0 ? first : -first),
  });
  const { outline } = flipped.site;
  const long = (wall: string) => {
    const i = job.site.outline.findIndex((c) => c.id === wall);
    const partition = job.site.partitions.find((p) => p.id === wall);
    const [a, b] = partition
      ? [partition.from, partition.to]
      : [job.site.outline[i]!.at, job.site.outline[(i + 1) % job.site.outline.length]!.at];
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  };
  type On = Job['enclosures'][number]['on'];
  const on = (place: On, width: number): On => ({ ...place, left: long(place.wall) - place.left - width });
  const other = { left: 'right', right: 'left', 'lift-off': 'lift-off', unknown: 'unknown' } as const;
  const panel = <E extends Job['enclosures'][number]>(e: E): E => ({
    ...e,
    on: on(e.on, e.size.width),
    doorHinge: other[e.doorHinge],
  });
  // the corner that starts a wall is now the one that ended it
  const corners = outline.map((c, i) => ({ ...c, at: outline[(i + 1) % outline.length]!.at })).reverse();
  return {
    ...flipped,
    enclosures: flipped.enclosures.map(panel),
    options: flipped.options.map((o) => ({ ...o, enclosure: panel(o.enclosure) })),
    cableGroups: flipped.cableGroups.map((g) => ({
      ...g,
      entry: g.entry === 'left' ? 'right' : g.entry === 'right' ? 'left' : g.entry,
    })),
    site: {
      ...flipped.site,
      outline: corners,
      partitions: flipped.site.partitions.map((p) => ({ ...p, from: p.to, to: p.from })),
      openings: flipped.site.openings.map((o) => ({
        ...o,
        on: on(o.on, o.width) as typeof o.on,
        hinge: o.hinge === 'left' ? 'right' : o.hinge === 'right' ? 'left' : o.hinge,
      })),
    },
  };
};
