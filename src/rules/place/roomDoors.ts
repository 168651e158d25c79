import { overlap, slabProjection } from '../../geometry/freeIntervals';
import { add, scale } from '../../geometry/vector';
import type { Opening } from '../../job/schema';
import { faceOf, pointOnFace, wallFaces } from '../../job/site';
import { byId } from '../../units/order';
import { isKnown, type Pt } from '../../units/types';
import { sitePath } from '../reading';
import type { FactsInYear } from '../rule';
import type { Standing } from './placeReading';
import { onFace } from './surroundings';

/** The square a door leaf sweeps on one side of its wall. */
const swept = (facts: FactsInYear, door: Opening, side: 'front' | 'back'): Pt[] | null => {
  const face = faceOf(wallFaces(facts.job.site, 'after'), door.on);
  if (!face) return null;
  const toward = side === door.on.face ? face.into : scale(face.into, -1);
  const ends = [pointOnFace(face, door.on.left), pointOnFace(face, door.on.left + door.width)] as const;
  const far = ends.map((p) => add(p, scale(toward, door.width)));
  return [ends[0], ends[1], far[1]!, far[0]!];
};

/** The first room door whose leaf sweeps, or may sweep, over the working space; the code leaves that to the inspector. */
export const roomDoorsInto = (
  facts: FactsInYear,
  place: Standing,
): { readonly door: string; readonly waits: readonly string[] } | null => {
  const { along, out } = place.answers[0].workingSpace;
  const into = onFace(place.face);
  for (const door of byId(facts.job.site.openings)) {
    if (door.kind !== 'door' || !door.exists.after || door.swings === null) continue;
    const sides = isKnown(door.swings) ? [door.swings] : (['front', 'back'] as const);
    const hits = sides.some((side) => {
      const square = swept(facts, door, side);
      return square !== null && slabProjection(square.map(into), ...out).some((i) => overlap(i, along));
    });
    if (hits)
      return {
        door: door.id,
        waits: isKnown(door.swings) ? [] : [sitePath(facts.job, 'openings', door.id, 'swings')],
      };
  }
  return null;
};
