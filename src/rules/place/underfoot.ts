import { type Interval, overlap, slabProjection } from '../../geometry/freeIntervals';
import { SAME_PLACE_IN } from '../../geometry/polygon';
import { solids } from '../../job/site';
import { byId } from '../../units/order';
import type { In, Pt } from '../../units/types';
import type { FactsInYear } from '../rule';
import type { Standing } from './placeReading';
import { onFace } from './surroundings';

/** Is a plan outline over, or under, the panel's working space? */
const inPlanOfSpace = ({ face, answers }: Standing, outline: readonly Pt[]): boolean => {
  const { along, out } = answers[0].workingSpace;
  return slabProjection(outline.map(onFace(face)), ...out).some((i) => overlap(i, along));
};

/** Pits in the floor of the working space: things that reach below it and do not stand out of it. */
export const pitsIn = (facts: FactsInYear, place: Standing) =>
  solids(facts.job.site, 'after', facts.option.moves).filter(
    (s) =>
      s.fromZ < place.floor - SAME_PLACE_IN && s.toZ <= place.floor + SAME_PLACE_IN && inPlanOfSpace(place, s.outline),
  );

/** The largest step between the floor one stands on and any other floor inside the working space, in; 0 = level. */
export const stepIn = ({ job }: FactsInYear, place: Standing): In =>
  Math.max(
    0,
    ...job.site.areas
      .filter((area) => inPlanOfSpace(place, area.outline))
      .map((area) => Math.abs(area.state.after.floorRise - place.floor)),
  );

/** What stands in the working space today and will be gone: it bars nothing then, and everything until then. */
export const goneLater = (facts: FactsInYear, place: Standing) => {
  const { site } = facts.job;
  const z: Interval = [place.floor, place.floor + place.answers[0].workingSpace.z[1]];
  const later = new Set(solids(site, 'after', facts.option.moves).map((s) => s.id));
  return byId(
    solids(site, 'now', facts.option.moves).filter(
      (s) =>
        s.blocksSpace &&
        !s.stored &&
        !later.has(s.id) &&
        overlap([s.fromZ, s.toZ], z) &&
        inPlanOfSpace(place, s.outline),
    ),
  );
};
