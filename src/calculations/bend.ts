import { bendLimit } from '../standards/bending';
import type { Cable } from '../standards/cable';
import { cableDiameter, outsideSize } from '../standards/cableDimensions';
import { cableFromName } from '../standards/cableFromName';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkNumberOrNull, checkObject, inputFault } from './inputChecks';
import { tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import { step } from './worked';

/** Least inner radius a cable may be bent to, in; undefined where its diameter is not known or its kind has no such limit. */
export const minBendRadius = (cable: Cable): number | undefined => {
  const limit = bendLimit(cable.kind);
  const size = cableDiameter(cable);
  return limit && size && tidy(limit.times * size.majorIn);
};

/** Pocket calculation 'bend': a cable by its trade name, or NM by its diameter; a diameter given goes before the one on file. */
export const calcBend = (input: CalcInput['bend']): Result<CalcOutput, Fault> => {
  const fault = checkObject('', input) ?? checkNumberOrNull('/diameterIn', input.diameterIn, { above: 0, max: 12 });
  if (fault) return err(fault);
  const { cable: name, diameterIn } = input;
  if (name === null && diameterIn === null) return err(inputFault('', say.needCableOrDiameter()));
  const named = typeof name === 'string' ? cableFromName(name) : undefined;
  if (name !== null && !named) return err(inputFault('/cable', say.notACable({ name: String(name) })));
  const limit = bendLimit(named?.kind ?? 'NM')!;
  const { section } = limit.source[2023];
  const onFile = named && outsideSize(named.kind, named.size, named.insulated, named.metal);
  const diameter = diameterIn ?? onFile?.majorIn;
  if (diameter === undefined)
    return ok({
      outcome: 'cannot be told',
      figures: {},
      worked: {
        id: 'bend',
        value: limit.times,
        unit: 'times the diameter',
        steps: [step(say.diameterNotKnown({ name: name! }), '', '', section)],
      },
    });
  const minRadiusIn = tidy(limit.times * diameter);
  const steps = [
    step(diameterIn === null ? say.diameterOf({ name: name! }) : say.diameterGiven(), diameter, 'in', section),
    step(say.timesDiameter({ times: limit.times, diameter }), minRadiusIn, 'in', section),
  ];
  return ok({
    outcome: 'value',
    figures: { minRadiusIn },
    worked: { id: 'bend', value: minRadiusIn, unit: 'in', steps },
  });
};
