import type { U } from '../units/types';

export const CABLE_KINDS = [
  'NM',
  'NM without ground',
  'AC',
  'MC',
  'SE-R',
  'SE-U',
  'UF',
  'knob-and-tube',
  'conductors in raceway',
] as const;
export type CableKind = (typeof CABLE_KINDS)[number];
export type Metal = 'Cu' | 'Al';
/** Columns of the ampacity table, °C. */
export type TempColumn = 60 | 75 | 90;

/** One cable as printed on its jacket; insulation unknown counts as 60 °C. Size is the text of the ungrounded conductors: '14' … '1', '1/0' … '4/0', then kcmil. */
export interface Cable {
  readonly kind: U<CableKind>;
  readonly size: U<string>;
  readonly metal: U<Metal>;
  readonly hots: U<1 | 2>;
  readonly neutral: U<'insulated' | 'bare' | 'none'>;
  readonly ground: U<boolean>;
  readonly insulation: U<TempColumn>;
}
