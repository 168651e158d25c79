import { WIRE_WORDS, wireOf } from '../standards/buildingWire';
import { CONDUCTOR_TABLE, circularMils } from '../standards/resistance';
import { isSize } from '../standards/sizes';
import { BEYOND } from '../standards/source';
import { FEEDER_DEVICE_RULE } from '../standards/terminals';
import { START_COLUMN_RULE } from '../standards/wiringMethods';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { egcFor } from './egc';
import { feederConductors } from './feederConductors';
import { refuse } from './refuse';
import type { CalcInput, CalcOutput } from './types';

/**
 * `feeder`: figures ampacity, breakerMax (A, at the strictest reading of what is not known), egcCu, egcAl (sizes). The
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
  const answer = feederConductors({ ...input, kind, startColumn, insulated: false, togetherIn: null }, edition);
  if (!answer.ok) return answer;
  const { outcome, ampacity, breakerMax, steps } = answer.value;
  const copper = egcFor('Cu', breakerAmps, awg, upsizedFrom, edition);
  const aluminum = egcFor('Al', breakerAmps, awg, upsizedFrom, edition);
  const section = FEEDER_DEVICE_RULE[edition].section;
  return ok({
    outcome,
    figures: { ampacity, breakerMax, egcCu: copper.size, egcAl: aluminum.size },
    worked: {
      id: 'feeder',
      value: ampacity,
      unit: 'A',
      steps: [
        {
          say: say.startAt({ column: startColumn, cable: input.cable }),
          value: startColumn,
          unit: '°C',
          section: START_COLUMN_RULE[edition].section,
        },
        ...steps,
        { say: say.breaker, value: breakerAmps, unit: 'A', section },
        ...copper.steps,
        ...aluminum.steps,
      ],
    },
  });
};
