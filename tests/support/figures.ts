import type { CalcOutput } from '../../src/calculations/types';
import type { Fault } from '../../src/units/fault';
import type { Result } from '../../src/units/result';

/** Figures and outcome of a calculation that has to answer. */
export const figuresOf = (answer: Result<CalcOutput, Fault>): CalcOutput['figures'] & { outcome: string } => {
  if (!answer.ok) throw new Error(`${answer.error.error.path}: ${answer.error.error.say}`);
  return { ...answer.value.figures, outcome: answer.value.outcome };
};
