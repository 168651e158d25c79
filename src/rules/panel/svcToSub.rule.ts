import { FEEDER_WIRES } from '../../standards/editionsService';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, type Rule, stops } from '../rule';
import { newIsService, oldIsService, rolePaths, theNewPanel } from './serviceReading';

/** An old service panel that becomes a subpanel: new disconnect ahead of it, four-wire feeder, bond out. */
export const svcToSub: Rule = {
  id: 'SVC-TO-SUB',
  subjects: theNewPanel,
  check: (facts) => {
    const { option, job, edition, feeder } = facts;
    const { panel, path } = newPanel(facts);
    const old = oldIsService(facts);
    const service = newIsService(facts);
    if (old === false || service === true) return doesNotApply();
    if (!isKnown(old) || !isKnown(service)) return cannotBeTold(say.toSubUnknown(), say.roleLook(), rolePaths(facts));
    const remedies = [{ say: say.emdiscRemedy(), cents: null, work: [] }];
    if (option.serviceDisconnect === null) return stops(say.toSubNoDisconnect(), { remedies });
    if (panel.bonded === true) return stops(say.toSubBonded(), { look: say.bondLook() });
    const wires = feeder.way === 'replaced' ? FEEDER_WIRES[edition] : job.feeder.wires;
    if (isKnown(wires) && wires < FEEDER_WIRES[edition]) return stops(say.toSubThreeWire(), { remedies });
    const waits = [...(isKnown(wires) ? [] : ['/feeder/wires']), ...(isKnown(panel.bonded) ? [] : [path('bonded')])];
    if (waits.length > 0) return cannotBeTold(say.bondUnknown(), say.bondLook(), waits);
    return extraWork(say.toSubHolds());
  },
};
