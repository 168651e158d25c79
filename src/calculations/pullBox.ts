import { PULL_BOX } from '../standards/pullBox';
import { cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkList, checkNumber, checkObject, checkOneOf, firstFault, inputFault } from './inputChecks';
import { tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import { step } from './worked';

export type Pull = CalcInput['pull-box']['pull'];

/** Least distance across a box for conductors of 4 AWG and larger, in: entries of one row of one wall, by trade size (314.28(A)). */
export const pullBoxMinimum = (pull: Pull, entriesIn: readonly number[]): number => {
  const largest = Math.max(...entriesIn);
  if (pull === 'straight') return PULL_BOX.straightTimes * largest;
  const others = entriesIn.reduce((sum, size) => sum + size, 0) - largest;
  return tidy(PULL_BOX.angleOrSpliceTimes * largest + others);
};

/** Least distance between the two entries of the same conductor, in. */
export const sameConductorSpacing = (largerEntryIn: number): number => PULL_BOX.sameConductorTimes * largerEntryIn;

/** Pocket calculation 'pull-box'. */
export const calcPullBox = (input: CalcInput['pull-box']): Result<CalcOutput, Fault> => {
  const fault =
    checkObject('', input) ??
    firstFault(
      checkOneOf('/pull', input.pull, ['straight', 'angle', 'splice']),
      checkList('/racewaysIn', input.racewaysIn, (at, size) => checkNumber(at, size, { above: 0, max: 12 })),
    ) ??
    (input.racewaysIn.length === 0 ? inputFault('/racewaysIn', say.needRaceway()) : null);
  if (fault) return err(fault);
  const straight = input.pull === 'straight';
  const section = cited((straight ? PULL_BOX.straight : PULL_BOX.angleOrSplice)[2023]);
  const largest = Math.max(...input.racewaysIn);
  const others = [...input.racewaysIn].sort((a, b) => b - a).slice(1);
  const minimumIn = pullBoxMinimum(input.pull, input.racewaysIn);
  const times = straight ? PULL_BOX.straightTimes : PULL_BOX.angleOrSpliceTimes;
  const steps = [
    step(
      straight ? say.straightPull({ times, largest }) : say.anglePull({ times, largest }),
      times * largest,
      'in',
      section,
    ),
    ...(straight ? [] : [step(say.otherEntries({ list: others }), minimumIn - times * largest, 'in', section)]),
    step(say.least(), minimumIn, 'in', section),
    ...(straight
      ? []
      : [
          step(
            say.sameConductorSpacing({ times: PULL_BOX.sameConductorTimes }),
            sameConductorSpacing(largest),
            'in',
            section,
          ),
        ]),
    step(say.cableEntries(), '', '', cited(PULL_BOX.general[2023])),
  ];
  return ok({
    outcome: 'value',
    figures: straight ? { minimumIn } : { minimumIn, sameConductorIn: sameConductorSpacing(largest) },
    worked: { id: 'pull-box', value: minimumIn, unit: 'in', steps },
  });
};
