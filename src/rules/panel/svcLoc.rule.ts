import { SERVICE_DISCONNECT_PLACE } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { cannotBeTold, doesNotApply, holds, type Rule, stops } from '../rule';
import { isServiceWork, newIsService, rolePaths, theNewPanel } from './serviceReading';

/** The service disconnect outdoors, or inside nearest to where the conductors enter: a service panel is never simply moved. */
export const svcLoc: Rule = {
  id: 'SVC-LOC',
  subjects: theNewPanel,
  check: (facts) => {
    const { option, edition } = facts;
    const outdoorsOnly = SERVICE_DISCONNECT_PLACE[edition] === 'outdoors';
    const remedies = [{ say: say.emdiscRemedy(), cents: null, work: [] }];
    const { serviceDisconnect } = option;
    if (serviceDisconnect) {
      if (serviceDisconnect.on === 'outdoors') return holds(say.svcLocOutdoors());
      return outdoorsOnly
        ? stops(say.svcLocNotOutdoors(), { remedies })
        : cannotBeTold(say.svcLocIndoors(), say.svcLocLook(), []);
    }
    const service = newIsService(facts);
    if (!isKnown(service)) {
      if (isServiceWork(facts) === false) return doesNotApply();
      return cannotBeTold(say.roleUnknown({ what: say.atPanel() }), say.roleLook(), rolePaths(facts));
    }
    if (!service) return doesNotApply();
    if (outdoorsOnly) return stops(say.svcLocNotOutdoors(), { remedies });
    return option.kind === 'relocate' ? stops(say.svcLocMoved(), { remedies }) : holds(say.svcLocStays());
  },
};
