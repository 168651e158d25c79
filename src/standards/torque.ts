import { nec, type Standing } from './source';

/** Tightening torque where the maker gives none, lbf-in: UL 486A-486B values as NEC Informative Annex I prints them (column B where there are two). */
export const TORQUE_SOURCE = nec('Annex I, 110.14(D)');

export type TorqueScrew = 'slotted, narrow slot' | 'slotted, wide slot' | 'hex split-bolt' | 'hex, other';
type Row = readonly [upTo: readonly string[], narrow: number | null, wide: number | null, split: number, other: number];
/** Screws No. 10 and larger. Narrow: slot not over 0.047 in wide and 1/4 in long. */
const ROWS: readonly Row[] = [
  [['18', '16', '14', '12', '10'], 20, 35, 80, 75],
  [['8'], 25, 40, 80, 75],
  [['6', '4'], 35, 45, 165, 110],
  [['3'], 35, 50, 275, 150],
  [['2'], 40, 50, 275, 150],
  [['1'], null, 50, 275, 150],
  [['1/0', '2/0'], null, 50, 385, 180],
  [['3/0', '4/0'], null, 50, 500, 250],
  [['250', '300', '350'], null, 50, 650, 325],
  [['400'], null, 50, 825, 325],
  [['500'], null, 50, 825, 375],
  [['600', '700', '750'], null, 50, 1000, 375],
  [['800', '900', '1000'], null, 50, 1100, 500],
];
const MEMORY_OTHER: ReadonlySet<string> = new Set(['500', '600', '700', '750', '800', '900', '1000']);
const ONE_SOURCE: ReadonlySet<string> = new Set(['400', '500', '600', '700', '750', '800', '900', '1000']);

export interface Torque {
  readonly lbIn: number;
  readonly standing: Standing;
}
/** Fallback torque of one terminal; what is marked on the equipment always comes first. Undefined where the table is blank. */
export const torqueFor = (terminal: { readonly awg: string; readonly screw: TorqueScrew }): Torque | undefined => {
  const row = ROWS.find(([sizes]) => sizes.includes(terminal.awg));
  if (!row) return undefined;
  const [, narrow, wide, split, other] = row;
  const lbIn = {
    'slotted, narrow slot': narrow,
    'slotted, wide slot': wide,
    'hex split-bolt': split,
    'hex, other': other,
  }[terminal.screw];
  if (lbIn === null) return undefined;
  const standing: Standing =
    terminal.screw === 'hex, other' && MEMORY_OTHER.has(terminal.awg)
      ? 'memory'
      : ONE_SOURCE.has(terminal.awg)
        ? 'one source'
        : 'confirmed';
  return { lbIn, standing };
};

/** Slotted screws smaller than No. 10, for wire up to 8 AWG, by slot length: slot under and from 0.047 in wide. */
export const SMALL_SLOT_LB_IN: readonly (readonly [slot: string, narrow: number | null, wide: number])[] = [
  ['under 5/32', 7, 9],
  ['5/32', 7, 12],
  ['3/16', 7, 12],
  ['7/32', 7, 12],
  ['1/4', 9, 12],
  ['9/32', null, 15],
  ['over 9/32', null, 20],
];
/** Recessed drive (hex socket), by size across flats. */
export const SOCKET_LB_IN: Readonly<Record<string, number>> = {
  '1/8': 45,
  '5/32': 100,
  '3/16': 120,
  '7/32': 150,
  '1/4': 200,
  '5/16': 275,
  '3/8': 375,
  '1/2': 500,
  '9/16': 600,
};
export const NEWTON_METERS_PER_LB_IN = 0.113;
