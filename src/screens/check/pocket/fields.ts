import { EDITIONS } from '../../../units/types';
import type { pocketWords } from '../../../words/en/pocket';

export type LabelOf = keyof (typeof pocketWords)['fields'];
type ChoiceValue = string | number | boolean | null;

/** How a pocket calculation asks for one of its inputs on screen, with what stands in it at first. */
export interface PocketField {
  /** Of the calculation's input; inner ones after a dot. */
  readonly key: string;
  readonly label: LabelOf;
  /**
   * number and text: one · choice: one of a few · rooms: any of many · numbers: 2, 1.5 · counts: 4 x 14, 2 x 12 ·
   * insulated: 4 x 12 THHN · pieces: 3 x 12' 6" · coils: 250' at 128.50 · circuits: a line each.
   */
  readonly kind:
    | 'number'
    | 'text'
    | 'choice'
    | 'rooms'
    | 'numbers'
    | 'counts'
    | 'insulated'
    | 'pieces'
    | 'coils'
    | 'circuits';
  /** May be left empty: null, or with `omit` not there at all. */
  readonly empty: boolean;
  readonly omit: boolean;
  readonly start: string;
  readonly choices: readonly ChoiceValue[];
}

const field = (
  kind: PocketField['kind'],
  label: LabelOf,
  start: string,
  more: Partial<PocketField> = {},
): PocketField => ({
  key: label,
  label,
  kind,
  empty: false,
  omit: false,
  start,
  choices: [],
  ...more,
});

export const number = (label: LabelOf, start: string, more: Partial<PocketField> = {}) =>
  field('number', label, start, more);
/** A number that may stay empty. */
export const maybe = (label: LabelOf, start = '', more: Partial<PocketField> = {}) =>
  field('number', label, start, { empty: true, ...more });
export const text = (label: LabelOf, start: string, more: Partial<PocketField> = {}) =>
  field('text', label, start, more);
export const choice = (
  label: LabelOf,
  choices: readonly ChoiceValue[],
  start?: ChoiceValue,
  more: Partial<PocketField> = {},
) => field('choice', label, String(start === undefined ? choices[0] : start), { choices, ...more });
/** Several at once, in one line or some; empty means none. */
export const several = (
  kind: 'numbers' | 'counts' | 'insulated' | 'pieces' | 'coils' | 'circuits',
  label: LabelOf,
  start: string,
  more: Partial<PocketField> = {},
) => field(kind, label, start, { empty: true, ...more });
export const rooms = (label: LabelOf, start: string) => field('rooms', label, start);

export const edition = choice('edition', EDITIONS, 2023);
export const metal = choice('metal', ['Cu', 'Al']);
export const awg = (start: string) => text('awg', start);
export const YES_NO = [false, true] as const;
