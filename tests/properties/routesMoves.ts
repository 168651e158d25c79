import type { Job, Option } from '../../src/job/schema';
import type { Pt, Pt3 } from '../../src/units/types';

/** A whole house moved, turned by quarters, or seen in a mirror, with everything in it. */
export interface Move {
  readonly name: string;
  readonly point: (p: Pt) => Pt;
  readonly mirrors: boolean;
  /** Degrees added to directions; in a mirror x → -x a direction d becomes 180 - d. */
  readonly turn: number;
}
export const MOVES: readonly Move[] = [
  { name: 'moved', point: ([x, y]) => [x + 1003.421875, y - 377.734375], mirrors: false, turn: 0 },
  { name: 'turned a quarter', point: ([x, y]) => [-y, x], mirrors: false, turn: 90 },
  { name: 'turned a half and moved', point: ([x, y]) => [77 - x, 13.5 - y], mirrors: false, turn: 180 },
  { name: 'turned three quarters', point: ([x, y]) => [y + 5, 9 - x], mirrors: false, turn: 270 },
  { name: 'mirrored', point: ([x, y]) => [500 - x, y], mirrors: true, turn: 0 },
];

const wallLength = (job: Job, wall: string): number => {
  const { outline, partitions } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  const [a, b] =
    i >= 0
      ? [outline[i]!.at, outline[(i + 1) % outline.length]!.at]
      : [partitions.find((p) => p.id === wall)!.from, partitions.find((p) => p.id === wall)!.to];
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
};

export const movePoint3 = (move: Move, p: Pt3): Pt3 => [...move.point([p[0], p[1]]), p[2]];

export const moved = (move: Move, job: Job, option: Option): { job: Job; option: Option } => {
  const at = move.point;
  const at3 = (p: Pt3) => movePoint3(move, p);
  const direction = (d: number) => (((move.mirrors ? 180 - d : d + move.turn) % 180) + 180) % 180;
  const hung = <T extends { on: { wall: string; left: number } }>(thing: T, width: number): T =>
    move.mirrors
      ? { ...thing, on: { ...thing.on, left: wallLength(job, thing.on.wall) - thing.on.left - width } }
      : thing;
  const ring = (outline: readonly Pt[]) => outline.map(at);
  const { site } = job;
  const corners = site.outline.map((c, i) => ({
    ...c,
    at: at(move.mirrors ? site.outline[(i + 1) % site.outline.length]!.at : c.at),
  }));
  const panel = <T extends { on: { wall: string; left: number }; size: { width: number } }>(e: T): T =>
    hung(e, e.size.width);
  const fresh = { ...option, enclosure: panel(option.enclosure) };
  return {
    option: fresh,
    job: {
      ...job,
      enclosures: job.enclosures.map(panel),
      options: job.options.map((o) => (o.id === option.id ? fresh : { ...o, enclosure: panel(o.enclosure) })),
      cableGroups: job.cableGroups.map((g) => ({ ...g, path: g.path.map(at3) })),
      feeder: { ...job.feeder, entersAt: at3(job.feeder.entersAt), path: job.feeder.path.map(at3) },
      site: {
        ...site,
        outline: move.mirrors ? corners.reverse() : corners,
        partitions: site.partitions.map((p) =>
          move.mirrors ? { ...p, from: at(p.to), to: at(p.from) } : { ...p, from: at(p.from), to: at(p.to) },
        ),
        openings: site.openings.map((o) => hung(o, o.width)),
        areas: site.areas.map((a) => ({ ...a, outline: ring(a.outline) })),
        bays: site.bays.map((b) => ({ ...b, outline: ring(b.outline) })),
        framing: site.framing.map((f) => {
          if (f.direction === 'unknown' || f.firstJoist === 'unknown') return f;
          // a point of the first joist, carried along: joists along y are counted in x, along x in y
          const alongY = f.direction % 180 === 90;
          const [x, y] = at(alongY ? [f.firstJoist, 0] : [0, f.firstJoist]);
          const now = direction(f.direction);
          return { ...f, direction: now, firstJoist: now === 90 ? x : y };
        }),
        obstacles: site.obstacles.map((o) => {
          if (!move.mirrors)
            return { ...o, corner: at(o.corner), turn: o.turn + (move.turn > 180 ? move.turn - 360 : move.turn) };
          return { ...o, corner: at([o.corner[0] + o.size.width, o.corner[1]]) };
        }),
        sleeves: site.sleeves.map((s) => ({ ...s, from: at3(s.from), to: at3(s.to) })),
      },
    },
  };
};
