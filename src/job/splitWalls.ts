import { add, cross, distance, scale, subtract, unit } from '../geometry/vector';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import type { Id, In, Pt } from '../units/types';
import { jobWords } from '../words/en/job';
import { faultAt } from './pointer';
import type { Job, OnWall } from './schema';

/** A corner this near to the line between its neighbors does not bend the wall. */
const STRAIGHT_IN = 1 / 32;

/** Everything that hangs on a wall, hung anew. */
export const rehang = (job: Job, to: (on: OnWall) => OnWall): Job => ({
  ...job,
  site: { ...job.site, openings: job.site.openings.map((o) => ({ ...o, on: to(o.on) })) },
  enclosures: job.enclosures.map((e) => ({ ...e, on: to(e.on) })),
  options: job.options.map((o) => ({
    ...o,
    enclosure: { ...o.enclosure, on: to(o.enclosure.on) },
    serviceDisconnect:
      o.serviceDisconnect === null || o.serviceDisconnect.on === 'outdoors'
        ? o.serviceDisconnect
        : { ...o.serviceDisconnect, on: to(o.serviceDisconnect.on) },
  })),
});

const noWall = (id: Id): Result<never, Fault> =>
  err(faultAt('no-such-record', ['site', 'outline'], jobWords.dangling({ id, what: jobWords.what.wall })));

/**
 * A wall in two at a distance from the end it starts at; the second part gets the new id and is built like the first.
 * What hangs on it stays where it is. What stands across the place is refused when the job is checked.
 */
export const splitWall = (job: Job, wall: Id, at: In, id: Id): Result<Job, Fault> => {
  const { outline, partitions } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  const partition = partitions.find((p) => p.id === wall);
  const ends: readonly [Pt, Pt] | undefined =
    i >= 0 ? [outline[i]!.at, outline[(i + 1) % outline.length]!.at] : partition && [partition.from, partition.to];
  if (!ends) return noWall(wall);
  const length = distance(...ends);
  if (!(at > 0 && at < length))
    return err(
      faultAt('wrong-value', ['site'], jobWords.notOnWall({ wall, at, length: Math.round(length * 64) / 64 })),
    );
  const point = add(ends[0], scale(unit(subtract(ends[1], ends[0])), at));
  const hung = rehang(job, (on) => {
    if (on.wall !== wall) return on;
    // the left end of a back face is the wall's far end: there the second part comes first
    if (on.face === 'back')
      return on.left < length - at ? { ...on, wall: id } : { ...on, left: on.left - (length - at) };
    return on.left < at ? on : { ...on, wall: id, left: on.left - at };
  });
  const site =
    i >= 0
      ? { ...hung.site, outline: outline.toSpliced(i + 1, 0, { ...outline[i]!, id, at: point }) }
      : {
          ...hung.site,
          partitions: partitions.flatMap((p) =>
            p.id === wall
              ? [
                  { ...p, to: point },
                  { ...p, id, from: point },
                ]
              : [p],
          ),
        };
  return ok({ ...hung, site });
};

/** A wall of the room and the one after it as one wall, where they run straight into each other. */
export const joinWalls = (job: Job, wall: Id): Result<Job, Fault> => {
  const { outline } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  if (i < 0) return noWall(wall);
  const [a, b, c] = [0, 1, 2].map((k) => outline[(i + k) % outline.length]!);
  const along = unit(subtract(c!.at, a!.at));
  if (Math.abs(cross(along, subtract(b!.at, a!.at))) > STRAIGHT_IN || outline.length <= 3)
    return err(faultAt('not-straight', ['site', 'outline'], jobWords.notStraight({ wall, next: b!.id })));
  const length = distance(a!.at, b!.at);
  const hung = rehang(job, (on) => (on.wall === b!.id ? { ...on, wall, left: on.left + length } : on));
  return ok({ ...hung, site: { ...hung.site, outline: outline.filter((corner) => corner.id !== b!.id) } });
};
