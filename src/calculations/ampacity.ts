import { PROTECT_AT_AMPACITY } from '../standards/overcurrent';
import { cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { carrying } from './carrying';
import { EPS } from './refuse';
import type { CalcInput, CalcOutput } from './types';

/**
 * `ampacity`: figures base, factor, corrected, usable (A). A verdict only against a breaker, without rounding up to the
 * next standard rating; terminals not known give 'cannot be told' where they decide.
 */
export const calcAmpacity = (input: CalcInput['ampacity']): Result<CalcOutput, Fault> => {
  const { edition, breakerAmps } = input;
  const carried = carrying({ ...input, limitRule: null }, edition);
  if (!carried.ok) return carried;
  const { base, factor, corrected, usable, usableAtBest, steps } = carried.value;
  const holds = (amps: number) => breakerAmps !== null && amps >= breakerAmps - EPS;
  const outcome =
    breakerAmps === null ? 'value' : holds(usable) ? 'holds' : holds(usableAtBest) ? 'cannot be told' : 'fails';
  const breakerSay = say.breaker({ holds: outcome === 'holds', open: outcome === 'cannot be told' });
  return ok({
    outcome,
    figures: { base, factor, corrected, usable },
    worked: {
      id: 'ampacity',
      value: usable,
      unit: 'A',
      steps: [
        ...steps,
        ...(breakerAmps === null
          ? []
          : [{ say: breakerSay, value: breakerAmps, unit: 'A', section: cited(PROTECT_AT_AMPACITY[edition]) }]),
      ],
    },
  });
};
