import { wireBendingSpace } from '../../standards/wireBending';
import { isKnown } from '../../units/types';
import { wiringWords as say } from '../../words/en/rulesWiring';
import { feederCables } from '../feeder/feederReading';
import { cannotBeTold, type Rule, reminder } from '../rule';
import { isFeederFed, theNewPanel } from './serviceReading';

/** Room to bend the conductors that feed the panel, from their terminals to the opposite wall: told for the cabinet that is bought. */
export const wireBend: Rule = {
  id: 'WIRE-BEND',
  subjects: theNewPanel,
  check: (facts) => {
    const service = isFeederFed(facts) === false;
    const { size } = feederCables(facts).at(-1)!;
    const least = isKnown(size) ? wireBendingSpace(size, 1, 'opposite') : undefined;
    return isKnown(size) && least !== undefined
      ? reminder(say.bend({ size, inches: least, service }), say.bendLook(), { required: least, unit: 'in' })
      : cannotBeTold(say.bendUnknown({ service }), say.bendLook(), isKnown(size) ? [] : ['/feeder/cable/size']);
  },
};
