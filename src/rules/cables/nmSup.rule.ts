import type { Leg } from '../../facts/result';
import { HELD_BY_ITSELF } from '../../standards/editionsCables';
import { supportRule } from '../../standards/supports';
import { cableWords as say } from '../../words/en/rulesCables';
import { laidCable } from '../reading';
import { doesNotApply, holds, type Rule, stops } from '../rule';
import { homeRunIds, laid, legLength } from './cableReading';

/** Lengths of the stretches that hang on staples alone. */
const stretches = (legs: readonly Leg[]): number[] => {
  const lengths: number[] = [];
  let open = false;
  for (const leg of legs) {
    if (HELD_BY_ITSELF.includes(leg.by)) open = false;
    else if (open) lengths.push(lengths.pop()! + legLength(leg));
    else {
      lengths.push(legLength(leg));
      open = true;
    }
  }
  return lengths;
};

/** Enough supports: between the two ends of every stapled stretch no gap is over the limit. The first and last staple come on top. */
export const nmSup: Rule = {
  id: 'NM-SUP',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const found = laid(facts, subject);
    if (!found) return doesNotApply();
    const { apartIn } = supportRule(laidCable(facts.job, found.run).kind);
    const gaps = stretches(found.legs).map((length) => Math.max(0, Math.ceil(length / apartIn) - 1));
    const least = gaps.reduce((sum, n) => sum + n, 0);
    if (least === 0) return doesNotApply();
    const count = found.run.supports;
    const detail = { measured: count, required: least, unit: 'supports' };
    return count >= least
      ? holds(say.supportHolds({ count }), detail)
      : stops(say.supportFails({ count, least }), {
          ...detail,
          remedies: [{ say: say.supportRemedy(), cents: null, work: [] }],
        });
  },
};
