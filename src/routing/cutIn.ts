import type { CableGroup, HomeRun, Tails } from '../job/schema';
import type { In, U } from '../units/types';
import { isKnown } from '../units/types';

/** The cable is cut this far downstream of the box wall, so that there is cable to strip and join. Common practice, no source. */
export const BACK_FROM_CUT_IN = 12;
/** And this far upstream it must come off its staples, to turn into the box (bend of five diameters, 334.24). Common practice. */
export const FREED_UPSTREAM_IN = 12;
/** Sheath that must come into the box: 314.17(B)/(C) ask for 1/4 in. */
const SHEATH_IN_BOX_IN = 1 / 4;

const NOT_BENT = new Set(['brittle', 'cloth']);
const NOT_DRAWN = new Set(['brittle', 'cloth', 'damaged', 'overheated']);
/** Cloth or brittle insulation is not bent, so not turned into a box either. */
export const mayBend = (homeRun: Pick<HomeRun, 'condition'>): boolean =>
  !homeRun.condition.some((c) => NOT_BENT.has(c));
/** A damaged or overheated end is cut off, never drawn back and used again. */
export const mayBeReused = (homeRun: Pick<HomeRun, 'condition'>): boolean =>
  !homeRun.condition.some((c) => NOT_DRAWN.has(c));

/** The shortest free conductor in the old can that a joint may count on; unknown counts as none. */
export const shortestTail = (tails: U<Tails>, cable: HomeRun['cable']): In => {
  if (!isKnown(tails)) return 0;
  return Math.min(tails.hot, cable.neutral === 'none' ? tails.hot : tails.neutral);
};

/**
 * A cut-in: the old cable leaves its run at `leaves` inches from the old can, goes `spur` inches to the box wall, and is
 * cut `BACK_FROM_CUT_IN` beyond. Possible when everything from the cut to `FREED_UPSTREAM_IN` above the leaving point can
 * be got at; what would lie inside the old can is supplied by the free conductor there, but never the sheath.
 */
export const cutInFits = (
  v: { readonly leaves: In; readonly spur: In; readonly tail: In },
  reachable: CableGroup['reachable'],
): boolean => {
  const cut = v.leaves - v.spur - BACK_FROM_CUT_IN;
  if (-cut > v.tail) return false;
  if (v.leaves - v.spur < SHEATH_IN_BOX_IN) return false;
  const from = Math.max(0, cut);
  return reachable.some(([a, b]) => a <= from && v.leaves + FREED_UPSTREAM_IN <= b);
};

/** Most the spur may be from a leaving point, inches; negative = no cut-in there. */
export const longestSpur = (leaves: In, tail: In, reachable: CableGroup['reachable']): In => {
  const stretch = reachable.find(([a, b]) => a <= leaves && leaves + FREED_UPSTREAM_IN <= b);
  if (!stretch) return -1;
  const byCut = stretch[0] <= 0 ? leaves + tail - BACK_FROM_CUT_IN : leaves - BACK_FROM_CUT_IN - stretch[0];
  return Math.min(byCut, leaves - SHEATH_IN_BOX_IN);
};
