import { gecSize } from '../../standards/electrodeConductor';
import { isBeyond } from '../../standards/source';
import { isKnown } from '../../units/types';
import { panelWords } from '../../words/en/rulesPanel';
import { serviceWords as say } from '../../words/en/rulesService';
import { oldPanels, pathTo } from '../reading';
import { cannotBeTold, doesNotApply, extraWork, inThePlan, type Rule, reminder } from '../rule';
import { isServiceWork, theNewPanel } from './serviceReading';

/**
 * Electrode and bonding at the service. With a new disconnect the electrode conductor ends there, not in the old panel;
 * a relocation prices its way. Water and gas bonds and the intersystem terminal are a duty of the day.
 */
export const svcGround: Rule = {
  id: 'SVC-GROUND',
  subjects: theNewPanel,
  check: (facts) => {
    const { job, option } = facts;
    if (isServiceWork(facts) === false) return doesNotApply();
    const look = panelWords.svcGroundLook();
    const service = option.serviceDisconnect === null ? [] : oldPanels(facts).filter((e) => e.role !== 'feeder-fed');
    const landing = service.filter((e) => e.electrodeLandsHere !== false);
    if (landing.length === 0) return reminder(panelWords.svcGround(), look);
    const { size, metal } = job.feeder.cable;
    const gec = isKnown(size) && isKnown(metal) ? gecSize(metal, size) : null;
    const waits = [
      ...landing.flatMap((e) =>
        (['role', 'electrodeLandsHere'] as const).flatMap((key) =>
          isKnown(e[key]) ? [] : [pathTo(job, 'enclosures', e.id, key)],
        ),
      ),
      ...(['size', 'metal'] as const).flatMap((key) =>
        isKnown(job.feeder.cable[key]) ? [] : [`/feeder/cable/${key}`],
      ),
    ];
    if (waits.length > 0 || gec === null || isBeyond(gec)) return cannotBeTold(say.electrodeUnknown(), look, waits);
    const remedy = { say: option.kind === 'relocate' ? inThePlan().say : say.electrodeByHand(), cents: null, work: [] };
    return extraWork(say.electrodeMoves({ size: gec }), { look, remedies: [remedy] });
  },
};
