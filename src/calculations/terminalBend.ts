import { isSize, SIZES } from '../standards/sizes';
import { cited } from '../standards/source';
import { BEND_SOURCES, wireBendingSpace } from '../standards/wireBending';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkNumber, checkObject, checkOneOf, firstFault, inputFault } from './inputChecks';
import type { CalcInput, CalcOutput } from './types';
import { step } from './worked';

/** Pocket calculation 'terminal-bend': least space from terminal to wall (312.6). 0 = the table sets none. */
export const calcTerminalBend = (input: CalcInput['terminal-bend']): Result<CalcOutput, Fault> => {
  const fault =
    checkObject('', input) ??
    firstFault(
      typeof input.awg === 'string' && isSize(input.awg) ? null : checkOneOf('/awg', input.awg, SIZES),
      checkNumber('/wires', input.wires, { min: 1, max: 12, whole: true }),
      checkOneOf('/wall', input.wall, ['side', 'opposite']),
    );
  if (fault) return err(fault);
  const minimumIn = wireBendingSpace(input.awg, input.wires, input.wall);
  if (minimumIn === undefined) return err(inputFault('/wires', say.noBendRow(input), 'beyond-the-table'));
  const words = minimumIn === 0 ? say.bendNotSpecified(input) : say.bendRow(input);
  const steps = [step(words, minimumIn, 'in', cited(BEND_SOURCES[input.wall][2023]))];
  return ok({
    outcome: 'value',
    figures: { minimumIn },
    worked: { id: 'terminal-bend', value: minimumIn, unit: 'in', steps },
  });
};
