import type { U } from '../units/types';
import type { TempColumn } from './cable';
import { compareSizes, isSize } from './sizes';
import { type ByEdition, nec, type Source } from './source';

export const TERMINALS_RULE: ByEdition<Source> = nec('110.14(C)(1)');
/** Circuits over this, A, and terminals for conductors larger than this size are 75 °C without a marking. */
export const UNMARKED_60_TO_AMPS = 100;
export const UNMARKED_60_TO_SIZE = '1';

/**
 * Columns the terminals may turn out to have, °C, lowest first: the marking where it was read, else 60 or 75 for small
 * circuits and 75 for large ones.
 */
export const terminalColumns = (
  marked: U<TempColumn>,
  size: string,
  breakerAmps: number | null,
): readonly [TempColumn, ...TempColumn[]] => {
  if (marked !== 'unknown') return [marked];
  const large =
    (breakerAmps !== null && breakerAmps > UNMARKED_60_TO_AMPS) ||
    (isSize(size) && compareSizes(size, UNMARKED_60_TO_SIZE) > 0);
  return large ? [75] : [60, 75];
};

/** Conductors before any factor carry the load with its continuous part at 125 %; after all factors, the load itself. */
export const FEEDER_LOAD_RULE: ByEdition<Source> = nec('215.2(A)(1)', 'one source');
export const FEEDER_DEVICE_RULE: ByEdition<Source> = nec('215.3', 'one source');
export const CONTINUOUS_SHARE = 1.25;
