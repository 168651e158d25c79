import type { Cut } from '../facts/result';
import type { Job } from '../job/schema';
import { parseLength } from '../units/length';
import { compareText } from '../units/order';
import { err, ok, type Result } from '../units/result';
import type { In } from '../units/types';

type Stock = Job['stock'];

/** By cable's trade name, each once, its lengths longest first; a cable of which nothing is left stands no more. */
const tidy = (lengths: ReadonlyMap<string, readonly In[]>): Stock =>
  [...lengths]
    .filter(([, list]) => list.length > 0)
    .sort(([a], [b]) => compareText(a, b))
    .map(([cable, list]) => ({ cable, lengths: [...list].sort((a, b) => b - a) }));

const byCable = (stock: Stock): Map<string, In[]> => {
  const out = new Map<string, In[]>();
  for (const { cable, lengths } of stock) {
    const name = cable.replace(/^cable:/, '');
    out.set(name, [...(out.get(name) ?? []), ...lengths]);
  }
  return out;
};

/** What lies in the truck when the job is cut: what was not used of it, and every remnant long enough to be used again. */
export const truckAfter = (stock: Stock, cuts: readonly Cut[]): Stock => {
  const lengths = byCable(stock);
  for (const { cable, coils } of cuts) {
    const list = lengths.get(cable) ?? [];
    for (const coil of coils) {
      const used = coil.bought ? -1 : list.indexOf(coil.length);
      if (used >= 0) list.splice(used, 1);
      if (coil.kept) list.push(coil.left);
    }
    lengths.set(cable, list);
  }
  return tidy(lengths);
};

/** `25', 18' 6"; 140`: lengths as typed, or the one that is none. */
export const readLengths = (text: string): Result<readonly In[], string> => {
  const words = text
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== '');
  const lengths: In[] = [];
  for (const word of words) {
    const read = parseLength(word);
    if (!read.ok || read.value <= 0) return err(word);
    lengths.push(read.value);
  }
  return ok(lengths);
};

/** The stock with a cable's lengths as typed; none takes the cable away. */
export const withLengths = (stock: Stock, cable: string, lengths: readonly In[]): Stock =>
  tidy(byCable(stock).set(cable.trim().replace(/^cable:/, ''), [...lengths]));
