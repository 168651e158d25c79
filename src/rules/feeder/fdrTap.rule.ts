import { tapHolds } from '../../calculations/feederTap';
import { TAP_RULES } from '../../standards/taps';
import { isKnown } from '../../units/types';
import { serviceWords as say } from '../../words/en/rulesService';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, type Rule } from '../rule';
import { checkCable, feederApplies, feederCables, theFeeder } from './feederReading';
import { INCHES_A_FOOT, pathLength } from './feederWay';

/**
 * A feeder smaller than its upstream device may still be a tap, if it is short and ends in a main it carries. FDR-SIZE
 * and FDR-2AL put in a smaller breaker; whether the tap stands is for the inspector, who sees the rest of the feeder.
 */
export const fdrTap: Rule = {
  id: 'FDR-TAP',
  subjects: theFeeder,
  check: (facts) => {
    const { job, feeder } = facts;
    const { mainAmps } = newPanel(facts).panel;
    const ahead = feeder.breakerAmps;
    if (feederApplies(facts) !== true || ahead === null || mainAmps === null) return doesNotApply();
    const least = feederCables(facts).map((cable) => checkCable(facts, cable, ahead, 0));
    const small = least.find((answer) => answer?.outcome === 'fails');
    if (!small) return doesNotApply();
    // Only the part in this room is drawn: the whole is longer.
    const feet = pathLength(job.feeder.path) / INCHES_A_FOOT;
    const loadAmps = isKnown(facts.load.amps) ? facts.load.amps : facts.load.least;
    const rule = TAP_RULES.find((tap) => feet <= tap.feet);
    const endAmps = isKnown(mainAmps) ? mainAmps : loadAmps;
    if (!rule || !tapHolds({ ahead, feet, loadAmps, endAmps }, small.ampacity)) return doesNotApply();
    return cannotBeTold(
      say.tapAsk({ feet: rule.feet, amps: small.ampacity, ahead }),
      say.tapLook(),
      isKnown(mainAmps) ? [] : [newPanel(facts).path('mainAmps')],
      { measured: small.ampacity, required: ahead / rule.part, unit: 'A' },
    );
  },
};
