import { answerOf, quoted } from '../../job/questions';
import { EMERGENCY_DISCONNECT } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { isServiceWork, rolePaths, theNewPanel } from './serviceReading';

const AMENDMENT = 'emergencyDisconnect';

/** An emergency disconnect outdoors where service equipment is replaced; a subpanel alone brings none. */
export const emdisc: Rule = {
  id: 'EMDISC',
  subjects: theNewPanel,
  check: (facts) => {
    const { option, edition } = facts;
    const service = isServiceWork(facts);
    const asked = EMERGENCY_DISCONNECT[edition];
    if (service === false || asked === 'none') return doesNotApply();
    const remedies = [{ say: say.emdiscRemedy(), cents: null, work: [] }];
    if (option.serviceDisconnect?.on === 'outdoors') return isKnown(service) ? holds(say.emdiscDone()) : doesNotApply();
    if (!isKnown(service))
      return cannotBeTold(say.roleUnknown({ what: say.atPanel() }), say.roleLook(), rolePaths(facts));
    const local = answerOf(facts.job, AMENDMENT)?.answer;
    const amendment = quoted(facts.job, AMENDMENT);
    if (local === 'no') return holds(say.emdiscLocal(), { amendment });
    if (local !== 'yes' && asked === 'text silent on replacement')
      return cannotBeTold(say.emdiscAsk(), say.emdiscLook(), [], { remedies });
    return stops(option.serviceDisconnect ? say.emdiscIndoors() : say.emdiscNone(), { remedies, amendment });
  },
};
