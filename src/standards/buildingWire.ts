import { CABLE_KINDS, type CableKind, type TempColumn } from './cable';
import { NEW_CABLE_COLUMN } from './wiringMethods';

export interface WireWord {
  readonly kind: CableKind;
  readonly column: TempColumn;
}
/** Conductors pulled into a raceway, by insulation: temperature rating in dry places (NEC Table 310.4(A), memory). */
const IN_RACEWAY: Readonly<Record<string, TempColumn>> = {
  TW: 60,
  THW: 75,
  THWN: 75,
  RHW: 75,
  'THW-2': 90,
  THHN: 90,
  'THWN-2': 90,
  XHHW: 90,
  'XHHW-2': 90,
  'RHW-2': 90,
};
/** Other ways to write a kind. */
const ALSO: Readonly<Record<string, CableKind>> = {
  'NM-B': 'NM',
  SER: 'SE-R',
  SEU: 'SE-U',
  'UF-B': 'UF',
  raceway: 'conductors in raceway',
};
const WORDS: ReadonlyMap<string, WireWord> = new Map([
  ...CABLE_KINDS.map((kind) => [kind, { kind, column: NEW_CABLE_COLUMN[kind] }] as const),
  ...Object.entries(ALSO).map(([word, kind]) => [word, { kind, column: NEW_CABLE_COLUMN[kind] }] as const),
  ...Object.entries(IN_RACEWAY).map(
    ([word, column]) => [word, { kind: 'conductors in raceway' as const, column }] as const,
  ),
]);

export const WIRE_WORDS: readonly string[] = [...WORDS.keys()];
/** What a word for a cable or a building wire stands for, with the column today's product starts from. */
export const wireOf = (word: string): WireWord | undefined => WORDS.get(word);
