import { cited } from '../standards/source';
import {
  depthRow,
  HANDLE_MOST_IN,
  HEADROOM_EXCEPTION_AMPS,
  HEIGHT_IN,
  SPACE_SOURCES,
  WIDTH_IN,
} from '../standards/workingSpace';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkBoolean, checkEdition, checkNumber, checkObject, firstFault, isObject } from './inputChecks';
import { tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import { atLeast, atMost, type Step, step } from './worked';

type Input = CalcInput['working-space'];
type Outcome = 'holds' | 'fails' | 'cannot be told';

const MOST_VOLTS = 1000;
const length = { min: 0, max: 12_000 };

const checkInput = (input: Input) =>
  checkObject('', input) ??
  checkObject('/size', input.size) ??
  checkObject('/free', input.free) ??
  firstFault(
    checkEdition(input.edition),
    checkNumber('/size/width', input.size.width, { above: 0, max: 12_000 }),
    checkNumber('/size/depth', input.size.depth, length),
    checkNumber('/size/height', input.size.height, { above: 0, max: 12_000 }),
    checkNumber('/bottom', input.bottom, length),
    checkNumber('/topHandle', input.topHandle, length),
    // Negative: something reaches in front of the panel itself.
    checkNumber('/free/left', input.free.left, { min: -12_000, max: 12_000 }),
    checkNumber('/free/right', input.free.right, { min: -12_000, max: 12_000 }),
    checkNumber('/free/depth', input.free.depth, length),
    checkNumber('/free/height', input.free.height, length),
    checkBoolean('/existingDwelling', input.existingDwelling),
    checkNumber('/amps', input.amps, { min: 0 }),
    checkNumber('/voltsToGround', input.voltsToGround, { min: 0, max: MOST_VOLTS }),
  );

const holdsIf = (holds: boolean): Outcome => (holds ? 'holds' : 'fails');
/** Above 150 V to ground the depth hangs on what stands opposite, which is not asked: told only where it makes no odds. */
const depthOutcome = (depth: number, conditions: readonly number[]): Outcome =>
  atLeast(depth, Math.max(...conditions))
    ? 'holds'
    : atLeast(depth, Math.min(...conditions))
      ? 'cannot be told'
      : 'fails';

const worst = (outcomes: readonly Outcome[]): Outcome =>
  outcomes.includes('fails') ? 'fails' : outcomes.includes('cannot be told') ? 'cannot be told' : 'holds';

/** Pocket calculation 'working-space': clear space measured on site around a panel, each measure with its own verdict. */
export const calcWorkingSpace = (input: Input): Result<CalcOutput, Fault> => {
  const fault = isObject(input) ? checkInput(input) : checkObject('', input);
  if (fault) return err(fault);
  const { size, free, edition } = input;
  const section = (name: keyof typeof SPACE_SOURCES) => cited(SPACE_SOURCES[name][edition]);
  const conditions = depthRow(input.voltsToGround)!.depthIn;
  const depth = depthOutcome(free.depth, conditions);
  const widthNeeded = Math.max(WIDTH_IN, size.width);
  const widthFound = tidy(free.left + size.width + free.right);
  const width = holdsIf(free.left >= 0 && free.right >= 0 && atLeast(widthFound, widthNeeded));
  const heightNeeded = Math.max(HEIGHT_IN, tidy(input.bottom + size.height));
  const tall = atLeast(free.height, heightNeeded);
  const headroomException = !tall && input.existingDwelling && input.amps <= HEADROOM_EXCEPTION_AMPS;
  const height = holdsIf(tall || headroomException);
  const handle = holdsIf(atMost(input.topHandle, HANDLE_MOST_IN));

  const steps: Step[] = [
    step(say.depthNeeded({ volts: input.voltsToGround }), Math.min(...conditions), 'in', section('depth')),
    ...(depth === 'cannot be told'
      ? [step(say.depthByOpposite(), conditions.join(' · '), 'in', section('depth'))]
      : []),
    step(say.depthFound({ outcome: depth }), free.depth, 'in', section('depth')),
    step(say.widthNeeded(), widthNeeded, 'in', section('width')),
    ...(['left', 'right'] as const)
      .filter((side) => free[side] < 0)
      .map((side) => step(say.before({ side }), tidy(-free[side]), 'in', section('width'))),
    step(say.widthFound({ outcome: width }), widthFound, 'in', section('width')),
    step(say.heightNeeded(), heightNeeded, 'in', section('height')),
    step(say.heightFound({ outcome: tall ? 'holds' : 'fails' }), free.height, 'in', section('height')),
    ...(headroomException
      ? [step(say.headroomException(), HEADROOM_EXCEPTION_AMPS, 'A', section('headroomException'))]
      : []),
    step(say.handleNeeded(), HANDLE_MOST_IN, 'in', section('handle')),
    step(say.handleFound({ outcome: handle }), input.topHandle, 'in', section('handle')),
  ];
  return ok({
    outcome: worst([depth, width, height, handle]),
    figures: { depth, width, height, handle, headroomException },
    worked: { id: 'working-space', value: free.depth, unit: 'in', steps },
  });
};
