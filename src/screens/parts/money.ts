import { formatWholeDollars } from '../../units/money';
import type { Cents } from '../../units/types';

/** Whole dollars: `$5,197`. */
export const dollars = formatWholeDollars;
/** For a narrow screen: `5.2`, thousands of dollars. */
export const thousands = (cents: Cents): string => (cents / 100_000).toFixed(1);
