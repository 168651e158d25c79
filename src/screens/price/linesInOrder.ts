import type { Line } from '../../facts/result';
import { compareText } from '../../units/order';

/** A line with its place in the result. */
export interface PlacedLine {
  readonly line: Line;
  readonly at: number;
}
export interface LineGroup {
  readonly kind: Line['kind'];
  readonly lines: readonly PlacedLine[];
}
/** Cable is priced by the foot used, and bought in whole lengths. */
export const isCable = ({ kind, item }: Line): boolean => kind === 'material' && item.startsWith('cable:');

const ORDER: readonly (readonly Line['kind'][])[] = [
  ['labor'],
  ['material'],
  ['allowance'],
  ['fee'],
  ['overhead', 'profit', 'tax'],
];
const rank = (kind: Line['kind']): number => ORDER.flat().indexOf(kind);

/** Lines as one reads a price: labor, material, money for others, then what comes on top; the largest first in each. */
export const linesInOrder = (lines: readonly Line[]): LineGroup[] => {
  const placed = lines.map((line, at) => ({ line, at }));
  return ORDER.flatMap((kinds): LineGroup[] => {
    const of = placed.filter(({ line }) => kinds.includes(line.kind));
    const onTop = kinds.length > 1;
    of.sort((a, b) =>
      onTop
        ? rank(a.line.kind) - rank(b.line.kind)
        : b.line.likelyCents - a.line.likelyCents || compareText(a.line.id, b.line.id),
    );
    return of.length > 0 ? [{ kind: kinds[0]!, lines: of }] : [];
  });
};
