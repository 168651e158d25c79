import { surveyWords as say } from '../../../words/en/survey';

/** How a value of the job is shown and typed. */
export type Input =
  /** `none`: the word for a null that means there is none. */
  | { readonly as: 'length'; readonly none?: string }
  | { readonly as: 'angle' }
  | { readonly as: 'count'; readonly none?: string }
  | { readonly as: 'money'; readonly none: string }
  | { readonly as: 'text'; readonly none?: string }
  | { readonly as: 'choice'; readonly of: readonly Choice[] };
export interface Choice {
  readonly value: unknown;
  readonly say: string;
}

/** One field of a record: where it is in it, what it is called, how it is typed, whether it may be unknown. */
export interface Spec {
  readonly field: string;
  readonly label: string;
  readonly input: Input;
  readonly unknown: boolean;
}
export interface Group {
  readonly title: string | null;
  readonly specs: readonly Spec[];
}

const make =
  (input: Input) =>
  (field: string, label: string, unknown: 'known' | 'may be unknown' = 'known'): Spec => ({
    field,
    label,
    input,
    unknown: unknown === 'may be unknown',
  });

export const length = make({ as: 'length' });
export const angle = make({ as: 'angle' });
export const count = make({ as: 'count' });
export const text = make({ as: 'text' });
export const lengthOrNone = (none: string) => make({ as: 'length', none });
export const countOrNone = (none: string) => make({ as: 'count', none });
export const money = (none: string) => make({ as: 'money', none });
export const choice = (...of: readonly Choice[]) => make({ as: 'choice', of });
/** Values that are their own words. */
export const words = (...of: readonly (string | number)[]) => choice(...of.map((v) => ({ value: v, say: String(v) })));
export const yesNo = choice({ value: true, say: say.yes }, { value: false, say: say.no });
export const stands = choice(
  { value: { now: true, after: true }, say: say.choices.stays },
  { value: { now: true, after: false }, say: say.choices.away },
  { value: { now: false, after: true }, say: say.choices.comes },
);

export const group = (title: string | null, ...specs: readonly Spec[]): Group => ({ title, specs });
