import type { Count } from '../calculations/types';
import type { BoxKind } from '../facts/routing';
import type { Mills } from '../units/money';
import { compareText } from '../units/order';
import { makeRoughPacker } from './roughPacking';

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
/**
 * Most spliced cables in one box, whatever its volume allows: room for hands and for their entries. Two in a 4 in square
 * box, four in a deep 4-11/16, from eight on a 12 × 12 screw-cover box. Common practice, no source.
 */
const MOST_CABLES: readonly (readonly [below: number, most: number])[] = [
  [42, 2],
  [100, 4],
  [500, 7],
  [Number.POSITIVE_INFINITY, 16],
];
export const mostCables = (kind: Pick<BoxKind, 'volumeIn3'>): number =>
  MOST_CABLES.find(([below]) => kind.volumeIn3 < below)![1];

export interface Packer {
  readonly types: readonly SpliceLoad[];
  /** Cheapest boxes for so many cables of each type; null = some cable fits no box of the catalogue. */
  pack(counts: readonly number[]): Packing | null;
  /** No boxes for these cost less; found at once. */
  floor(counts: readonly number[]): Mills;
}

/** Packings of up to this many different remainders are exact; a larger bank is packed well, not proven. */
const MOST_REMAINDERS = 512;
const NOISE = 1e-9;
/** Mills: keeps a bound below what it bounds whatever the rounding of sums. */
const FLOOR_NOISE = 1e-3;
/** Counts below 64 of up to eight types make one exact whole number. */
const RADIX = 64;
const MOST_DIGITS = 8;

const merged = (lists: readonly (readonly Count[])[], times: readonly number[]): Count[] => {
  const sum = new Map<string, number>();
  lists.forEach((list, i) => {
    for (const c of list) if (times[i]! > 0) sum.set(c.awg, (sum.get(c.awg) ?? 0) + c.count * times[i]!);
  });
  return [...sum].map(([awg, count]) => ({ awg, count })).sort((a, b) => compareText(a.awg, b.awg));
};

/**
 * Volume a cable takes at least, in any company, cu in.: its conductors, and each ground at the price of a further one
 * (a shared allowance of the largest ground is never less than that).
 */
export const leastVolume = (load: SpliceLoad, fill: FillOf): number => {
  const alone = fill({ conductors: load.conductors, grounds: [], clamps: false }) ?? 0;
  let grounds = 0;
  for (const g of load.grounds) {
    const of = (count: number) => fill({ conductors: [], grounds: [{ awg: g.awg, count }], clamps: false }) ?? 0;
    grounds += g.count * Math.max(0, of(5) - of(4));
  }
  return alone + grounds;
};

/** Is a packing of these exact? */
const isExact = (counts: readonly number[]): boolean =>
  counts.reduce((product, n) => product * (n + 1), 1) <= MOST_REMAINDERS;

const total = (counts: readonly number[]) => {
  let n = 0;
  for (const c of counts) n += c;
  return n;
};

/** A kind of box with its price and how many cables it takes for the room for hands. */
export interface Kind {
  readonly box: BoxKind;
  readonly mills: Mills;
  readonly most: number;
}

/**
 * Packs cables into boxes at one spot for the least money. Fill is not additive (grounds share allowances), so each box
 * is judged by the true function. Exact: the box that takes the first cable left may be taken as full as it goes with
 * what is left (moving a cable into it costs nothing), so only the fullest contents of each kind are tried, and what is
 * left over is solved once for every remainder. Results are remembered across spots.
 */
export const makePacker = (
  loads: readonly SpliceLoad[],
  kinds: readonly BoxKind[],
  fill: FillOf,
  price: { readonly box: (kind: BoxKind) => Mills; readonly connector: (size: string) => Mills },
): Packer => {
  const types = [...new Map(loads.map((l) => [l.key, l])).values()].sort((a, b) => compareText(a.key, b.key));
  const entries = types.map((t) => t.connectors.reduce((sum, size) => sum + price.connector(size), 0));
  const catalogue: Kind[] = [...kinds]
    .sort((a, b) => price.box(a) - price.box(b) || a.volumeIn3 - b.volumeIn3 || compareText(a.size, b.size))
    .map((box) => ({ box, mills: price.box(box), most: mostCables(box) }));
  /** Counts as one key: a whole number while it is exact, else a text. */
  const codeOf = (counts: readonly number[]): number | string =>
    counts.length <= MOST_DIGITS ? counts.reduce((sum, n) => sum * RADIX + n, 0) : counts.join();

  const fills = [new Map<number | string, number>(), new Map<number | string, number>()] as const;
  const fillOf = (counts: readonly number[], clamps: boolean): number => {
    const kept = fills[clamps ? 1 : 0];
    const code = codeOf(counts);
    const known = kept.get(code);
    if (known !== undefined) return known;
    const lists = (of: 'conductors' | 'grounds') =>
      merged(
        types.map((t) => t[of]),
        counts,
      );
    const found =
      fill({ conductors: lists('conductors'), grounds: lists('grounds'), clamps }) ?? Number.POSITIVE_INFINITY;
    kept.set(code, found);
    return found;
  };
  const fits = (kind: Kind, counts: readonly number[], n: number): boolean =>
    n <= kind.most && fillOf(counts, kind.box.clamps) <= kind.box.volumeIn3 + NOISE;
  const boxOf = (kind: Kind, counts: readonly number[]): PackedBox => ({
    kind: kind.box,
    fillIn3: fillOf(counts, kind.box.clamps),
    counts,
    mills: kind.mills + (kind.box.clamps ? 0 : counts.reduce((sum, n, i) => sum + n * entries[i]!, 0)),
  });

  /** The fullest contents of one box of a kind, out of what is left, that take the first cable left. */
  const fullest = (kind: Kind, left: readonly number[], first: number, found: (part: number[]) => void) => {
    const part = left.map(() => 0);
    /** Could one more of a type that was passed over go in, even with all that may still follow? Then it is not full. */
    const notFull = (i: number): boolean => {
      const most = part.map((n, j) => (j > i ? left[j]! : n));
      const n = total(most);
      for (let j = first; j <= i; j++) {
        if (part[j] === left[j] || n + 1 > kind.most) continue;
        most[j]!++;
        const could = fits(kind, most, n + 1);
        most[j]!--;
        if (could) return true;
      }
      return false;
    };
    const go = (i: number, n: number) => {
      if (i === left.length) {
        found([...part]);
        return;
      }
      while (part[i]! < left[i]!) {
        part[i]!++;
        if (fits(kind, part, n + part[i]!)) continue;
        part[i]!--;
        break;
      }
      for (const least = i === first ? 1 : 0; part[i]! >= least && !notFull(i); part[i]!--) go(i + 1, n + part[i]!);
      part[i] = 0;
    };
    go(first, 0);
  };

  const least = types.map((t) => leastVolume(t, fill));
  /** Of a box's price the least that falls to one cable: by volume, and by the room for hands. */
  const shareBy = (share: (kind: Kind, i: number) => number) =>
    types.map((_, i) =>
      Math.min(...catalogue.map((k) => k.mills * share(k, i) + (k.box.clamps ? 0 : entries[i]!)), Number.MAX_VALUE),
    );
  const byVolume = shareBy((kind, i) => least[i]! / (kind.box.volumeIn3 + NOISE));
  const byRoom = shareBy((kind) => 1 / kind.most);
  const cheapestBox = Math.min(...catalogue.map((k) => k.mills));
  const floor = (counts: readonly number[]): Mills => {
    let [volume, room, n] = [0, 0, 0];
    for (let i = 0; i < counts.length; i++) {
      volume += counts[i]! * byVolume[i]!;
      room += counts[i]! * byRoom[i]!;
      n += counts[i]!;
    }
    return n === 0 ? 0 : Math.max(cheapestBox, volume, room) - FLOOR_NOISE;
  };

  const best = new Map<number | string, Packing | null>();
  const exact = (left: readonly number[]): Packing | null => {
    const first = left.findIndex((n) => n > 0);
    if (first < 0) return { mills: 0, boxes: [], exact: true };
    const code = codeOf(left);
    const known = best.get(code);
    if (known !== undefined) return known;
    let answer: Packing | null = null;
    for (const kind of catalogue)
      fullest(kind, left, first, (part) => {
        const box = boxOf(kind, part);
        const over = left.map((n, i) => n - part[i]!);
        if (answer && box.mills + floor(over) > answer.mills) return;
        const rest = exact(over);
        if (!rest) return;
        const mills = box.mills + rest.mills;
        if (!answer || mills < answer.mills || (mills === answer.mills && rest.boxes.length + 1 < answer.boxes.length))
          answer = { mills, boxes: [box, ...rest.boxes], exact: true };
      });
    best.set(code, answer);
    return answer;
  };

  /** The cheapest one box for these, or null. */
  const oneBox = (counts: readonly number[]): PackedBox | null => {
    const n = total(counts);
    const kind = catalogue.find((k) => fits(k, counts, n));
    return kind ? boxOf(kind, counts) : null;
  };

  const roughly = makeRoughPacker({
    catalogue,
    fits,
    oneBox,
    exact: (counts) => (isExact(counts) ? exact(counts) : null),
  });
  const rough = new Map<number | string, Packing | null>();
  return {
    types,
    floor,
    pack: (counts) => {
      if (isExact(counts)) return exact(counts);
      const code = codeOf(counts);
      const known = rough.get(code);
      if (known !== undefined) return known;
      const found = roughly(counts);
      rough.set(code, found);
      return found;
    },
  };
};
