import type { Cable, CableKind } from '../standards/cable';
import { insulatedConductors } from '../standards/cableDimensions';
import { compareSizes, isSize } from '../standards/sizes';
import { CABLE_TO_SUPPORT_IN, supportRule, UNDERSIDE } from '../standards/supports';
import type { Edition, In, U } from '../units/types';
import { EDITIONS } from '../units/types';

/** Staples of a run of cable between two entries, nothing else holding it: one within reach of each, then no gap over the limit. The same in every edition. */
export const supportCount = (lengthIn: In, kind: U<CableKind> = 'NM'): number => {
  const { apartIn, fromEntryIn } = supportRule(kind);
  if (lengthIn <= 0) return 0;
  if (lengthIn <= 2 * fromEntryIn) return 1;
  return 1 + Math.ceil((lengthIn - 2 * fromEntryIn) / apartIn - 1e-9);
};

/** Most cable between an entry and its first support, in; null = no cap. Edition unknown: the strictest. */
export const cableToSupportIn = (edition: U<Edition>): In | null => {
  const caps = (edition === 'unknown' ? EDITIONS : [edition]).flatMap((e) => CABLE_TO_SUPPORT_IN[e] ?? []);
  return caps.length === 0 ? null : Math.min(...caps);
};

/**
 * May the cable cross the lower edges of joists of an unfinished basement without holes or a board (334.15(C))? Armored
 * and metal-clad cable may, held at every joist: see `heldAtEveryJoist`. Three conductors and more follow the three.
 */
export const canRunOnUndersides = (cable: Cable): U<boolean> => {
  switch (cable.kind) {
    case 'AC':
    case 'MC':
      return true;
    case 'knob-and-tube':
    case 'conductors in raceway':
      return false;
    case 'unknown':
      return 'unknown';
    default: {
      if (!isSize(cable.size)) return 'unknown';
      const three = compareSizes(cable.size, UNDERSIDE.threeConductorsLeastAwg) >= 0;
      const two = compareSizes(cable.size, UNDERSIDE.twoConductorsLeastAwg) >= 0;
      if (two === three) return two;
      const count = insulatedConductors(cable);
      return count === undefined ? 'unknown' : count >= 3;
    }
  }
};

/** On joist undersides armored and metal-clad cable is held at every joist (320.15, 330.15). */
export const heldAtEveryJoist = (kind: U<CableKind>): boolean => kind === 'AC' || kind === 'MC';
