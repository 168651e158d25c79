import { MARKED_COLUMN } from '../../standards/editionsCables';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { homeRunById, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { homeRunIds } from './cableReading';

/** Old cable kept in use: what is printed on its jacket decides where adjustment starts. */
export const nmPrint: Rule = {
  id: 'NM-PRINT',
  subjects: homeRunIds,
  check: (facts, subject) => {
    const run = runOf(facts, subject);
    if (run?.way !== 'reuse' && run?.way !== 'through raceway') return doesNotApply();
    const { insulation } = homeRunById(facts.job, subject).cable;
    if (!isKnown(insulation))
      return cannotBeTold(say.printUnknown(), say.printLook(), [
        pathTo(facts.job, 'homeRuns', subject, 'cable', 'insulation'),
      ]);
    return holds(insulation === MARKED_COLUMN ? say.printMarked() : say.printOld(), {
      measured: insulation,
      unit: '°C',
    });
  },
};
