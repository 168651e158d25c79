import { useMemo } from 'react';
import type { PlacesByFace } from '../../drawings/drawPlaces';
import type { Job, Option } from '../../job/schema';
import { wallFaces } from '../../job/site';
import { placesOn } from '../../plan/map/clearPlaces';

/** Where the option's panel can go along every wall: found again when its size, height or surroundings change. */
export const usePlaces = (job: Job, option: Option): PlacesByFace => {
  const { size, mount, busAmps, doorHinge, on } = option.enclosure;
  const { kind, moves } = option;
  // biome-ignore lint/correctness/useExhaustiveDependencies: where the panel hangs along a wall does not matter
  return useMemo(
    () => new Map(wallFaces(job.site, 'after').map((face) => [face.id, placesOn(job, option, face)])),
    [job, size, mount, busAmps, doorHinge, on.bottom, kind, moves],
  );
};
