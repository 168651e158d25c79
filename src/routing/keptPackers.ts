import type { BoxKind } from '../facts/routing';
import { type FillOf, makePacker, type Packer, type SpliceLoad } from './packing';

/** Options of a job, and the same job asked again with one thing changed, mostly pack the same cables into the same boxes. */
const MOST_KEPT = 6;
const kept = new Map<string, Packer>();

/** A packer for the same cables, boxes, prices and code year is the same packer: what it has found out stays found. */
export const packerFor = (
  loads: readonly SpliceLoad[],
  kinds: readonly BoxKind[],
  fill: FillOf,
  price: Parameters<typeof makePacker>[3],
  edition: number | 'unknown',
): Packer => {
  const connectors = [...new Set(loads.flatMap((l) => l.connectors))].sort();
  const key = JSON.stringify([
    edition,
    [...new Set(loads.map((l) => l.key))].sort(),
    kinds.map((k) => [k, price.box(k)]),
    connectors.map((size) => [size, price.connector(size)]),
  ]);
  const known = kept.get(key) ?? makePacker(loads, kinds, fill, price);
  kept.delete(key);
  kept.set(key, known);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return known;
};
