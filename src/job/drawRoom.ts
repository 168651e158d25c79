import { add, distance, scale, subtract, unit } from '../geometry/vector';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import type { Id, In, Pt } from '../units/types';
import { jobWords } from '../words/en/job';
import { movePartition, moveWall } from './moveWalls';
import { faultAt } from './pointer';
import type { Job, Site } from './schema';

const UNKNOWN_FACE = { build: 'unknown', insulated: 'unknown' } as const;

/** The room's walls from its corners; a wall that was there under the same id stays built as it is, a new one is not known. */
export const drawRoom = (
  outline: Site['outline'],
  walls: readonly { readonly id: Id; readonly at: Pt }[],
): Site['outline'] =>
  walls.map(({ id, at }) => ({
    face: { now: UNKNOWN_FACE, after: UNKNOWN_FACE },
    studSpacing: 'unknown',
    thickness: 'unknown',
    ...outline.find((c) => c.id === id),
    id,
    at,
  }));

/** A wall made longer or shorter at the end away from its start, with everything on the walls that move. */
export const wallLength = (job: Job, wall: Id, length: In): Result<Job, Fault> => {
  if (!(length > 0)) return err(faultAt('wrong-value', ['site'], jobWords.noLength({ wall })));
  const { outline, partitions } = job.site;
  const i = outline.findIndex((c) => c.id === wall);
  const partition = partitions.find((p) => p.id === wall);
  const changed =
    i >= 0
      ? moveWall(
          job,
          outline[(i + 1) % outline.length]!.id,
          longer(outline[i]!.at, outline[(i + 1) % outline.length]!.at, length),
        )
      : partition &&
        movePartition(job, wall, partition.from, add(partition.to, longer(partition.from, partition.to, length)));
  return changed
    ? ok(changed)
    : err(faultAt('no-such-record', ['site', 'outline'], jobWords.dangling({ id: wall, what: jobWords.what.wall })));
};

/** From the end that is to the end that shall be. */
const longer = (from: Pt, to: Pt, length: In): Pt => scale(unit(subtract(to, from)), length - distance(from, to));
