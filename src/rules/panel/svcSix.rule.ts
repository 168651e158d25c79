import { SERVICE_MAINS_TOGETHER } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { serviceWords as say } from '../../words/en/rulesService';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { newIsService, rolePaths, theNewPanel } from './serviceReading';

/** One main for the service: panels of six mains or with a split bus are not put in again like for like. */
export const svcSix: Rule = {
  id: 'SVC-SIX',
  subjects: theNewPanel,
  check: (facts) => {
    const { panel, path } = newPanel(facts);
    const service = newIsService(facts);
    if (facts.option.serviceDisconnect !== null || service === false) return doesNotApply();
    if (!isKnown(service)) return cannotBeTold(say.sixUnknown(), say.sixLook(), rolePaths(facts));
    if (!isKnown(panel.mainAmps)) return cannotBeTold(say.sixUnknown(), say.sixLook(), [path('mainAmps')]);
    if (panel.mainAmps !== null) return holds(say.sixOne({ amps: panel.mainAmps }));
    return SERVICE_MAINS_TOGETHER[facts.edition] === 'up to six'
      ? cannotBeTold(say.sixCount(), say.sixLook(), [])
      : stops(say.sixFails(), { remedies: [{ say: say.sixRemedy(), cents: null, work: [] }] });
  },
};
