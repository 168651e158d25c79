import type { Cut, FeederPlan, Run } from '../facts/result';
import type { Solve } from '../facts/routing';
import type { Job, PriceBook } from '../job/schema';
import type { Cable } from '../standards/cable';
import { cableTrade } from '../standards/cableNames';
import { dollarsToCents } from '../units/money';
import { compareText } from '../units/order';
import type { Id, In } from '../units/types';
import type { CutAsk, Stock } from './model';
import { proveCut } from './proveCut';
import { type CutAnswer, type NoCut, solveCut } from './solve';

const INCHES_PER_FOOT = 12;
/** A remnant of 15 ft or more gets used again and is worth half its price. Common practice, no source. */
export const KEEP_FROM: In = 15 * INCHES_PER_FOOT;
export const REMNANT_SHARE = 0.5;
/** The feeder's piece goes by this name. */
export const FEEDER = 'feeder';

export interface CutListAsk {
  readonly runs: readonly Pick<Run, 'homeRun' | 'newCable' | 'cutLength'>[];
  readonly feeder: { readonly cable: Cable; readonly length: In; readonly way: FeederPlan['way'] };
  readonly book: PriceBook;
  readonly stock: Job['stock'];
}
interface Piece {
  readonly homeRun: Id;
  readonly length: In;
}

/** Pieces by the cable they are cut from. A kept feeder needs none. */
const piecesOf = ({ runs, feeder }: CutListAsk): Map<string, Piece[]> => {
  const by = new Map<string, Piece[]>();
  const add = (cable: Cable, piece: Piece): void => {
    const name = cableTrade(cable);
    by.set(name, [...(by.get(name) ?? []), piece]);
  };
  for (const { homeRun, newCable, cutLength } of runs)
    if (newCable && cutLength > 0) add(newCable, { homeRun, length: cutLength });
  if (feeder.way !== 'kept' && feeder.length > 0) add(feeder.cable, { homeRun: FEEDER, length: feeder.length });
  return by;
};

/** Coils of a cable in the price book: `cable:12/2 NM@250`. */
const coilsIn = (book: PriceBook, cable: string): Stock[] =>
  book.materials.flatMap(({ id, dollars }) => {
    const feet = id.startsWith(`cable:${cable}@`) ? Number(id.slice(`cable:${cable}@`.length)) : 0;
    return feet > 0 && dollars >= 0 ? [{ id, length: feet * INCHES_PER_FOOT, dollars, have: null }] : [];
  });
const footOf = (book: PriceBook, cable: string): number | null =>
  book.materials.find(({ id, dollars }) => id === `cable:${cable}` && dollars >= 0)?.dollars ?? null;

/** Lengths of that cable in the truck, shortest first: they cost nothing and there is one of each. */
const truckOf = (stock: Job['stock'], cable: string): Stock[] =>
  stock
    .filter((entry) => entry.cable === cable || entry.cable === `cable:${cable}`)
    .flatMap((entry) => entry.lengths)
    .sort((a, b) => a - b)
    .map((length) => ({ id: 'truck', length, dollars: 0, have: 1 }));

const counted = (pieces: readonly Piece[]) => pieces.map(({ length }) => ({ length, count: 1 }));
const sum = (lengths: readonly In[]): In => lengths.reduce((all, length) => all + length, 0);

const proofOf = ({ proven, net, bound }: CutAnswer): Cut['proof'] =>
  // Where the bound is nothing the share is taken of a cent, so that it stays a number.
  proven ? { best: true } : { best: false, atMostAbove: (net - bound) / Math.max(bound, 0.01) };

/** Names the pieces again: of equal lengths the first id goes into the first coil. */
const named = (answer: CutAnswer, pieces: readonly Piece[], bought: (stock: Stock) => boolean): Cut['coils'] => {
  const waiting = [...pieces].sort((a, b) => b.length - a.length || compareText(a.homeRun, b.homeRun));
  return answer.used.map(({ stock, pieces: lengths }) => ({
    length: stock.length,
    bought: bought(stock),
    pieces: lengths.map(
      (length) =>
        waiting.splice(
          waiting.findIndex((piece) => piece.length === length),
          1,
        )[0]!,
    ),
    left: stock.length - sum(lengths),
    kept: stock.length - sum(lengths) >= KEEP_FROM,
  }));
};

/** Sold by the foot: one length for all that the truck does not hold, in whole feet. */
const byTheFoot = (
  cable: string,
  pieces: readonly Piece[],
  truck: readonly Stock[],
  dollarsAFoot: number,
): Cut | NoCut => {
  const feet = Math.ceil(sum(pieces.map((piece) => piece.length)) / INCHES_PER_FOOT);
  const reel: Stock = { id: 'reel', length: feet * INCHES_PER_FOOT, dollars: feet * dollarsAFoot, have: 1 };
  // What is not cut from the reel is not bought: the whole rest of it comes back at its price.
  const answer = solveCut({ stocks: [...truck, reel], pieces: counted(pieces), keepFrom: 1e-6, remnantShare: 1 });
  if (typeof answer === 'string') return answer;
  const coils = named(answer, pieces, (stock) => stock.id === reel.id).map((coil) => {
    if (!coil.bought) return coil;
    const cut = sum(coil.pieces.map((piece) => piece.length));
    const length = Math.ceil(cut / INCHES_PER_FOOT - 1e-9) * INCHES_PER_FOOT;
    return { ...coil, length, left: length - cut, kept: false };
  });
  const boughtFeet = sum(coils.filter((coil) => coil.bought).map((coil) => coil.length)) / INCHES_PER_FOOT;
  return { cable, coils, cents: dollarsToCents(dollarsAFoot, boughtFeet), proof: proofOf(answer) };
};

const askOf = (ask: CutListAsk, cable: string, pieces: readonly Piece[]): CutAsk => ({
  stocks: [...truckOf(ask.stock, cable), ...coilsIn(ask.book, cable)],
  pieces: counted(pieces),
  keepFrom: KEEP_FROM,
  remnantShare: REMNANT_SHARE,
});
const fromCoils = (cable: string, pieces: readonly Piece[], answer: CutAnswer): Cut => ({
  cable,
  coils: named(answer, pieces, (stock) => stock.id !== 'truck'),
  cents: dollarsToCents(answer.net),
  proof: proofOf(answer),
});

/**
 * Every cable with its pieces, cut from coils and from what is in the truck. `cents` is what is paid less the worth of
 * usable remnants, which the search makes least. A cable neither sold nor in the truck has no entry: the price names it
 * as missing.
 */
export const cutList = (ask: CutListAsk): Cut[] =>
  [...piecesOf(ask)]
    .sort(([a], [b]) => compareText(a, b))
    .flatMap(([cable, pieces]): Cut[] => {
      const truck = truckOf(ask.stock, cable);
      const answer = solveCut(askOf(ask, cable, pieces));
      if (typeof answer !== 'string') return [fromCoils(cable, pieces, answer)];
      const foot = footOf(ask.book, cable);
      const cut = foot === null ? answer : byTheFoot(cable, pieces, truck, foot);
      return typeof cut === 'string' ? [] : [cut];
    });

/** The same with what our own search left open put to the solver; the list itself where nothing is open. */
export const proveCutList = async (ask: CutListAsk, cuts: readonly Cut[], solve: Solve): Promise<readonly Cut[]> => {
  if (cuts.every((cut) => cut.proof.best)) return cuts;
  const pieces = piecesOf(ask);
  const out: Cut[] = [];
  for (const cut of cuts) {
    const cutAsk = askOf(ask, cut.cable, pieces.get(cut.cable) ?? []);
    const own = cut.proof.best ? 'too long' : solveCut(cutAsk);
    const proven = await proveCut(cutAsk, own, solve);
    out.push(typeof proven === 'string' ? cut : fromCoils(cut.cable, pieces.get(cut.cable)!, proven));
  }
  return out;
};

/** A cable whose longest piece no coil, no length in the truck and no foot on sale can give. */
export interface Uncut {
  readonly cable: string;
  readonly piece: In;
  /** The longest there is to cut it from. */
  readonly coil: In;
}
/** Cables with pieces and no cut, where there is something to cut them from: it is too short. */
export const uncut = (ask: CutListAsk, cuts: readonly Cut[]): Uncut[] =>
  [...piecesOf(ask)].flatMap(([cable, pieces]) => {
    const lengths = [...truckOf(ask.stock, cable), ...coilsIn(ask.book, cable)].map((stock) => stock.length);
    if (lengths.length === 0 || cuts.some((cut) => cut.cable === cable)) return [];
    return [{ cable, piece: Math.max(...pieces.map((p) => p.length)), coil: Math.max(...lengths) }];
  });
