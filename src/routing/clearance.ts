import { inflateConvex } from '../geometry/inflate';
import type { Polygon } from '../geometry/polygon';
import { type Rings, unite } from '../geometry/unite';
import { add, rightOf, scale, subtract, unit } from '../geometry/vector';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, STUD_WALL_IN, solids, wallFaces } from '../job/site';
import { byId, compareText } from '../units/order';
import type { Id, In, Pt } from '../units/types';
import { isKnown, knownOr } from '../units/types';
import { type Frame, snap } from './networkFrame';
import type { Region } from './networkFraming';

/**
 * Half a cable with room for its staple: a cable's line keeps this from things besides their own clearance. The
 * largest branch-circuit cable is about 0.9 in wide (6/3). Common practice, no source.
 */
export const CABLE_RADIUS_IN = 0.5;
/** Height below the joists that a cable on a running board takes up: a 3/4 in board and the cable. Common practice, no source. */
export const BELOW_JOISTS_IN = 1.5;

/** Something a cable may not pass through; outline and heights already include what the cable keeps from it. */
export interface Barrier {
  readonly id: Id;
  readonly outline: Polygon;
  readonly fromZ: In;
  readonly toZ: In;
  /** A partition's plate can be bored: it never bars the joists above it. */
  readonly what: 'thing' | 'keep out' | 'partition' | 'panel';
}

/** Old panels that stay on their walls, and the new one. One that the new panel takes the place of is gone. */
export const standingPanels = (job: Job, option: Option): Enclosure[] => {
  const removed = new Set(option.replaces.filter((r) => r.becomes === 'removed').map((r) => r.enclosure));
  const fresh = option.enclosure;
  const a = enclosureOnFace(fresh);
  const inTheWay = (e: Enclosure) => {
    const b = enclosureOnFace(e);
    return (
      e.on.wall === fresh.on.wall &&
      e.on.face === fresh.on.face &&
      a.left < b.right &&
      b.left < a.right &&
      a.bottom < b.top &&
      b.bottom < a.top
    );
  };
  return byId([...job.enclosures.filter((e) => e.id !== fresh.id && !removed.has(e.id) && !inTheWay(e)), fresh]);
};

const partitionBodies = (job: Job): Barrier[] =>
  job.site.partitions
    .filter((p) => p.exists.now || p.exists.after)
    .map((p) => {
      const half = scale(rightOf(unit(subtract(p.to, p.from))), knownOr(p.thickness, STUD_WALL_IN) / 2);
      return {
        id: p.id,
        outline: [add(p.from, half), add(p.to, half), subtract(p.to, half), subtract(p.from, half)],
        fromZ: Number.NEGATIVE_INFINITY,
        toZ: isKnown(p.height) ? p.height : Number.POSITIVE_INFINITY,
        what: 'partition' as const,
      };
    });

const panelBodies = (job: Job, option: Option): Barrier[] => {
  const faces = [...wallFaces(job.site, 'now'), ...wallFaces(job.site, 'after')];
  return standingPanels(job, option).flatMap((e) => {
    const face = faceOf(faces, e.on);
    const on = enclosureOnFace(e);
    if (!face || on.out === 0) return [];
    const corner = (chainage: In, out: In): Pt => pointOnFace(face, chainage, out);
    return [
      {
        id: e.id,
        outline: [corner(on.left, 0), corner(on.right, 0), corner(on.right, on.out), corner(on.left, on.out)],
        fromZ: on.bottom,
        toZ: on.top,
        what: 'panel' as const,
      },
    ];
  });
};

/** Everything in the way of cable, today or after the finishing, with the option's moves carried out. */
export const readBarriers = (job: Job, option: Option, without: ReadonlySet<Id>): Barrier[] => {
  const things = [...solids(job.site, 'now', option.moves), ...solids(job.site, 'after', option.moves)]
    .filter((s, i, all) => s.blocksCable && all.findIndex((other) => other.id === s.id) === i)
    .map((s): Barrier => {
      const keep = s.clearance + CABLE_RADIUS_IN;
      return {
        id: s.id,
        outline: inflateConvex(s.outline, keep),
        fromZ: s.fromZ - keep,
        toZ: s.toZ + keep,
        what: 'thing',
      };
    });
  const keepOuts = option.pins.flatMap((pin): Barrier[] =>
    pin.pin === 'keep out'
      ? [{ id: pin.id, outline: pin.outline, fromZ: pin.fromZ, toZ: pin.toZ, what: 'keep out' }]
      : [],
  );
  return [...things, ...keepOuts, ...partitionBodies(job), ...panelBodies(job, option)]
    .filter((b) => !without.has(b.id))
    .sort((a, b) => compareText(a.id, b.id));
};

const within = (b: Barrier, from: In, to: In) => b.fromZ < to && b.toZ > from;
const keepOf = (b: Barrier) => (b.what === 'thing' ? CABLE_RADIUS_IN : 0);

/** Does a barrier stand among the joists of a region, or right below them? The cable's thickness is counted once. */
export const barsJoists = (b: Barrier, region: Region): boolean =>
  b.what !== 'partition' && within(b, region.under / 64 + keepOf(b), (region.under + region.depth) / 64 - keepOf(b));
export const barsBelow = (b: Barrier, region: Region): boolean =>
  within(b, region.under / 64 - BELOW_JOISTS_IN + keepOf(b), region.under / 64 - keepOf(b));

export interface Bars {
  /** Areas by region index: what bars the joists, and what bars the level below them. */
  readonly joists: readonly (readonly Rings[])[];
  readonly below: readonly (readonly Rings[])[];
}

/** One union per height band, so that things that touch are one thing. */
export const uniteBars = (barriers: readonly Barrier[], regions: readonly Region[], frame: Frame): Bars => {
  const outlines = new Map(barriers.map((b) => [b, b.outline.map((p) => snap(frame, p))]));
  const kept = new Map<string, Rings[]>();
  const united = (list: readonly Barrier[]): Rings[] => {
    const key = list.map((b) => barriers.indexOf(b)).join();
    const rings = kept.get(key) ?? unite(list.map((b) => outlines.get(b)!));
    kept.set(key, rings);
    return rings;
  };
  return {
    joists: regions.map((r) => united(barriers.filter((b) => barsJoists(b, r)))),
    below: regions.map((r) => united(barriers.filter((b) => barsBelow(b, r)))),
  };
};
