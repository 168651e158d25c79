import type { In, Size } from '../units/types';

const inches = (text: string): In => {
  const found = /^(\d+(?:\.\d+)?)(?:-(\d+)\/(\d+))?$/.exec(text);
  return found ? Number(found[1]) + (found[2] ? Number(found[2]) / Number(found[3]) : 0) : Number.NaN;
};

/** Trade sizes as the catalogue writes them: `4-11/16 x 2-1/8` is square on that side, `6x6x4` width, height, depth. */
export const boxSize = (size: string): Size | null => {
  const figures = size.split(/\s*x\s*/).map(inches);
  if (figures.some((n) => !(n > 0))) return null;
  const [width, second, third] = figures;
  if (figures.length === 2) return { width: width!, height: width!, depth: second! };
  return figures.length === 3 ? { width: width!, height: second!, depth: third! } : null;
};

/** From middle to middle of two boxes that touch side by side, inches; a size that cannot be read takes no room. */
export const besideEachOther = (a: string, b: string): In => ((boxSize(a)?.width ?? 0) + (boxSize(b)?.width ?? 0)) / 2;
