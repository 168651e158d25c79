import type { CalcInput, CalcName, CalcOutput } from '../../../src/calculations/types';
import { runCalc } from '../../../src/plan/calc';

export type Value = number | string | boolean | readonly (number | string | boolean)[] | null;
export type Figures = CalcOutput['figures'] & { readonly outcome: string };

/** A question for a pocket calculation, as the command line reads it. */
export interface Ask {
  readonly name: CalcName;
  readonly json: string;
}
/** A question with most of its answers given; an example changes what it speaks of. */
export const asker =
  <N extends CalcName>(name: N, usual: CalcInput[N]) =>
  (change: Partial<CalcInput[N]> = {}): Ask => ({ name, json: JSON.stringify({ ...usual, ...change }) });

const answerTo = ({ name, json }: Ask): Figures => {
  const answer = runCalc(name, json);
  if (!answer.ok) throw new Error(`${name} ${json}: ${answer.error.error.path} ${answer.error.error.say}`);
  return { ...answer.value.figures, outcome: answer.value.outcome };
};

/** One figure of a published example: what it should be and what the product says. */
export interface Row {
  /** Key of the example's expected figures, dots for inner ones; `is`: a figure the example implies and does not list. */
  readonly expect: string | { readonly what: string; readonly is: Value };
  /** Room for the digits the print left out, in the figure's own unit. */
  readonly within: number;
  /** Who answered: a pocket calculation, or a function of the product where no calculation asks for it. */
  readonly by: string;
  readonly ours: () => Value;
}
type Pick = string | ((...answers: Figures[]) => Value);

/** Asked of pocket calculations through the very text the command line takes. */
export const calc = (expect: Row['expect'], asks: Ask | readonly Ask[], pick: Pick, within = 0): Row => {
  const list = Array.isArray(asks) ? (asks as readonly Ask[]) : [asks as Ask];
  return {
    expect,
    within,
    by: `calc ${list[0]!.name}`,
    ours: () => {
      const answers = list.map(answerTo);
      return typeof pick === 'function' ? pick(...answers) : (answers[0]![pick] as Value);
    },
  };
};
/** The same for a figure the example implies and does not list among its own. */
export const also = (what: string, is: Value, asks: Ask | readonly Ask[], pick: Pick, within = 0): Row =>
  calc({ what, is }, asks, pick, within);
export const code = (expect: Row['expect'], by: string, ours: () => Value, within = 0): Row => ({
  expect,
  within,
  by,
  ours,
});

export const holds = (a: Figures): boolean => a.outcome === 'holds';
/** Of candidates asked in turn, small to large: the first, or the last, that holds. */
export const firstHolding =
  (candidates: readonly (string | number)[]) =>
  (...answers: Figures[]): Value =>
    candidates[answers.findIndex(holds)] ?? 'none';
export const lastHolding =
  (candidates: readonly (string | number)[]) =>
  (...answers: Figures[]): Value =>
    candidates[answers.findLastIndex(holds)] ?? 'none';
