import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { judgeAfci } from './afciJudgement';
import type { CalcInput, CalcOutput } from './types';

/** `afci`: figures required ('yes' 'no' 'inspector decides' 'cannot be told') and tapeIt. The same judgement the rules use. */
export const calcAfci = (input: CalcInput['afci']): Result<CalcOutput, Fault> => {
  const { required, tapeIt, steps } = judgeAfci(input);
  return ok({
    outcome: required === 'cannot be told' ? 'cannot be told' : 'value',
    figures: { required, tapeIt },
    worked: { id: 'afci', value: input.outsideIn, unit: 'in', steps },
  });
};
