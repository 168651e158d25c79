import { EDITIONS, type Edition, isKnown, type U } from '../units/types';
import { CIRCUIT_SECTIONS } from './sectionsCircuit';
import { PLACE_SECTIONS } from './sectionsPlace';
import type { SectionRow } from './sectionsShort';
import { WIRING_SECTIONS } from './sectionsWiring';
import type { Standing } from './source';

/** Every rule id the program knows, covered or not, with its section in each code year. */
export const RULE_SECTIONS = { ...PLACE_SECTIONS, ...CIRCUIT_SECTIONS, ...WIRING_SECTIONS } as const;
export type RuleId = keyof typeof RULE_SECTIONS;
export const RULE_IDS = (Object.keys(RULE_SECTIONS) as RuleId[]).sort();

/** Printed where the code year asks for nothing. */
export const NO_SECTION = 'none';

/** From firm to weak. */
const STANDINGS: readonly Standing[] = ['confirmed', 'one source', 'memory', 'unverified'];

export interface SectionText {
  readonly section: string;
  readonly standing: Standing;
}

const one = (row: SectionRow, edition: Edition): SectionText => {
  const source = row[edition];
  if (source === null) return { section: NO_SECTION, standing: 'confirmed' };
  return { section: source.section, standing: source.standing };
};

/**
 * The section of a rule in the code year in force. With the year unknown: every number the rule has had, as far as
 * books were read, and the weakest standing among them.
 */
export const sectionOf = (rule: RuleId, edition: U<Edition>): SectionText => {
  const row: SectionRow = RULE_SECTIONS[rule];
  if (isKnown(edition)) return one(row, edition);
  const texts = EDITIONS.map((year) => one(row, year));
  const weakest = Math.max(...texts.map((t) => STANDINGS.indexOf(t.standing)));
  return { section: [...new Set(texts.map((t) => t.section))].join(' or '), standing: STANDINGS[weakest]! };
};

/** Does the code year have the requirement at all? */
export const isRequiredIn = (rule: RuleId, edition: Edition): boolean => RULE_SECTIONS[rule][edition] !== null;
