import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { theNewPanel } from '../panel/serviceReading';
import { cannotBeTold, extraWork, holds, type Rule } from '../rule';

/** Light at the panel that a hand can switch. */
export const wsLight: Rule = {
  id: 'WS-LIGHT',
  subjects: theNewPanel,
  check: ({ job }) => {
    const { panelLit } = job.house;
    if (!isKnown(panelLit)) return cannotBeTold(say.litUnknown(), say.litLook(), ['/house/panelLit']);
    return panelLit
      ? holds(say.litYes())
      : extraWork(say.litNo(), {
          cure: [{ item: 'light', quantity: 1, homeRuns: [], rule: 'WS-LIGHT', alternate: null }],
        });
  },
};
