import type { Kind, PackedBox, Packing } from './packing';

/** What a packing too large for the exact search is made with. */
interface Means {
  readonly catalogue: readonly Kind[];
  readonly fits: (kind: Kind, counts: readonly number[], n: number) => boolean;
  readonly oneBox: (counts: readonly number[]) => PackedBox | null;
  /** null = too many for it. */
  readonly exact: (counts: readonly number[]) => Packing | null;
}

/** Packs a large bank well, not proven. */
export const makeRoughPacker = ({ catalogue, fits, oneBox, exact }: Means) => {
  /** Each cable into the box that grows least by it, or into one of its own. */
  const bestFit = (counts: readonly number[]): PackedBox[] | null => {
    const boxes: PackedBox[] = [];
    for (let i = 0; i < counts.length; i++) {
      for (let n = 0; n < counts[i]!; n++) {
        const one = oneBox(counts.map((_, j) => (j === i ? 1 : 0)));
        if (!one) return null;
        let at = -1;
        let put = one;
        let extra = one.mills;
        boxes.forEach((b, k) => {
          const grown = oneBox(b.counts.map((c, j) => (j === i ? c + 1 : c)));
          if (grown && grown.mills - b.mills < extra) {
            at = k;
            put = grown;
            extra = grown.mills - b.mills;
          }
        });
        if (at < 0) boxes.push(put);
        else boxes[at] = put;
      }
    }
    return boxes;
  };

  /** Boxes of one kind filled one after the other, each then changed for the cheapest that holds the same. */
  const allOf = (kind: Kind, counts: readonly number[]): PackedBox[] | null => {
    const left = [...counts];
    const boxes: PackedBox[] = [];
    while (left.some((n) => n > 0)) {
      const part = left.map(() => 0);
      for (let i = 0, n = 0; i < left.length; i++)
        while (left[i]! > 0) {
          part[i]!++;
          if (!fits(kind, part, n + 1)) {
            part[i]!--;
            break;
          }
          left[i]!--;
          n++;
        }
      const box = part.some((n) => n > 0) ? oneBox(part) : null;
      if (!box) return null;
      boxes.push(box);
    }
    return boxes;
  };

  /** The cheapest of some quick packings, then pairs of boxes packed again while that saves money. */
  const roughly = (counts: readonly number[]): Packing | null => {
    const millsOf = (list: readonly PackedBox[]) => list.reduce((sum, b) => sum + b.mills, 0);
    const tries = [bestFit(counts), ...catalogue.map((kind) => allOf(kind, counts))].flatMap((t) => (t ? [t] : []));
    if (tries.length === 0) return null;
    const boxes = tries.reduce((a, b) => (millsOf(b) < millsOf(a) ? b : a));
    for (let improved = true; improved; ) {
      improved = false;
      for (let a = 0; a < boxes.length && !improved; a++) {
        for (let b = a + 1; b < boxes.length && !improved; b++) {
          const pair = counts.map((_, i) => boxes[a]!.counts[i]! + boxes[b]!.counts[i]!);
          const again = exact(pair);
          if (!again || again.mills >= boxes[a]!.mills + boxes[b]!.mills) continue;
          boxes.splice(b, 1);
          boxes.splice(a, 1, ...again.boxes);
          improved = true;
        }
      }
    }
    return { mills: millsOf(boxes), boxes, exact: false };
  };
  return roughly;
};
