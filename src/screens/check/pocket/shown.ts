import { pocketWords as say } from '../../../words/en/pocket';
import type { PocketField } from './fields';

const THOUSANDTH = 1000;

/** A value of an answer or a step as it is written: to a thousandth, thousands set apart, yes and no as words. */
export const shown = (value: number | string | boolean): string =>
  typeof value === 'number'
    ? (Math.round(value * THOUSANDTH) / THOUSANDTH).toLocaleString('en-US', { maximumFractionDigits: 3 })
    : value === true
      ? say.yes
      : value === false
        ? say.no
        : value;

/** What a choice stands for, in words. */
export const spoken = (value: string | number | boolean | null, { omit }: Pick<PocketField, 'omit'>): string =>
  value === true
    ? say.yes
    : value === false
      ? say.no
      : value === null
        ? omit
          ? say.asCode
          : say.none
        : value === 'unknown'
          ? say.unknown
          : String(value);
