import { ampacity } from '../standards/ampacity';
import type { Metal } from '../standards/cable';
import { FEEDER_NEUTRAL_RULE } from '../standards/grounding';
import { NEUTRAL_RULE } from '../standards/loadDemand';
import { compareSizes, SIZES } from '../standards/sizes';
import { BEYOND, cited, type Looked } from '../standards/source';
import type { Edition } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import type { Worked } from './types';

/**
 * Smallest neutral of a feeder: enough for the load on it (220.61) in the column the ends and the method allow, and not
 * smaller than the equipment grounding conductor (215.2).
 */
export const feederNeutral = (
  metal: Metal,
  neutralAmps: number,
  column: 60 | 75,
  egc: Looked<string>,
  edition: Edition,
): { readonly size: Looked<string>; readonly steps: Worked['steps'] } => {
  const enough = SIZES.find((size) => {
    const amps = ampacity(metal, size, column);
    return amps !== BEYOND && amps >= neutralAmps;
  });
  const carries = enough ?? BEYOND;
  const first = {
    say: say.neutralCarries({ amps: neutralAmps, column }),
    value: carries,
    unit: 'AWG',
    section: cited(NEUTRAL_RULE[edition]),
  };
  if (carries === BEYOND || egc === BEYOND) return { size: BEYOND, steps: [first] };
  const size = compareSizes(carries, egc) < 0 ? egc : carries;
  const section = cited(FEEDER_NEUTRAL_RULE[edition]);
  return { size, steps: [first, { say: say.neutralNotBelow({ egc }), value: size, unit: 'AWG', section }] };
};
