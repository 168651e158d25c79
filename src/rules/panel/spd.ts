import type { Work } from '../../facts/work';
import { quoted } from '../../job/questions';
import type { RuleId } from '../../standards/sections';
import { isKnown, type U } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type FactsInYear, holds, type Says } from '../rule';
import { rolePaths } from './serviceReading';

const AMENDMENT = 'spdInsideHouse';
const SPD = 'SPD';
/** The id of the alternate a surge device is: what a rule requires of it cannot be declined. */
export const SPD_ALTERNATE = 'spd';

/** A surge protective device where `applies`: there already, excused by a local rule, or priced into the plan. */
export const surge = (facts: FactsInYear, rule: RuleId, applies: U<boolean>, sentence: string): Says => {
  if (applies === false) return doesNotApply();
  const { panel, path } = newPanel(facts);
  if (!isKnown(applies))
    return cannotBeTold(say.roleUnknown({ what: say.atPanel() }), say.roleLook(), [
      ...rolePaths(facts),
      ...(isKnown(panel.role) ? [] : [path('role')]),
    ]);
  const local = facts.job.code.amendments[AMENDMENT];
  if (local === false || local === 'no') return holds(say.spdLocal(), { amendment: quoted(facts.job, AMENDMENT) });
  if (panel.attached.some((a) => a.kind === SPD)) return holds(say.spdDone());
  const cure: Work[] = [{ item: 'spd', quantity: 1, homeRuns: [], rule, alternate: SPD_ALTERNATE }];
  return extraWork(sentence, { cure, amendment: quoted(facts.job, AMENDMENT) });
};
