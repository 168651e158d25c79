import { parseLength, toSixtyFourths } from '../../../units/length';
import { err, ok, type Result } from '../../../units/result';
import type { In, U } from '../../../units/types';
import { gridWords as say } from '../../../words/en/grid';

/** Typed text → a value, or why not. */
export type Read<T> = Result<T, string>;

const NOT_KNOWN: ReadonlySet<string> = new Set(['', '?', 'not known', 'unknown', 'n/k', 'nk']);
export const saysNotKnown = (text: string): boolean => NOT_KNOWN.has(text.trim().toLowerCase());

/** Nothing, a question mark and "not known" are the value 'unknown'. */
export const orNotKnown =
  <T>(read: (text: string) => Read<T>) =>
  (text: string): Read<U<T>> =>
    saysNotKnown(text) ? ok('unknown') : read(text);

/** Longest text of a cell; the job file takes more, a label on a panel never needs it. */
const MOST_CHARACTERS = 400;
export const readText = (text: string): Read<string> => {
  const one = text.replaceAll(/\s+/g, ' ').trim();
  return one.length > MOST_CHARACTERS ? err(say.tooLong({ most: MOST_CHARACTERS })) : ok(one);
};

const MOST_AMOUNT = 10_000_000;
const AMOUNT = /^(\d{1,3}(?:,\d{3})+|\d+)?(\.\d+)?\s*(k?)(?:a|amps?|va|v|w)?\.?$/i;
/** `20`, `20 A`, `1,500 VA`, `1.5 kVA`. */
export const readAmount = (text: string): Read<number> => {
  const found = AMOUNT.exec(text.trim());
  if (!found || (found[1] === undefined && found[2] === undefined)) return err(say.notWhole({ typed: text }));
  const value = Number(`${(found[1] ?? '0').replaceAll(',', '')}${found[2] ?? ''}`) * (found[3] === '' ? 1 : 1000);
  return value > MOST_AMOUNT ? err(say.tooMuch({ typed: text, most: MOST_AMOUNT })) : ok(value);
};
/** The same above zero: no breaker is of 0 A. */
export const readAmps = (text: string): Read<number> => {
  const read = readAmount(text);
  return read.ok && read.value === 0 ? err(say.notNumber({ typed: text })) : read;
};

const YES: ReadonlySet<string> = new Set(['yes', 'y', 'true', 'x', '1']);
const NO: ReadonlySet<string> = new Set(['no', 'n', 'false', '0']);
export const readYesNo = (text: string): Read<boolean> => {
  const word = text.trim().toLowerCase();
  if (YES.has(word)) return ok(true);
  return NO.has(word) ? ok(false) : err(say.notOneOf({ typed: text, choices: [say.yes, say.no] }));
};

/** One of a few words; case, and other ways to write them, aside. */
export const readChoice =
  <T extends string | number>(choices: readonly T[], also: Readonly<Record<string, T>> = {}) =>
  (text: string): Read<T> => {
    const word = text.trim().toLowerCase();
    const found =
      choices.find((c) => String(c).toLowerCase() === word) ?? (Object.hasOwn(also, word) ? also[word] : undefined);
    return found === undefined ? err(say.notOneOf({ typed: text, choices: choices.map(String) })) : ok(found);
  };

const MOST_INCHES = 12_000;
/** A length of zero or more, to 1/64 in. */
export const readSiteLength = (text: string): Read<In> => {
  const read = parseLength(text);
  if (!read.ok || read.value < 0) return err(say.notALength({ typed: text }));
  const inches = toSixtyFourths(read.value);
  return inches > MOST_INCHES ? err(say.tooMuch({ typed: text, most: MOST_INCHES })) : ok(inches);
};

/** Words between commas, semicolons or plus signs, each once; "none" and nothing are no words. */
export const readWords = (text: string): Read<string[]> => {
  const read = readText(text);
  if (!read.ok) return read;
  const words = read.value
    .split(/[,;+]/)
    .map((word) => word.trim())
    .filter((word) => word !== '' && word.toLowerCase() !== say.none);
  return ok([...new Set(words)]);
};
