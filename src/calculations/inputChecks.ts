import type { Fault } from '../units/fault';
import { EDITIONS } from '../units/types';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';

/**
 * Input of a pocket calculation comes from outside and is checked before any arithmetic. Each check answers a Fault
 * located by a JSON pointer, or null.
 */
export type Check = Fault | null;

export const inputFault = (path: string, text: string, type = 'bad-input'): Fault => ({
  error: { type, path, say: text },
});
export const firstFault = (...checks: readonly Check[]): Check => checks.find((c) => c !== null) ?? null;

export interface Range {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  readonly whole?: boolean;
}
const MOST = 1e6;

export const checkNumber = (path: string, value: unknown, range: Range = {}): Check => {
  const { min = -MOST, above, max = MOST, whole = false } = range;
  const good =
    typeof value === 'number' &&
    Number.isFinite(value) &&
    value >= min &&
    value <= max &&
    (above === undefined || value > above) &&
    (!whole || Number.isInteger(value));
  return good ? null : inputFault(path, say.expectedNumber({ min, max, above: above ?? null, whole }));
};

export const checkNumberOrNull = (path: string, value: unknown, range: Range = {}): Check =>
  value === null ? null : checkNumber(path, value, range);

export const checkBoolean = (path: string, value: unknown): Check =>
  typeof value === 'boolean' ? null : inputFault(path, say.expectedYesNo());

export const checkOneOf = (path: string, value: unknown, allowed: readonly (string | number)[]): Check =>
  allowed.some((a) => a === value) ? null : inputFault(path, say.expectedOneOf({ allowed: allowed.join(' · ') }));

export const checkEdition = (value: unknown): Check => checkOneOf('/edition', value, EDITIONS);

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
export const checkObject = (path: string, value: unknown): Check =>
  isObject(value) ? null : inputFault(path, say.expectedObject());

const MOST_ENTRIES = 1000;
export const checkList = (path: string, value: unknown, each: (path: string, item: unknown) => Check): Check => {
  if (!Array.isArray(value) || value.length > MOST_ENTRIES)
    return inputFault(path, say.expectedList({ most: MOST_ENTRIES }));
  return firstFault(...value.map((item: unknown, i) => each(`${path}/${i}`, item)));
};

/** A list of {awg, count}; `sizeFault` says why a size is refused, or null. */
export const checkCounts = (path: string, value: unknown, sizeFault: (awg: string) => string | null): Check =>
  checkList(path, value, (at, item) => {
    if (!isObject(item)) return inputFault(at, say.expectedObject());
    if (typeof item.awg !== 'string') return inputFault(`${at}/awg`, say.expectedSize());
    const refused = sizeFault(item.awg);
    return (
      (refused === null ? null : inputFault(`${at}/awg`, refused, 'beyond-the-table')) ??
      checkNumber(`${at}/count`, item.count, { min: 0, max: 1000, whole: true })
    );
  });
