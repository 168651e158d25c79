import { gridWords as say } from '../../../words/en/grid';
import type { Column, ColumnId } from './column';
import { CABLE, CABLE_COLUMNS, DETAIL_COLUMNS } from './columnsCable';
import { CIRCUIT_COLUMNS, LAST_CIRCUIT_COLUMNS, MORE_CIRCUIT_COLUMNS, NUMBER } from './columnsCircuit';
import { BREAKER, GROUP, PARTNER, TAG } from './columnsShared';

/** The columns of the grid and of its CSV, from left to right: what is asked of every circuit first. */
export const COLUMNS: readonly Column[] = [
  NUMBER,
  ...CIRCUIT_COLUMNS,
  CABLE,
  GROUP,
  ...MORE_CIRCUIT_COLUMNS,
  PARTNER,
  BREAKER,
  TAG,
  ...CABLE_COLUMNS,
  ...LAST_CIRCUIT_COLUMNS,
  ...DETAIL_COLUMNS,
];
export const columnById = (id: ColumnId): Column => COLUMNS.find((c) => c.id === id)!;

/** Other heads the same column goes by in a contractor's own sheets. */
const ALIASES: Readonly<Record<string, ColumnId>> = {
  no: 'number',
  '#': 'number',
  circuit: 'number',
  'circuit no': 'number',
  'circuit number': 'number',
  ckt: 'number',
  'ckt no': 'number',
  space: 'number',
  spaces: 'number',
  breaker: 'number',
  description: 'label',
  name: 'label',
  load: 'label',
  'area served': 'label',
  amp: 'amps',
  a: 'amps',
  'breaker size': 'amps',
  rating: 'amps',
  pole: 'poles',
  p: 'poles',
  wire: 'cable',
  'cable type': 'cable',
  room: 'serves',
  use: 'serves',
  uses: 'serves',
  'existing protection': 'protection',
  'shared neutral': 'partner',
  'cable tag': 'tag',
  length: 'wholeLength',
};
const plain = (head: string): string => head.toLowerCase().replaceAll(/[.:]/g, '').replaceAll(/\s+/g, ' ').trim();

/** The column a head names, undefined where it names none. */
export const columnHeaded = (head: string): ColumnId | undefined => {
  const word = plain(head);
  const own = COLUMNS.find((c) => plain(say.heads[c.id]) === word);
  return own?.id ?? (Object.hasOwn(ALIASES, word) ? ALIASES[word] : undefined);
};
