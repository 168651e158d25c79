import { EDITIONS, type Edition } from '../units/types';

/**
 * How far a figure or a section number can be trusted: 'confirmed' = two or more public sources agree; 'one source';
 * 'memory' = nothing found, trade knowledge; 'unverified' = an edition or a number that no book was read for.
 */
export type Standing = 'confirmed' | 'one source' | 'memory' | 'unverified';

export interface Source {
  readonly document: string;
  readonly edition: string;
  readonly section: string;
  readonly standing: Standing;
}

/** What each edition does is data: code looks it up and compares no years. */
export type ByEdition<T> = Readonly<Record<Edition, T>>;

/** A table does not reach that far. An answer, never a reason to extrapolate. */
export const BEYOND = 'beyond the table';
export type Looked<T> = T | typeof BEYOND;
export const isBeyond = (value: unknown): value is typeof BEYOND => value === BEYOND;

const NEC = 'NFPA 70 (NEC)';

/** One value for all four editions. */
export const everyEdition = <T>(value: T): ByEdition<T> => ({ 2017: value, 2020: value, 2023: value, 2026: value });

/**
 * Sources of one NEC table or rule. A text stands for every edition; 2026 stays 'unverified' whatever is said of the
 * others, because no 2026 book was read.
 */
export const nec = (
  section: string | ByEdition<string>,
  standing: Standing | ByEdition<Standing> = 'confirmed',
): ByEdition<Source> => {
  const one = (edition: Edition): Source => ({
    document: NEC,
    edition: String(edition),
    section: typeof section === 'string' ? section : section[edition],
    standing: edition === 2026 ? 'unverified' : typeof standing === 'string' ? standing : standing[edition],
  });
  return Object.fromEntries(EDITIONS.map((edition) => [edition, one(edition)])) as Record<Edition, Source>;
};

/** A section as it is printed beside a step: what no book was read for, or is from memory, is said to be. */
export const cited = ({ section, standing }: Pick<Source, 'section' | 'standing'>): string =>
  standing === 'unverified' || standing === 'memory'
    ? `${section} (${standing === 'memory' ? 'from memory' : 'unverified'})`
    : section;
