import { isKnown } from '../../units/types';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { cannotBeTold, doesNotApply, failsNote, holds, type Rule } from '../rule';
import { rowIds } from './cableReading';
import { isShortStretch, wholeLengthPaths } from './shortStretch';

/** Where the contractor uses the exception: which rows are short enough for it. NM-BUNDLE goes by it. */
export const tenPercent: Rule = {
  id: 'TEN-PERCENT',
  subjects: rowIds,
  check: (facts, subject) => {
    const row = facts.rows.find((r) => r.id === subject)!;
    if (!facts.job.practice.tenPercentException || row.homeRuns.length <= 1) return doesNotApply();
    const short = isShortStretch(facts, row);
    const measure = { measured: row.length, unit: 'in' };
    if (!isKnown(short))
      return cannotBeTold(say.shortUnknown({ limit: null }), say.shortLook(), wholeLengthPaths(facts, row), measure);
    return short ? holds(say.tenHolds(), measure) : failsNote(say.tenLonger(), { ...measure, look: say.shortLook() });
  },
};
