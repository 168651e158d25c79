import type { U } from '../units/types';
import type { CableKind, TempColumn } from './cable';
import { compareSizes, isSize } from './sizes';
import { type ByEdition, nec, type Source } from './source';

export interface ColumnLimit {
  /** Column the finished ampacity may not pass, °C; null = only the terminals limit it. */
  readonly column: 60 | 75 | null;
  readonly rule: ByEdition<Source> | null;
}
const FREE: ColumnLimit = { column: null, rule: null };
const NM: ColumnLimit = { column: 60, rule: nec('334.80') };
const UF: ColumnLimit = { column: 60, rule: nec('340.80', 'memory') };
const AC_INSULATED: ColumnLimit = { column: 60, rule: nec('320.80(A)', 'memory') };
const SE_SMALL: ColumnLimit = { column: 60, rule: nec('338.10(B)(4)(a)') };
/** Service-entrance cable indoors keeps 60 °C only in these sizes and smaller, touching insulation. */
const SE_SMALL_TO = '10';

/** Column a wiring method holds its conductors to, whatever is printed on them. An unknown kind counts as the strictest. */
export const columnLimit = (kind: U<CableKind>, size: U<string>, insulated: boolean): ColumnLimit => {
  switch (kind) {
    case 'NM':
    case 'NM without ground':
    case 'unknown':
      return NM;
    case 'UF':
      return UF;
    case 'AC':
      return insulated ? AC_INSULATED : FREE;
    case 'SE-R':
    case 'SE-U':
      return insulated && (!isSize(size) || compareSizes(size, SE_SMALL_TO) <= 0) ? SE_SMALL : FREE;
    default:
      return FREE;
  }
};

/**
 * Column today's cable of a kind starts from when nothing is read from a jacket: trade practice (NM since the marking
 * rule of 334.112 has 90 °C insulation, service-entrance cable and building wire likewise). Older kinds start at 60.
 */
export const NEW_CABLE_COLUMN: Readonly<Record<CableKind, TempColumn>> = {
  NM: 90,
  'NM without ground': 60,
  AC: 90,
  MC: 90,
  'SE-R': 90,
  'SE-U': 75,
  UF: 60,
  'knob-and-tube': 60,
  'conductors in raceway': 90,
};
/** Derating may start from the column of the insulation. */
export const START_COLUMN_RULE: ByEdition<Source> = nec({
  2017: '310.15(B)',
  2020: '310.15(A)',
  2023: '310.15(A)',
  2026: '310.15(A)',
});
