import { overlap } from '../../geometry/freeIntervals';
import { enclosureOnFace } from '../../job/site';
import { EXTREMES } from '../../standards/editionsPlace';
import { byId, compareText } from '../../units/order';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { breakerPanels, sitePath } from '../reading';
import { type FactsInYear, holds, type Rule, stops } from '../rule';
import { cabinetsBeside } from './cabinets';
import { atPlace, namesOf, part, remediesFor, type Standing, shapeOf, waitsForMeasure } from './placeReading';
import { openingAlong } from './surroundings';

/** Doors and windows where the panel would hang; one whose sizes nobody measured may be so much larger, or less. */
const openingsUnder = ({ job }: FactsInYear, { panel, face }: Standing, larger: 1 | -1) => {
  const on = enclosureOnFace(panel);
  return byId(job.site.openings).filter((o) => {
    const by = isKnown(o.sizes) ? 0 : larger * EXTREMES.thing;
    const [from, to] = openingAlong(face, o);
    return (
      o.on.wall === panel.on.wall &&
      o.exists.after &&
      overlap([from - by, to + by], [on.left, on.right]) &&
      overlap([o.on.bottom - by, o.on.bottom + o.height + by], [on.bottom, on.top])
    );
  });
};

/** Cabinets that stay and claim the same piece of wall. */
const cabinetsUnder = (facts: FactsInYear, { panel }: Standing) => {
  const own = enclosureOnFace(panel);
  return cabinetsBeside(facts, panel).filter((e) => {
    const other = enclosureOnFace(e);
    return (
      overlap([other.left, other.right], [own.left, own.right]) &&
      overlap([other.bottom, other.top], [own.bottom, own.top])
    );
  });
};

/** Over and under the panel, in its own width and depth, no foreign pipe or duct; and the panel itself has its place. */
export const dedicated: Rule = {
  id: 'DEDICATED',
  subjects: breakerPanels,
  check: (facts, subject) =>
    atPlace(facts, subject, (place) => {
      const body = part(place, 'body');
      const above = part(place, 'above');
      const below = part(place, 'below');
      const openings = openingsUnder(facts, place, -1);
      const perhaps = openingsUnder(facts, place, 1);
      const cabinets = cabinetsUnder(facts, place);
      const shape = shapeOf(place, above.shape, 'top');
      if (body.outcome === 'fails' || openings.length > 0 || cabinets.length > 0) {
        const things = [
          ...openings.map((o) => say.anOpening({ kind: o.kind })),
          ...cabinets.map(() => say.aCabinet()),
          ...(body.intruders.length > 0 ? [namesOf(facts, body.intruders)] : []),
          ...(openings.length + cabinets.length + body.intruders.length === 0 ? [say.bodyEdge()] : []),
        ];
        return stops(say.bodyFails({ things: [...new Set(things)].sort(compareText).join(', ') }), {
          shape: shapeOf(place, body.shape),
          remedies: remediesFor(facts, body.intruders),
        });
      }
      const intruders = [above, below].flatMap((v) => (v.outcome === 'fails' ? v.intruders : []));
      if (intruders.length > 0) {
        return stops(say.zoneFails({ things: namesOf(facts, intruders) }), {
          measured: Math.max(...intruders.map((i) => i.byIn)),
          required: 0,
          unit: 'in',
          shape,
          remedies: remediesFor(facts, intruders),
        });
      }
      if (perhaps.length > 0 || [body, above, below].some((v) => v.outcome === 'cannot be told'))
        return waitsForMeasure(
          facts,
          place,
          perhaps.map((o) => sitePath(facts.job, 'openings', o.id, 'sizes')),
        );
      return holds(say.zoneHolds(), { measured: 0, required: 0, unit: 'in', shape });
    }),
};
