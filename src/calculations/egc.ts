import type { Metal } from '../standards/cable';
import { EGC_TABLE, EGC_UPSIZE_RULE, egcSize } from '../standards/grounding';
import { circularMils, sizeOfMils } from '../standards/resistance';
import { compareSizes, isSize } from '../standards/sizes';
import { BEYOND, cited, type Looked } from '../standards/source';
import type { Edition } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import type { Steps } from './carrying';
import { tidy } from './refuse';

/** Circular mils of the circuit's conductors over those that would have done; 1 where nothing was enlarged. */
export const upsizeRatio = (awg: string, upsizedFrom: string | null): Looked<number> => {
  if (upsizedFrom === null) return 1;
  const [now, before] = [circularMils(awg), circularMils(upsizedFrom)];
  return now === BEYOND || before === BEYOND ? BEYOND : Math.max(1, now / before);
};

/**
 * Smallest equipment grounding conductor: Table 250.122 by the device, enlarged in the ratio of circular mils where the
 * ungrounded conductors were (250.122(B)), never larger than they are (250.122(A)).
 */
export const egcFor = (
  metal: Metal,
  breakerAmps: number,
  awg: string,
  upsizedFrom: string | null,
  edition: Edition,
): { readonly size: Looked<string>; readonly steps: Steps } => {
  const table = egcSize(metal, breakerAmps);
  const word = metal === 'Cu' ? 'copper' : 'aluminum';
  const first = {
    say: say.egcTable({ metal: word, amps: breakerAmps }),
    value: table,
    unit: 'AWG',
    section: cited(EGC_TABLE[edition]),
  };
  const ratio = upsizeRatio(awg, upsizedFrom);
  if (table === BEYOND || ratio === 1) return { size: table, steps: [first] };
  const mils = circularMils(table);
  const enlarged = ratio === BEYOND || mils === BEYOND ? BEYOND : sizeOfMils(mils * ratio);
  const size = enlarged !== BEYOND && isSize(awg) && compareSizes(enlarged, awg) > 0 ? awg : enlarged;
  const section = cited(EGC_UPSIZE_RULE[edition]);
  const egcRatio = say.egcRatio({ now: Number(circularMils(awg)), before: Number(circularMils(upsizedFrom ?? awg)) });
  return {
    size,
    steps: [
      first,
      { say: egcRatio, value: ratio === BEYOND ? ratio : tidy(ratio), unit: '', section },
      {
        say: say.egcUpsized({ metal: word, mils: Number(mils), ratio: Number(ratio) }),
        value: size,
        unit: 'AWG',
        section,
      },
    ],
  };
};
