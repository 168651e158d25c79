import { legalIntervals } from '../../calculations/legalIntervals';
import { searchSpace } from '../../calculations/spaceSearch';
import type { SpaceBlocker } from '../../calculations/spaceZone';
import { commonIntervals, freeIntervals, type Interval, overlap } from '../../geometry/freeIntervals';
import { insideParts } from '../../geometry/polygon';
import type { Job, Option, Site } from '../../job/schema';
import { areaAt, enclosureOnFace, framingAt, pointOnFace, type WallFace } from '../../job/site';
import { blockersAround, openingAlong } from '../../rules/place/surroundings';
import { EXISTING_DWELLING } from '../../standards/editionsPlace';
import { HEADROOM_EXCEPTION_AMPS } from '../../standards/workingSpace';
import { type In, isKnown, type U } from '../../units/types';
import { drawingWords as say } from '../../words/en/drawings';

/** A stretch of left offsets at which a panel may not hang, and what bars it there. */
export interface Barred {
  readonly from: In;
  readonly to: In;
  readonly why: string;
}
/** Left offsets of one face at which the panel has its spaces clear, and the stretches between with what bars them. */
export interface Places {
  readonly clear: readonly Interval[];
  readonly barred: readonly Barred[];
}

/** Rooms no panel may hang in, whatever is clear before it: clothes closet, bath, over steps. 240.24(D), (E), (F). */
const BARRED_USES: readonly string[] = ['clothes closet', 'bath', 'stair'];
const INSIDE_IN = 1;

/** Headroom is not asked for in an existing dwelling at a panel of not more than 200 A. 110.26(A)(3), exception. */
const excepted = ({ code }: Job, { kind, enclosure }: Option): boolean => {
  const local = code.amendments.headroomInNewSpot;
  return (
    isKnown(code.edition) &&
    EXISTING_DWELLING[code.edition] &&
    (kind === 'in place' || (local !== 'no' && local !== false)) &&
    isKnown(enclosure.busAmps) &&
    enclosure.busAmps <= HEADROOM_EXCEPTION_AMPS
  );
};

/** Stretches of a face before which one room and one framing lie, as left offsets of a panel by its middle. */
const stretches = (site: Site, face: WallFace, width: In): Interval[] => {
  const [a, b] = [pointOnFace(face, 0, INSIDE_IN), pointOnFace(face, face.length, INSIDE_IN)];
  const outlines = [...site.areas, ...site.framing].flatMap((x) => (x.outline ? [x.outline] : []));
  const cuts = outlines.flatMap((o) => insideParts(a, b, o).flatMap(([f, t]) => [f * face.length, t * face.length]));
  const stops = [...new Set([0, face.length, ...cuts])].sort((p, q) => p - q);
  return stops
    .slice(1)
    .map((to, i): Interval => [stops[i]! - width / 2, to - width / 2])
    .filter(([from, to]) => to - from > 1e-6);
};

interface Ask {
  readonly job: Job;
  readonly option: Option;
  readonly face: WallFace;
  readonly blockers: (floor: In) => readonly SpaceBlocker[];
}

/** What stands in the way of a panel at one place, by kind. */
const whyNot = ({ job, option, face, blockers }: Ask, left: In, floor: In, structureZ: U<In>): string => {
  const on = enclosureOnFace({ ...option.enclosure, on: { ...option.enclosure.on, left } });
  const found = searchSpace({
    panel: { ...on, bottom: on.bottom - floor, top: on.top - floor, depth: option.enclosure.size.depth },
    faceLength: face.length,
    blockers: blockers(floor),
    structureZ,
    hinge: option.enclosure.doorHinge,
    existingDwelling: excepted(job, option),
    amps: option.enclosure.busAmps,
  });
  const failing = [found.body, found.depth, found.width, found.height, found.above, found.below].filter(
    (v) => v.outcome === 'fails',
  );
  const ids = failing.flatMap((v) => v.intruders.map((i) => i.id));
  const kinds = ids.map((id) => job.site.obstacles.find((o) => o.id === id)?.kind ?? say.wallOrCeiling);
  return [...new Set(kinds)].slice(0, 2).join(', ') || say.noRoom;
};

/**
 * Where along a face the option's new panel, at its height, has working space, dedicated space and itself clear: exact
 * to the edges of what stands around. Other rules may still speak against a place, and for lengths that were not
 * measured the walls and ceilings are taken as open; the plan of the place decides.
 */
export const placesOn = (job: Job, option: Option, face: WallFace): Places => {
  const { site } = job;
  const { size, on, mount } = option.enclosure;
  const known = new Map<In, readonly SpaceBlocker[]>();
  const blockers = (floor: In) => {
    const found = known.get(floor) ?? blockersAround({ option }, site, face, floor);
    known.set(floor, found);
    return found;
  };
  const ask: Ask = { job, option, face, blockers };
  const openings = site.openings
    .filter((o) => o.on.wall === face.wall && o.exists.after)
    .filter((o) => overlap([o.on.bottom, o.on.bottom + o.height], [on.bottom, on.bottom + size.height]))
    .map((o) => ({ kind: o.kind, along: openingAlong(face, o) }));
  const last = Math.max(0, face.length - size.width);
  const clear: Interval[] = [];
  const barred: Barred[] = [];
  for (const stretch of stretches(site, face, size.width)) {
    const [from, to] = [Math.max(0, stretch[0]), Math.min(last, stretch[1])];
    if (to < from) continue;
    const before = pointOnFace(face, (from + to + size.width) / 2, INSIDE_IN);
    const area = areaAt(site, before);
    const floor = area?.state.after.floorRise ?? 0;
    const underside = framingAt(site, before)?.underside ?? 'unknown';
    const structureZ = isKnown(underside) ? underside - floor : underside;
    const use = area?.state.after.use;
    const spaces =
      use !== undefined && BARRED_USES.includes(use)
        ? []
        : legalIntervals({
            faceLength: face.length,
            size,
            bottom: on.bottom - floor,
            out: mount === 'surface' ? size.depth : 0,
            blockers: blockers(floor),
            structureZ,
            headroomException: excepted(job, option),
          });
    const shut = openings.map((o): Interval => [o.along[0] - size.width, o.along[1]]);
    const free = commonIntervals(commonIntervals(freeIntervals([from, to], shut), spaces), [[from, to]]);
    clear.push(...free);
    for (const [a, b] of freeIntervals([from, to], free)) {
      if (b - a < 1e-6) continue;
      const middle = (a + b) / 2;
      const opening = openings.find((o) => overlap([middle, middle + size.width], o.along));
      const why =
        use !== undefined && BARRED_USES.includes(use)
          ? use
          : (opening?.kind ?? whyNot(ask, middle, floor, structureZ));
      const before1 = barred.at(-1);
      if (before1 && before1.why === why && a - before1.to < 1e-6) barred[barred.length - 1] = { ...before1, to: b };
      else barred.push({ from: a, to: b, why });
    }
  }
  return { clear: joined(clear), barred };
};

/** Intervals that touch are one. */
const joined = (intervals: readonly Interval[]): Interval[] => {
  const out: [number, number][] = [];
  for (const [from, to] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const before = out.at(-1);
    if (before && from <= before[1] + 1e-6) before[1] = Math.max(before[1], to);
    else out.push([from, to]);
  }
  return out;
};
