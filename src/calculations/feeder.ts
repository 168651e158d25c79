import { WIRE_WORDS, wireOf } from '../standards/buildingWire';
import { standardSizeBelow } from '../standards/overcurrent';
import { CONDUCTOR_TABLE, circularMils } from '../standards/resistance';
import { isSize } from '../standards/sizes';
import { BEYOND, cited } from '../standards/source';
import { START_COLUMN_RULE } from '../standards/wiringMethods';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { egcFor } from './egc';
import { type FeederAnswer, feederConductors } from './feederConductors';
import { feederNeutral } from './feederNeutral';
import { tapHolds, tapSteps } from './feederTap';
import { refuse } from './refuse';
import type { CalcInput, CalcOutput } from './types';

/**
 * `feeder`: figures ampacity, breakerMax (A, at the strictest reading of what is not known), egcCu, egcAl (sizes), and
 * neutral (size) where the load on it is given. The
 * cable is today's product of its kind; the jacket's own marking is taken where a job has it (feederConductors).
 */
export const calcFeeder = (input: CalcInput['feeder']): Result<CalcOutput, Fault> => {
  const { edition, awg, breakerAmps, upsizedFrom } = input;
  const wire = wireOf(input.cable);
  if (!wire)
    return refuse('not-a-cable', '/cable', say.notACable({ found: input.cable, known: WIRE_WORDS.join(', ') }));
  if (upsizedFrom !== null && !isSize(upsizedFrom))
    return refuse('not-a-size', '/upsizedFrom', say.notASize({ found: upsizedFrom }));
  if (upsizedFrom !== null && circularMils(upsizedFrom) === BEYOND) {
    const table = CONDUCTOR_TABLE[edition].section;
    return refuse('beyond-table', '/upsizedFrom', say.notInTable({ what: upsizedFrom, table }));
  }
  const { kind, column: startColumn } = wire;
  const { insulated = false, neutralAmps = null, tap = null } = input;
  const answer = feederConductors({ ...input, kind, startColumn, insulated, togetherIn: null }, edition);
  if (!answer.ok) return answer;
  const { ampacity, column, neededAmps, beforeFactors, steps } = answer.value;
  const section = cited(START_COLUMN_RULE[edition]);
  const start = {
    say: say.startAt({ column: startColumn, cable: input.cable }),
    value: startColumn,
    unit: '°C',
    section,
  };
  const judged = tap ? tapAnswer(input, tap, answer.value) : { ...answer.value, steps };
  // 250.122(G), memory: with a tap the device ahead of the feeder counts.
  const device = tap?.ahead ?? breakerAmps;
  const copper = egcFor('Cu', device, awg, upsizedFrom, edition);
  const aluminum = egcFor('Al', device, awg, upsizedFrom, edition);
  const egc = input.metal === 'Cu' ? copper.size : aluminum.size;
  const neutral = neutralAmps === null ? null : feederNeutral(input.metal, neutralAmps, column, egc, edition);
  return ok({
    outcome: judged.outcome,
    figures: {
      ampacity,
      neededAmps,
      beforeFactors,
      breakerMax: judged.breakerMax,
      egcCu: copper.size,
      egcAl: aluminum.size,
      ...(neutral && { neutral: neutral.size }),
    },
    worked: {
      id: 'feeder',
      value: ampacity,
      unit: 'A',
      steps: [start, ...judged.steps, ...copper.steps, ...aluminum.steps, ...(neutral?.steps ?? [])],
    },
  });
};

/** A tap is judged by its own rules in the place of those for a feeder's device. */
const tapAnswer = (input: CalcInput['feeder'], { ahead, feet }: { ahead: number; feet: number }, f: FeederAnswer) => {
  const { edition, continuousAmps, otherAmps, breakerAmps: endAmps } = input;
  const tap = { ahead, feet, loadAmps: continuousAmps + otherAmps, endAmps };
  const [worst, best] = [tapHolds(tap, f.ampacity), tapHolds(tap, f.ampacityAtBest)];
  const below = standardSizeBelow(f.ampacity, edition);
  return {
    outcome: worst ? ('holds' as const) : best ? ('cannot be told' as const) : ('fails' as const),
    breakerMax: below === BEYOND ? 0 : below,
    steps: [...f.carried, ...tapSteps(tap, f.ampacity, edition)],
  };
};
