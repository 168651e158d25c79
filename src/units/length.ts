import { err, ok, type Result } from './result';
import type { In } from './types';

const MM_PER_INCH = 25.4; // exact: international yard and pound agreement, 1959
const INCHES_PER_FOOT = 12;

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Nearest whole 1/64 in: the precision of every stored site length. */
export const toSixtyFourths = (inches: In): In => Math.round(inches * 64) / 64;

/** `126` → `10'-6"`, `7.5` → `7 1/2"`; to the nearest 1/`denominator` in. */
export const formatFeetInches = (inches: In, denominator = 16): string => {
  const sign = inches < 0 ? '-' : '';
  const parts = Math.round(Math.abs(inches) * denominator);
  const feet = Math.floor(parts / (INCHES_PER_FOOT * denominator));
  const rest = parts - feet * INCHES_PER_FOOT * denominator;
  const whole = Math.floor(rest / denominator);
  let top = rest - whole * denominator;
  let bottom = denominator;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const part = top > 0 ? `${top}/${bottom}` : '';
  if (feet === 0) return `${sign}${[whole > 0 || part === '' ? whole : '', part].filter((s) => s !== '').join(' ')}"`;
  return `${sign}${feet}'-${whole}${part === '' ? '' : ` ${part}`}"`;
};

export interface LengthFault {
  readonly type: 'not-a-length';
  readonly text: string;
}

const NUMBER = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`;
const FRACTION = String.raw`(?:\d+\s*\/\s*\d+|[½¼¾⅛⅜⅝⅞])`;
const INCHES = String.raw`(?:(?<whole>${NUMBER})(?:(?:[\s-]+|(?=[½¼¾⅛⅜⅝⅞]))(?<mixed>${FRACTION}))?|(?<only>${FRACTION}))`;
const FEET_INCHES = new RegExp(
  String.raw`^(?<sign>-)?\s*(?:(?<feet>${NUMBER})\s*(?:'|′|ft\.?|feet)\s*-?\s*)?(?:${INCHES}\s*(?:"|″|''|in\.?|inches)?)?$`,
  'i',
);
const METRIC = new RegExp(String.raw`^(?<sign>-)?(?<n>${NUMBER})\s*(?<unit>mm|cm|m)$`, 'i');

const fraction = (text: string): number => {
  const known = Object.hasOwn(FRACTIONS, text) ? FRACTIONS[text] : undefined;
  if (known !== undefined) return known;
  const [top, bottom] = text.split('/').map(Number);
  return top! / bottom!;
};

/** Reads `12' 4 1/2"`, `148.5`, `10'-6"`, `3.77 m`, `95 cm`; a bare number is inches. Answers inches, unrounded. */
export const parseLength = (text: string): Result<In, LengthFault> => {
  const trimmed = text.trim();
  const refuse = err({ type: 'not-a-length', text } as const);
  const metric = METRIC.exec(trimmed)?.groups;
  if (metric) {
    const mm = Number(metric.n) * { mm: 1, cm: 10, m: 1000 }[metric.unit!.toLowerCase() as 'mm' | 'cm' | 'm'];
    return ok(((metric.sign ? -1 : 1) * mm) / MM_PER_INCH);
  }
  const found = FEET_INCHES.exec(trimmed)?.groups;
  if (!found) return refuse;
  const { sign, feet, whole, mixed, only } = found;
  if (feet === undefined && whole === undefined && only === undefined) return refuse;
  const inches =
    Number(feet ?? 0) * INCHES_PER_FOOT +
    Number(whole ?? 0) +
    (mixed ? fraction(mixed) : 0) +
    (only ? fraction(only) : 0);
  return Number.isFinite(inches) ? ok(sign ? -inches : inches) : refuse;
};
