import type { Leg, LegBy } from '../facts/result';
import type { In } from '../units/types';
import { distance3 } from './cutLength';

/** 334.30: not over 4-1/2 ft apart and within 12 in of each box, cabinet or fitting. */
const APART_IN = 54;
const FROM_ENTRY_IN = 12;

/** Through bored holes and in sleeves the cable is held by what it runs in (334.30(A); sleeves carry their own straps). */
const HELD: ReadonlySet<LegBy> = new Set(['through joists', 'sleeve', 'raceway']);
const inside = (leg: Leg) => leg.by === 'inside box' || leg.by === 'inside panel';

const between = (length: In): number => Math.max(0, Math.ceil(length / APART_IN - 1e-9) - 1);

/** Staples on a stretch that hangs on staples alone; an end not at an entry is held by a hole or a sleeve. */
export const staplesOn = (length: In, startsAtEntry: boolean, endsAtEntry: boolean): number => {
  if (length <= 0) return 0;
  if (startsAtEntry && endsAtEntry)
    return length <= 2 * FROM_ENTRY_IN ? 1 : 2 + between(length - 2 * FROM_ENTRY_IN);
  if (startsAtEntry || endsAtEntry) return length <= FROM_ENTRY_IN ? 0 : 1 + between(length - FROM_ENTRY_IN);
  return between(length);
};

/**
 * Staples of one continuous piece of cable along its legs. `startsAtEntry`: it begins at a box or can (an extension)
 * and not at a staple that stays (a cable drawn back to its pivot). Every piece ends at an entry.
 */
export const supportsOf = (legs: readonly Leg[], startsAtEntry: boolean): number => {
  const outside = legs.filter((leg) => !inside(leg));
  let count = 0;
  let stretch = 0;
  let stretchStartsAtEntry = startsAtEntry;
  outside.forEach((leg, i) => {
    const last = i === outside.length - 1;
    const atEntry = (i === 0 && startsAtEntry) || last;
    if (HELD.has(leg.by)) {
      count += staplesOn(stretch, stretchStartsAtEntry, false);
      stretch = 0;
      stretchStartsAtEntry = false;
      if (atEntry && leg.by === 'through joists') count += 1;
      return;
    }
    stretch += distance3(leg.from, leg.to);
    if (last) count += staplesOn(stretch, stretchStartsAtEntry, true);
  });
  return count;
};
