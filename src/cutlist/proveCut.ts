import type { Solve, SolverModel } from '../facts/routing';
import { type Coil, type CutAsk, netOf, PER_DOLLAR, type Whole } from './model';
import { NEAR } from './remnants';
import { answered, type CutAnswer, type NoCut, prepared } from './solve';

/** Stopped by count and never by time, so that two machines prove the same. */
const NODE_LIMIT = 20_000;
/** Lengths are put to the solver on this scale; its answer is counted again in whole numbers. */
const SCALE = 1000;

const term = (coefficient: number, name: string): string =>
  `${coefficient < 0 ? '-' : '+'} ${Math.abs(coefficient)} ${name}`;

/**
 * Every piece assigned to a coil (Kantorovich, 1939 and 1960): y = coil used, q = pieces of a length in it, r = remnant
 * kept, z = it is long enough. Coils of one stock are used in order. No more coils of a stock than the pieces, or than
 * `net`, an answer already known, could pay for.
 */
export const modelOf = (whole: Whole, net: number): SolverModel => {
  const { stocks, pieces, keep } = whole;
  const remnants = Number.isFinite(keep);
  const longest = Math.max(...stocks.map((s) => s.length));
  const scaled = (length: number): number => (length * SCALE) / longest;
  const many = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const objective: string[] = [];
  const rows: string[] = [];
  const [binaries, integers]: [string[], string[]] = [[], []];
  const placed = pieces.map(() => [] as string[]);

  stocks.forEach(({ length, price, have, rate }, i) => {
    const keeps = remnants && rate > 0;
    const least = keeps ? price - rate * length : price;
    const affordable = Number.isFinite(net) && least > 0 ? Math.floor((net + NEAR) / least) : many;
    for (let k = 0; k < Math.min(have, many, affordable); k++) {
      const [y, z, r] = [`y${i}_${k}`, `z${i}_${k}`, `r${i}_${k}`];
      const held = pieces.flatMap((piece, p) => (piece.length <= length ? [{ p, name: `q${i}_${k}_${p}` }] : []));
      if (held.length === 0) continue;
      binaries.push(y);
      objective.push(term(price / PER_DOLLAR, y));
      for (const { p, name } of held) {
        integers.push(name);
        placed[p]!.push(name);
      }
      const cut = held.map(({ p, name }) => term(scaled(pieces[p]!.length), name)).join(' ');
      const some = held.map(({ name }) => `+ ${name}`).join(' ');
      rows.push(`${cut} ${keeps ? `+ ${r} ` : ''}${term(-scaled(length), y)} <= 0`, `${some} - ${y} >= 0`);
      if (keeps) {
        binaries.push(z);
        objective.push(term((-rate * longest) / SCALE / PER_DOLLAR, r));
        rows.push(`${r} ${term(-scaled(length), z)} <= 0`, `${r} ${term(-scaled(keep), z)} >= 0`);
      }
      if (k > 0) rows.push(`y${i}_${k - 1} - ${y} >= 0`);
    }
  });
  pieces.forEach(({ count }, p) => {
    rows.push(`${placed[p]!.map((name) => `+ ${name}`).join(' ')} = ${count}`);
  });
  const lp = [
    'Minimize',
    ` obj: ${objective.join('\n ')}`,
    'Subject To',
    ...rows.map((row, n) => ` c${n}: ${row}`),
    'General',
    ...integers.map((name) => ` ${name}`),
    'Binary',
    ...binaries.map((name) => ` ${name}`),
    'End',
  ].join('\n');
  return { lp, nodeLimit: NODE_LIMIT };
};

/** The solver's answer as a packing; null where it does not hold in whole numbers. */
const packingOf = (whole: Whole, values: Readonly<Record<string, number>>): readonly Coil[] | null => {
  const coils = new Map<string, { stock: number; counts: number[] }>();
  for (const [name, value] of Object.entries(values)) {
    const found = /^q(\d+)_(\d+)_(\d+)$/.exec(name);
    const count = Math.round(value);
    if (!found || count <= 0) continue;
    const key = `${found[1]}_${found[2]}`;
    const coil = coils.get(key) ?? { stock: Number(found[1]), counts: whole.pieces.map(() => 0) };
    coil.counts[Number(found[3])] = count;
    coils.set(key, coil);
  }
  const list = [...coils.values()];
  const fits = list.every(
    ({ stock, counts }) =>
      counts.reduce((sum, count, p) => sum + count * whole.pieces[p]!.length, 0) <= whole.stocks[stock]!.length,
  );
  const all = whole.pieces.every((piece, p) => list.reduce((sum, c) => sum + c.counts[p]!, 0) === piece.count);
  return fits && all ? list : null;
};

/**
 * An answer that our own search left open, put to the solver: replaced only by a strictly cheaper one, else with the
 * solver's bound. An answer that is proven is handed back as it is.
 */
export const proveCut = async (ask: CutAsk, own: CutAnswer | NoCut, solve: Solve): Promise<CutAnswer | NoCut> => {
  if (own === 'too long' || own === 'too little' || (own !== 'undecided' && own.proven)) return own;
  const { whole } = prepared(ask);
  const net = own === 'undecided' ? Number.POSITIVE_INFINITY : own.net * PER_DOLLAR;
  const said = await solve(modelOf(whole, net));
  if (said.status === 'failed') return own;
  if (said.status === 'stopped')
    return own === 'undecided' ? own : { ...own, bound: Math.min(own.net, Math.max(own.bound, said.bound)) };
  const coils = packingOf(whole, said.values);
  if (!coils) return own;
  const found = netOf(whole, coils);
  // what the solver calls optimal is so within its tolerance: a hundredth of a cent
  if (own !== 'undecided' && found >= net - 1) return { ...own, bound: own.net, proven: true };
  return answered(ask, coils, found);
};
