import { parseLength } from '../../src/units/length';

/** The value at a path such as plans/0/tally/stops; undefined where there is none. */
export const valueAt = (result: unknown, path: string): unknown =>
  path.split('/').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], result);

const LENGTHS = /\/(codeLength|cutLength|length|left)$/;
const CENTS = /(cents|Cents)$/;

/** Is this how the screen writes that value? Read independently of the code that wrote it. Null where it is, else what was expected. */
export const misread = (path: string, text: string, value: unknown): string | null => {
  if (value === undefined) return `${path}: not in the result, shown as "${text}"`;
  const wrong = (expected: unknown) => `${path}: shown "${text}", the result has ${String(expected)}`;
  if (typeof value === 'string') return text === value ? null : wrong(value);
  if (typeof value !== 'number') return wrong(JSON.stringify(value));
  if (CENTS.test(path)) {
    // whole dollars, half away from zero
    const shown = Number(text.replace(/[$,]/g, ''));
    return /^-?\$[\d,]+$/.test(text) && Math.abs(shown * 100 - value) <= 50 ? null : wrong(value);
  }
  if (text.endsWith('%'))
    return Math.abs(Number(text.replace(/\s*%$/, '')) / 100 - value) <= 0.005 + 1e-9 ? null : wrong(value);
  if (LENGTHS.test(path) || text.endsWith('″')) {
    const read = parseLength(text.replace('′', "'").replace('″', '"').replace('⁄', '/').replace("'-", "' "));
    return read.ok && Math.abs(read.value - value) <= 1 / 32 + 1e-9 ? null : wrong(value);
  }
  return Math.abs(Number(text) - value) <= 0.005 + 1e-9 ? null : wrong(value);
};
