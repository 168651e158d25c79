import { type ByEdition, nec, type Source } from './source';

export interface TapRule {
  /** Longest tap, ft. */
  readonly feet: number;
  /** Its ampacity is at least this part of the device ahead: 10 = one tenth. */
  readonly part: number;
  readonly rule: ByEdition<Source>;
}

/** Taps of a feeder within a building, shortest first. Other taps (transformers, outdoors, high bays) are not carried here. */
export const TAP_RULES: readonly TapRule[] = [
  { feet: 10, part: 10, rule: nec('240.21(B)(1)') },
  { feet: 25, part: 3, rule: nec('240.21(B)(2)') },
];
/** The next standard rating up is not for taps. */
export const TAP_DEVICE_RULE: ByEdition<Source> = nec('240.21(B)', 'memory');
