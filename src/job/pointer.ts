import type { Fault } from '../units/fault';

/** Where something is in a JSON document: keys and list positions from the root. */
export type Path = readonly (string | number)[];

/** RFC 6901, section 3: '~' is written ~0 and '/' is written ~1. */
export const toPointer = (path: Path): string =>
  path.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** RFC 6901, section 4; undefined when the text is not a pointer. */
export const fromPointer = (pointer: string): string[] | undefined => {
  if (pointer === '') return [];
  if (!pointer.startsWith('/') || /~(?![01])/.test(pointer)) return undefined;
  return pointer
    .slice(1)
    .split('/')
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
};

export const faultAt = (type: string, path: Path, say: string): Fault => ({
  error: { type, path: toPointer(path), say },
});

/** A list position written in a pointer: no leading zeros, as RFC 6901 has it. */
export const asIndex = (step: string | number): number | undefined =>
  typeof step === 'number' ? step : /^(?:0|[1-9]\d{0,8})$/.test(step) ? Number(step) : undefined;

/** The own value one step down; undefined where there is none. Inherited properties do not count. */
export const stepInto = (value: unknown, step: string | number): unknown => {
  if (Array.isArray(value)) {
    const index = asIndex(step);
    return index === undefined ? undefined : (value as unknown[])[index];
  }
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
  return (value as Record<string, unknown>)[step];
};

export const valueAt = (document: unknown, path: Path): unknown => path.reduce(stepInto, document);

/** Compares two places by where a reader meets them in the document; a missing key comes at the end of its object. */
export const inDocumentOrder =
  (document: unknown) =>
  (a: Path, b: Path): number => {
    let here = document;
    for (let i = 0; i < Math.min(a.length, b.length); i++) {
      const [p, q] = [a[i]!, b[i]!];
      if (p !== q) return rank(here, p) - rank(here, q);
      here = stepInto(here, p);
    }
    return a.length - b.length;
  };

const rank = (parent: unknown, step: string | number): number => {
  if (typeof step === 'number') return step;
  if (typeof parent !== 'object' || parent === null) return 0;
  const keys = Object.keys(parent);
  const found = keys.indexOf(step);
  return found === -1 ? keys.length : found;
};
