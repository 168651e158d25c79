import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { homeRunById, pathTo } from '../reading';
import { cannotBeTold, doesNotApply, type Rule, stops } from '../rule';
import { homeRunIds } from './cableReading';

/** Knob-and-tube is left as it is or replaced back to a box where it ends: its presence asks for a visit first. */
export const knobTube: Rule = {
  id: 'KNOB-TUBE',
  subjects: homeRunIds,
  check: ({ job }, subject) => {
    const { kind } = homeRunById(job, subject).cable;
    if (!isKnown(kind))
      return cannotBeTold(say.knobUnknown(), say.knobLook(), [pathTo(job, 'homeRuns', subject, 'cable', 'kind')]);
    return kind === 'knob-and-tube' ? stops(say.knob(), { look: say.knobLook() }) : doesNotApply();
  },
};
