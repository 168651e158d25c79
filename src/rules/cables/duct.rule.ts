import { insideOrOn } from '../../geometry/polygon';
import { cableWords as say } from '../../words/en/rulesCables';
import { doesNotApply, type FactsInYear, holds, type Rule, stops } from '../rule';
import { boxIds, homeRunIds, inPlanOf, laid, passes } from './cableReading';

const returns = ({ job }: FactsInYear) => job.site.bays.filter((b) => b.state === 'panned return');

const AMONG_JOISTS: readonly string[] = ['joist side', 'through joists'];

/** A joist bay closed off as a return duct: cable crosses it at right angles only, and no box is in it. */
export const duct: Rule = {
  id: 'DUCT',
  subjects: (facts) => [...homeRunIds(facts), ...boxIds(facts)],
  check: (facts, subject) => {
    const remedies = [{ say: say.ductRemedy(), cents: null, work: [] }];
    const box = facts.boxes.find((b) => b.id === subject);
    if (box)
      return box.on === 'joist' && returns(facts).some((b) => insideOrOn(inPlanOf(box.at), b.outline))
        ? stops(say.ductBox(), { remedies })
        : doesNotApply();
    const legs = laid(facts, subject)?.legs.filter(
      (leg) => AMONG_JOISTS.includes(leg.by) && returns(facts).some((b) => passes(leg, b.outline)),
    );
    if (!legs || legs.length === 0) return doesNotApply();
    return legs.some((leg) => leg.by === 'joist side') ? stops(say.ductFails(), { remedies }) : holds(say.ductHolds());
  },
};
