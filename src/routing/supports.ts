import type { Leg, LegBy } from '../facts/result';
import type { Cable } from '../standards/cable';
import { supportRule } from '../standards/supports';
import type { In } from '../units/types';
import { distance3 } from './cutLength';

/** Through bored holes and in sleeves the cable is held by what it runs in (334.30(A); sleeves carry their own straps). */
const HELD: ReadonlySet<LegBy> = new Set(['through joists', 'sleeve', 'raceway']);
const inside = (leg: Leg) => leg.by === 'inside box' || leg.by === 'inside panel';

/**
 * Staples on a stretch that hangs on staples alone (334.30 and its like by kind: so far apart, so near to each entry);
 * an end not at an entry is held by a hole or a sleeve.
 */
export const staplesOn = (
  length: In,
  startsAtEntry: boolean,
  endsAtEntry: boolean,
  kind: Cable['kind'] = 'NM',
): number => {
  const { apartIn, fromEntryIn } = supportRule(kind);
  const between = (gap: In): number => Math.max(0, Math.ceil(gap / apartIn - 1e-9) - 1);
  if (length <= 0) return 0;
  if (startsAtEntry && endsAtEntry) return length <= 2 * fromEntryIn ? 1 : 2 + between(length - 2 * fromEntryIn);
  if (startsAtEntry || endsAtEntry) return length <= fromEntryIn ? 0 : 1 + between(length - fromEntryIn);
  return between(length);
};

/**
 * Staples of one continuous piece of cable along its legs. `startsAtEntry`: it begins at a box or can (an extension)
 * and not at a staple that stays (a cable drawn back to its pivot). Every piece ends at an entry.
 */
export const supportsOf = (legs: readonly Leg[], startsAtEntry: boolean, kind: Cable['kind'] = 'NM'): number => {
  const outside = legs.filter((leg) => !inside(leg));
  let count = 0;
  let stretch = 0;
  let stretchStartsAtEntry = startsAtEntry;
  outside.forEach((leg, i) => {
    const last = i === outside.length - 1;
    const atEntry = (i === 0 && startsAtEntry) || last;
    if (HELD.has(leg.by)) {
      count += staplesOn(stretch, stretchStartsAtEntry, false, kind);
      stretch = 0;
      stretchStartsAtEntry = false;
      if (atEntry && leg.by === 'through joists') count += 1;
      return;
    }
    stretch += distance3(leg.from, leg.to);
    if (last) count += staplesOn(stretch, stretchStartsAtEntry, true, kind);
  });
  return count;
};
