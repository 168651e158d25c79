import type { Place } from '../../facts/result';
import { compareText } from '../../units/order';

/** A place of the map by name: wall, side, left edge, height, which way up. */
export const placeKey = ({ on, upright }: Pick<Place, 'on' | 'upright'>): string =>
  [on.wall, on.face, on.left, on.bottom, upright ? 'up' : 'down'].join(' ');

const GRADES: readonly Place['grade'][] = ['final', 'live', 'splices only', null];

/** Cheaper first; of equally cheap ones fewer with AFCI, fewer splices, then by name, so that no order of a list matters. */
export const cheaper = (a: Place, b: Place): number =>
  (a.cents ?? 0) - (b.cents ?? 0) ||
  (a.afciAdded ?? 0) - (b.afciAdded ?? 0) ||
  (a.conductorsSpliced ?? 0) - (b.conductorsSpliced ?? 0) ||
  Number(b.upright) - Number(a.upright) ||
  compareText(placeKey(a), placeKey(b));

const open = (places: readonly Place[], grades: readonly Place['grade'][]): Place[] =>
  places.filter((p) => p.clear && p.cents !== null && grades.includes(p.grade)).sort(cheaper);

/** Upside down is named only where it is cheaper than upright at the very place. */
const worthNaming = (places: readonly Place[]): Place[] => {
  const upright = new Map(places.filter((p) => p.upright && p.clear).map((p) => [placeKey(p), p.cents]));
  return places.filter((p) => {
    const other = upright.get(placeKey({ on: p.on, upright: true }));
    return p.upright || other === undefined || other === null || (p.cents ?? 0) < other;
  });
};

/** Places where the panel may go, best first: those planned most closely before the others. */
export const ranked = (places: readonly Place[]): Place[] => {
  const worth = worthNaming(places);
  return GRADES.flatMap((grade) => open(worth, [grade]));
};

/** The position offered; undefined while none has been planned, or where there is none. */
export const offered = (places: readonly Place[]): Place | undefined =>
  open(worthNaming(places), ['final'])[0] ?? open(worthNaming(places), ['live'])[0];
