import type { Cents } from './types';

/** A thousandth of a dollar; routing and pricing compare in whole mills. */
export type Mills = number;

/** Half away from zero, so that a credit rounds like a charge. */
export const roundHalfAway = (x: number): number => {
  const rounded = Math.sign(x) * Math.floor(Math.abs(x) + 0.5 + 1e-9);
  return rounded === 0 ? 0 : rounded;
};
/** Dollars (at most four decimals) times a quantity, in whole cents. */
export const dollarsToCents = (dollars: number, quantity = 1): Cents => roundHalfAway(dollars * quantity * 100);
export const dollarsToMills = (dollars: number): Mills => roundHalfAway(dollars * 1000);

/** `123456` → `$1,235`: for a sentence and for a column that is read at a glance. */
export const formatWholeDollars = (cents: Cents): string => formatDollars(roundHalfAway(cents / 100) * 100);

/** `123456` → `$1,234.56`; whole dollars lose their cents. No locale, so that results are the same everywhere. */
export const formatDollars = (cents: Cents): string => {
  const whole = Math.trunc(Math.abs(cents) / 100)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, ',');
  const rest = Math.abs(cents) % 100;
  return `${cents < 0 ? '-' : ''}$${whole}${rest === 0 ? '' : `.${String(rest).padStart(2, '0')}`}`;
};
