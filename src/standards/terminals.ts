import type { U } from '../units/types';
import type { TempColumn } from './cable';
import { type ByEdition, nec, type Source } from './source';

export const TERMINALS_RULE: ByEdition<Source> = nec('110.14(C)(1)');

/**
 * Columns the terminals may turn out to have, °C, lowest first: the marking where it was read, else both. Equipment for
 * more than 100 A is made for 75 °C (110.14(C)(1)(b)), but a lower marking at either end would govern all the same, so
 * what was not read stays open at any size.
 */
export const terminalColumns = (marked: U<TempColumn>): readonly [TempColumn, ...TempColumn[]] =>
  marked === 'unknown' ? [60, 75] : [marked];

/** Conductors before any factor carry the load with its continuous part at 125 %; after all factors, the load itself. */
export const FEEDER_LOAD_RULE: ByEdition<Source> = nec('215.2(A)(1)', 'one source');
export const FEEDER_DEVICE_RULE: ByEdition<Source> = nec('215.3', 'one source');
export const CONTINUOUS_SHARE = 1.25;
