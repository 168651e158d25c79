import type { Leg, Run } from '../../src/facts/result';
import type { Job, Option } from '../../src/job/schema';
import type { Pt, Pt3 } from '../../src/units/types';

/**
 * Walks a plan's legs in space with geometry of its own and says what is wrong with them.
 * Imports nothing from routing/ or pricing/ (types only from the result and the job): it is the second opinion.
 */

const IN_WALL = 6; // in: a cable this near to a wall's face is the wall's
const EPS = 0.02; // in: below half of 1/16, above float noise

const minus = (a: Pt, b: Pt): Pt => [a[0] - b[0], a[1] - b[1]];
const cross = (a: Pt, b: Pt) => a[0] * b[1] - a[1] * b[0];
const dot = (a: Pt, b: Pt) => a[0] * b[0] + a[1] * b[1];
const plan = (p: Pt3): Pt => [p[0], p[1]];

const distanceTo = (p: Pt, a: Pt, b: Pt) => {
  const ab = minus(b, a);
  const t = Math.max(0, Math.min(1, dot(minus(p, a), ab) / (dot(ab, ab) || 1)));
  return Math.hypot(p[0] - a[0] - ab[0] * t, p[1] - a[1] - ab[1] * t);
};
/** How deep a point lies inside a polygon: negative outside. */
const depthInside = (p: Pt, polygon: readonly Pt[]) => {
  let inside = false;
  let nearest = Number.POSITIVE_INFINITY;
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
    nearest = Math.min(nearest, distanceTo(p, a, b));
  });
  return inside ? nearest : -nearest;
};

export const legLength = (leg: Leg) =>
  Math.hypot(leg.to[0] - leg.from[0], leg.to[1] - leg.from[1], leg.to[2] - leg.from[2]);
const at = (leg: Leg, t: number): Pt3 =>
  [0, 1, 2].map((k) => leg.from[k]! + (leg.to[k]! - leg.from[k]!) * t) as unknown as Pt3;
/** Points along a leg at most half an inch apart, ends drawn in a little so that a touch is not a crossing. */
const samples = (leg: Leg): Pt3[] => {
  const n = Math.max(2, Math.ceil(legLength(leg) * 2));
  return Array.from({ length: n - 1 }, (_, i) => at(leg, (i + 1) / n));
};

const turned = (corner: Pt, w: number, d: number, degrees: number): Pt[] => {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return (
    [
      [0, 0],
      [w, 0],
      [w, d],
      [0, d],
    ] as const
  ).map(([x, y]) => [corner[0] + x * c - y * s, corner[1] + x * s + y * c]);
};

export interface LegFault {
  readonly homeRun: string;
  readonly leg: number;
  readonly say: string;
}

interface Slab {
  readonly id: string;
  readonly outline: readonly Pt[];
  readonly from: number;
  readonly to: number;
}

const slabs = (job: Job, option: Option): Slab[] => [
  ...job.site.obstacles.flatMap((o): Slab[] => {
    const corner = option.moves.find((m) => m.obstacle === o.id)?.to ?? o.corner;
    if (!o.exists.now || !o.blocksCable || corner === 'away') return [];
    return [
      {
        id: o.id,
        outline: turned(corner, o.size.width, o.size.depth, o.turn),
        from: o.bottom,
        to: o.bottom + o.size.height,
      },
    ];
  }),
  ...option.pins.flatMap((p): Slab[] =>
    p.pin === 'keep out' ? [{ id: p.id, outline: p.outline, from: p.fromZ, to: p.toZ }] : [],
  ),
  ...job.site.bays.flatMap((b): Slab[] =>
    b.state === 'blocked' ? [{ id: b.id, outline: b.outline, from: 60, to: 200 }] : [],
  ),
];

/** Faces as from, to (left to right seen by a person facing them), wall id and side. */
const faces = (job: Job) => {
  const outline = job.site.outline;
  const list = outline.map((c, i) => ({
    wall: c.id,
    face: 'front',
    from: c.at as Pt,
    to: outline[(i + 1) % outline.length]!.at as Pt,
  }));
  for (const p of job.site.partitions) {
    const t = (p.thickness === 'unknown' ? 4.5 : p.thickness) / 2;
    const long = Math.hypot(p.to[0] - p.from[0], p.to[1] - p.from[1]);
    const right: Pt = [((p.to[1] - p.from[1]) / long) * t, (-(p.to[0] - p.from[0]) / long) * t];
    list.push({
      wall: p.id,
      face: 'front',
      from: [p.from[0] + right[0], p.from[1] + right[1]],
      to: [p.to[0] + right[0], p.to[1] + right[1]],
    });
    list.push({
      wall: p.id,
      face: 'back',
      from: [p.to[0] - right[0], p.to[1] - right[1]],
      to: [p.from[0] - right[0], p.from[1] - right[1]],
    });
    // a cable may turn around a free end; no opening is in one
    const [front, back] = list.slice(-2);
    list.push({ wall: p.id, face: 'end', from: front!.to, to: back!.from });
    list.push({ wall: p.id, face: 'end', from: back!.to, to: front!.from });
  }
  return list;
};

const ON_WALL = new Set(['wall board', 'stud bay', 'sleeve']);

export const walkRun = (job: Job, option: Option, run: Run): LegFault[] => {
  const faults: LegFault[] = [];
  const room = job.site.outline.map((c) => c.at as Pt);
  const things = slabs(job, option);
  const wallFaces = faces(job);
  run.legs.forEach((leg, i) => {
    const fault = (say: string) =>
      faults.push({ homeRun: run.homeRun, leg: i, say: `${say} (${leg.by} ${leg.from} to ${leg.to})` });
    const before = run.legs[i - 1];
    if (before && Math.hypot(...before.to.map((x, k) => x - leg.from[k]!)) > EPS)
      fault('does not start where the leg before ends');
    if (leg.by === 'inside panel' || leg.by === 'inside box') return;
    // an old cable that was drawn a little behind a wall's face comes out of it
    const outOfWall = i === 0 && leg.by === 'sleeve' && legLength(leg) <= IN_WALL;
    for (const p of samples(leg)) {
      if (!outOfWall && depthInside(plan(p), room) < -EPS) {
        fault('leaves the room');
        break;
      }
      const inThing = things.find(
        (s) => p[2] > s.from + EPS && p[2] < s.to - EPS && depthInside(plan(p), s.outline) > EPS,
      );
      if (inThing) {
        fault(`runs through ${inThing.id}`);
        break;
      }
      const bay = job.site.bays.find((b) => b.state === 'panned return' && depthInside(plan(p), b.outline) > EPS);
      if (bay && leg.by === 'joist side') {
        fault(`runs along the panned return ${bay.id}`);
        break;
      }
    }
    for (const f of wallFaces) {
      const onFace = [leg.from, leg.to].every((p) => distanceTo(plan(p), f.from, f.to) < 1);
      if (!onFace) continue;
      const along = minus(f.to, f.from);
      const long = Math.hypot(...along);
      const chain = (p: Pt3) => dot(minus(plan(p), f.from), along) / long;
      for (const o of job.site.openings) {
        if (f.face === 'end' || o.on.wall !== f.wall || !(o.exists.now || o.exists.after)) continue;
        const left = o.on.face === f.face ? o.on.left : long - o.on.left - o.width;
        const hit = samples(leg).some(
          (p) =>
            chain(p) > left + EPS &&
            chain(p) < left + o.width - EPS &&
            p[2] > o.on.bottom + EPS &&
            p[2] < o.on.bottom + o.height - EPS,
        );
        if (hit) fault(`crosses the opening ${o.id}`);
      }
    }
    // a cable on a post or a pipe in the room is followed straight up
    const upright = leg.by === 'sleeve' && distanceTo(plan(leg.from), plan(leg.to), plan(leg.to)) < EPS;
    if (
      !upright &&
      !outOfWall &&
      ON_WALL.has(leg.by) &&
      !wallFaces.some((f) => [leg.from, leg.to].every((p) => distanceTo(plan(p), f.from, f.to) < 1))
    )
      fault('is on a wall by name but on none in space');
    for (const p of job.site.partitions) {
      if (!p.exists.now || ON_WALL.has(leg.by)) continue;
      const top = p.height === 'unknown' ? Number.POSITIVE_INFINITY : p.height;
      const [a, b] = [plan(leg.from), plan(leg.to)];
      const d1 = cross(minus(p.to, p.from), minus(a, p.from));
      const d2 = cross(minus(p.to, p.from), minus(b, p.from));
      const d3 = cross(minus(b, a), minus(p.from, a));
      const d4 = cross(minus(b, a), minus(p.to, a));
      if (d1 * d2 < 0 && d3 * d4 < 0 && at(leg, d1 / (d1 - d2))[2] < top - EPS && top !== Number.POSITIVE_INFINITY)
        fault(`goes through the partition ${p.id}`);
    }
  });
  return faults;
};

/** New cable along its path outside cabinets and boxes, inches. */
export const newLength = (run: Pick<Run, 'legs'>) =>
  run.legs
    .filter((l) => l.cable === 'new' && l.by !== 'inside box' && l.by !== 'inside panel')
    .reduce((n, l) => n + legLength(l), 0);

/** No joists lie closer: such a spacing is a slip of the pen, and what is assumed for it stands in the result. */
const CLOSEST_IN = 3;

/**
 * The way in which joists are counted from the origin to the first one: square to them, toward +x or +y, whichever is
 * nearer, +y where both are.
 */
const acrossJoists = (direction: number): Pt => {
  const a = (direction * Math.PI) / 180;
  const [x, y] = [Math.sin(a), -Math.cos(a)];
  const lead = Math.abs(x) > Math.abs(y) + 1e-9 ? x : y;
  return lead < 0 ? [-x, -y] : [x, y];
};

/**
 * Joists bored by a run's new and re-entered legs, from the framing alone: a joist is bored where the cable, level among
 * the joists, changes from one side of its centerline to the other.
 */
export const holesOf = (job: Job, run: Pick<Run, 'legs'>): number => {
  let holes = 0;
  let chain = null as { region: string; at: number[]; spacing: number } | null;
  const close = () => {
    if (!chain) return;
    const { at: places, spacing } = chain;
    for (let k = Math.floor(Math.min(...places) / spacing); k <= Math.ceil(Math.max(...places) / spacing); k++) {
      const sides = places.map((c) => Math.sign(Math.round((c - k * spacing) * 1e6))).filter((side) => side !== 0);
      holes += sides.filter((side, i) => i > 0 && side !== sides[i - 1]).length;
    }
    chain = null;
  };
  for (const leg of run.legs) {
    const level = leg.by === 'through joists' || (leg.by === 'joist side' && Math.abs(leg.from[2] - leg.to[2]) < EPS);
    if (!level) {
      close();
      continue;
    }
    const mid = plan(at(leg, 0.5));
    const region =
      job.site.framing.find((f) => f.outline !== null && depthInside(mid, f.outline) >= -EPS) ??
      job.site.framing.find((f) => f.outline === null);
    if (region?.kind === 'open-web truss') {
      close(); // passed between its webs, never bored
      continue;
    }
    if (
      !region ||
      region.spacing === 'unknown' ||
      region.spacing < CLOSEST_IN ||
      region.firstJoist === 'unknown' ||
      region.direction === 'unknown'
    ) {
      if (leg.by === 'through joists') return Number.NaN;
      close();
      continue;
    }
    const across = acrossJoists(region.direction);
    const first = region.firstJoist;
    const coordinate = (p: Pt3) => dot(plan(p), across) - first;
    if (chain?.region !== region.id) {
      close();
      chain = { region: region.id, at: [coordinate(leg.from)], spacing: region.spacing };
    }
    chain!.at.push(coordinate(leg.to));
  }
  close();
  return holes;
};
