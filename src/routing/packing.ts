import type { Count } from '../calculations/types';
import type { BoxKind } from '../facts/routing';
import type { Mills } from '../units/money';
import { compareText } from '../units/order';

/** What one spliced cable brings into a box: old and new conductors and grounds. Cables with the same key are alike. */
export interface SpliceLoad {
  readonly key: string;
  readonly conductors: readonly Count[];
  readonly grounds: readonly Count[];
  /** Trade sizes of the connectors of its two entries. */
  readonly connectors: readonly string[];
}
export interface BoxContents {
  readonly conductors: readonly Count[];
  readonly grounds: readonly Count[];
  readonly clamps: boolean;
}
/** Volume demanded, cu in., by the edition asked for; null = these conductors are not counted by volume (4 AWG and up). */
export type FillOf = (contents: BoxContents) => number | null;

export interface PackedBox {
  readonly kind: BoxKind;
  readonly fillIn3: number;
  /** How many cables of each load type, in the packer's order of types. */
  readonly counts: readonly number[];
  readonly mills: Mills;
}
export interface Packing {
  readonly mills: Mills;
  readonly boxes: readonly PackedBox[];
  readonly exact: boolean;
}
export interface Packer {
  readonly types: readonly SpliceLoad[];
  /** Cheapest boxes for so many cables of each type; null = some cable fits no box of the catalogue. */
  pack(counts: readonly number[]): Packing | null;
}

/** Above this many states the exact search gives way to best fit with improvement: 15 cables of mixed kinds stay below. */
const MOST_STATES = 4000;

const merged = (lists: readonly (readonly Count[])[], times: readonly number[]): Count[] => {
  const sum = new Map<string, number>();
  lists.forEach((list, i) => {
    for (const c of list) if (times[i]! > 0) sum.set(c.awg, (sum.get(c.awg) ?? 0) + c.count * times[i]!);
  });
  return [...sum].map(([awg, count]) => ({ awg, count })).sort((a, b) => compareText(a.awg, b.awg));
};

const total = (counts: readonly number[]) => counts.reduce((a, b) => a + b, 0);

/**
 * Packs cables into boxes at one spot for the least money: exact over the numbers of like cables (fill is not additive,
 * grounds share allowances, so each box is judged by the true function). Results are remembered across spots.
 */
export const makePacker = (
  loads: readonly SpliceLoad[],
  kinds: readonly BoxKind[],
  fill: FillOf,
  price: { readonly box: (kind: BoxKind) => Mills; readonly connector: (size: string) => Mills },
): Packer => {
  const types = [...new Map(loads.map((l) => [l.key, l])).values()].sort((a, b) => compareText(a.key, b.key));
  const catalogue = [...kinds].sort(
    (a, b) => price.box(a) - price.box(b) || a.volumeIn3 - b.volumeIn3 || compareText(a.size, b.size),
  );
  const entries = types.map((t) => t.connectors.reduce((sum, size) => sum + price.connector(size), 0));
  const single = new Map<string, PackedBox | null>();
  const best = new Map<string, Packing | null>();

  /** The cheapest one box that holds all of these, or null. */
  const oneBox = (counts: readonly number[]): PackedBox | null => {
    const key = counts.join();
    const known = single.get(key);
    if (known !== undefined) return known;
    const contents = {
      conductors: merged(
        types.map((t) => t.conductors),
        counts,
      ),
      grounds: merged(
        types.map((t) => t.grounds),
        counts,
      ),
    };
    const connectors = counts.reduce((sum, n, i) => sum + n * entries[i]!, 0);
    let found: PackedBox | null = null;
    for (const kind of catalogue) {
      const fillIn3 = fill({ ...contents, clamps: kind.clamps });
      if (fillIn3 === null || fillIn3 > kind.volumeIn3 + 1e-9) continue;
      const mills = price.box(kind) + (kind.clamps ? 0 : connectors);
      if (!found || mills < found.mills) found = { kind, fillIn3, counts, mills };
    }
    single.set(key, found);
    return found;
  };

  /** Every sub-count with at least one of the first type present that fits one box; fill only grows, so misfits prune. */
  const firstBoxes = (counts: readonly number[]): PackedBox[] => {
    const first = counts.findIndex((n) => n > 0);
    const found: PackedBox[] = [];
    const grow = (i: number, part: number[]) => {
      if (i === counts.length) {
        const box = oneBox([...part]);
        if (box) found.push(box);
        return;
      }
      for (let n = i === first ? 1 : 0; n <= counts[i]!; n++) {
        part[i] = n;
        if (n > 0 && !oneBox(part.map((k, j) => (j <= i ? k : 0)))) break;
        grow(i + 1, part);
      }
      part[i] = 0;
    };
    grow(
      first,
      counts.map(() => 0),
    );
    return found;
  };

  const exact = (counts: readonly number[]): Packing | null => {
    if (total(counts) === 0) return { mills: 0, boxes: [], exact: true };
    const key = counts.join();
    const known = best.get(key);
    if (known !== undefined) return known;
    let answer: Packing | null = null;
    for (const box of firstBoxes(counts)) {
      const rest = exact(counts.map((n, i) => n - box.counts[i]!));
      if (!rest) continue;
      const mills = box.mills + rest.mills;
      const better =
        !answer || mills < answer.mills || (mills === answer.mills && rest.boxes.length + 1 < answer.boxes.length);
      if (better) answer = { mills, boxes: [box, ...rest.boxes], exact: true };
    }
    best.set(key, answer);
    return answer;
  };

  /** Best fit, then single moves and merges while they save money. For banks too large for the exact search. */
  const roughly = (counts: readonly number[]): Packing | null => {
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
    for (let improved = true; improved; ) {
      improved = false;
      for (let a = 0; a < boxes.length && !improved; a++) {
        for (let b = a + 1; b < boxes.length && !improved; b++) {
          const pair = counts.map((_, i) => boxes[a]!.counts[i]! + boxes[b]!.counts[i]!);
          if (pair.reduce((s, n) => s * (n + 1), 1) > MOST_STATES) continue;
          const again = exact(pair);
          if (!again || again.mills >= boxes[a]!.mills + boxes[b]!.mills) continue;
          boxes.splice(b, 1);
          boxes.splice(a, 1, ...again.boxes);
          improved = true;
        }
      }
    }
    return { mills: boxes.reduce((s, b) => s + b.mills, 0), boxes, exact: false };
  };

  return {
    types,
    pack: (counts) => (counts.reduce((s, n) => s * (n + 1), 1) <= MOST_STATES ? exact(counts) : roughly(counts)),
  };
};
