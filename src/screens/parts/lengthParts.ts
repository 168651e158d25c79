import { formatFeetInches } from '../../units/length';
import type { In } from '../../units/types';

export interface LengthParts {
  /** Feet and whole inches with their marks' places: `10′-6`, or whole inches alone. */
  readonly whole: string;
  readonly top: string | null;
  readonly bottom: string | null;
}
const WRITTEN = /^(-?)(?:(\d+)'-)?(?:(\d+)(?=[ "]))? ?(?:(\d+)\/(\d+))?"$/;

/** A length in the parts it is set in: the fraction is set small. Under a foot there are no feet. */
export const lengthParts = (inches: In, denominator = 16): LengthParts => {
  const [, sign = '', feet, rest, top, bottom] = WRITTEN.exec(formatFeetInches(inches, denominator)) ?? [];
  const onlyFraction = feet === undefined && rest === undefined && top !== undefined;
  const whole = feet === undefined ? (onlyFraction ? '' : (rest ?? '0')) : `${feet}′-${rest ?? '0'}`;
  return { whole: sign + whole, top: top ?? null, bottom: bottom ?? null };
};

/** The same as one text, for names read aloud. */
export const lengthText = (inches: In, denominator = 16): string => {
  const { whole, top, bottom } = lengthParts(inches, denominator);
  return `${whole}${top === null ? '' : `${whole === '' ? '' : ' '}${top}/${bottom}`}″`;
};
