import type { CalcInput, CalcOutput } from '../calculations/types';
import type { Fault } from '../units/fault';
import { dollarsToCents } from '../units/money';
import { err, ok, type Result } from '../units/result';
import type { In } from '../units/types';
import { cutCalcWords as say } from '../words/en/calcCut';
import { pricingWords as words } from '../words/en/pricing';
import { type CutAnswer, solveCut } from './solve';

const MOST_PIECES = 5000;
const MOST_COILS = 200;

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const isPositive = (value: unknown): boolean => isNumber(value) && value > 0 && value <= 1e7;
const isCount = (value: unknown): boolean => isNumber(value) && Number.isInteger(value) && value >= 0;

/** The first thing wrong with what came in, which was typed by hand or by another program; null = nothing. */
const faultIn = (input: CalcInput['cut']): Fault | null => {
  const fault = (path: string, say: string): Fault => ({ error: { type: 'bad-input', path, say } });
  const { coils, pieces, keepFrom, remnantShare } = input;
  for (const [name, list, most] of [
    ['coils', coils, MOST_COILS],
    ['pieces', pieces, MOST_PIECES],
  ] as const) {
    if (!Array.isArray(list)) return fault(`/${name}`, words.cutNotList);
    if (list.length > most) return fault(`/${name}`, words.cutTooMany({ most }));
    for (const [i, entry] of (list as readonly { length?: unknown }[]).entries())
      if (!isPositive(entry?.length)) return fault(`/${name}/${i}/length`, words.cutNotPositive);
  }
  for (const [i, { dollars, have }] of coils.entries()) {
    if (!isNumber(dollars) || dollars < 0 || dollars > 1e7) return fault(`/coils/${i}/dollars`, words.cutNotDollars);
    if (have !== null && !isCount(have)) return fault(`/coils/${i}/have`, words.cutNotCount);
  }
  for (const [i, { count }] of pieces.entries())
    if (!isCount(count)) return fault(`/pieces/${i}/count`, words.cutNotCount);
  if (pieces.reduce((sum, { count }) => sum + count, 0) > MOST_PIECES)
    return fault('/pieces', words.cutTooMany({ most: MOST_PIECES }));
  if (keepFrom !== null && !isPositive(keepFrom)) return fault('/keepFrom', words.cutNotKeep);
  if (!isNumber(remnantShare) || remnantShare < 0 || remnantShare > 1) return fault('/remnantShare', words.cutNotShare);
  return null;
};

/** What is left of the coils used and not kept; a remnant kept is not waste. */
const wasteOf = (answer: CutAnswer, keepFrom: In | null): In =>
  answer.used
    .map(({ stock, pieces }) => stock.length - pieces.reduce((sum, piece) => sum + piece, 0))
    .filter((left) => keepFrom === null || left < keepFrom - 1e-9)
    .reduce((sum, left) => sum + left, 0);
/** Sums of decimals come back to a millionth of an inch. */
const tidy = (inches: In): In => Math.round(inches * 1e6) / 1e6;

/** Pocket calculation `cut`: the cheapest coils for a list of pieces, bought less usable remnants, and whether that is proven. */
export const calcCut = (input: CalcInput['cut']): Result<CalcOutput, Fault> => {
  const fault = faultIn(input);
  if (fault) return err(fault);
  const { coils, pieces, keepFrom, remnantShare } = input;
  const answer = solveCut({
    stocks: coils.map((coil, i) => ({ ...coil, id: String(i) })),
    pieces,
    keepFrom,
    remnantShare,
  });
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const total = tidy(pieces.reduce((sum, piece) => sum + piece.length * piece.count, 0));
  const step = (sentence: string, value: number | string, unit: string, section: string = say.arithmetic) => ({
    say: sentence,
    value,
    unit,
    section,
  });
  const asked = [step(say.pieces({ list: pieces }), count, 'each'), step(say.total, total, 'in')];
  if (typeof answer === 'string') {
    const longest = Math.max(0, ...coils.filter((coil) => coil.have !== 0).map((coil) => coil.length));
    const why = {
      'too long': words.cutTooLong({ longest: String(longest) }),
      'too little': words.cutTooLittle,
      undecided: words.cutUndecided,
    }[answer];
    return ok({
      outcome: answer === 'undecided' ? 'cannot be told' : 'fails',
      figures: { why: answer },
      worked: { id: 'cut', value: total, unit: 'in', steps: [...asked, step(why, answer, '')] },
    });
  }
  const outlayCents = dollarsToCents(answer.outlay);
  const netCents = dollarsToCents(answer.net);
  const cut = new Map<string, number>();
  for (const { stock, pieces: ps } of answer.used) {
    const left = tidy(stock.length - ps.reduce((sum, p) => sum + p, 0));
    const kept = keepFrom !== null && left >= keepFrom - 1e-9;
    const sentence = say.coil({ length: stock.length, pieces: ps, left, kept });
    cut.set(sentence, (cut.get(sentence) ?? 0) + 1);
  }
  const prices = [...new Set(answer.used.map(({ stock }) => stock.dollars))];
  const parts = prices.map((dollars) => ({
    dollars,
    count: answer.used.filter(({ stock }) => stock.dollars === dollars).length,
  }));
  return ok({
    outcome: 'value',
    figures: {
      outlayCents,
      netCents,
      wasteIn: tidy(wasteOf(answer, keepFrom)),
      proven: answer.proven,
      boundCents: dollarsToCents(answer.bound),
    },
    worked: {
      id: 'cut',
      value: netCents,
      unit: 'cents',
      steps: [
        ...asked,
        ...[...cut].map(([sentence, times]) => step(sentence, times, 'each', say.method)),
        step(say.outlay({ parts }), outlayCents, 'cents'),
        ...(outlayCents === netCents
          ? []
          : [step(say.kept({ share: remnantShare }), outlayCents - netCents, 'cents', say.practice)]),
        step(say.net, netCents, 'cents'),
        step(say.bound({ proven: answer.proven }), dollarsToCents(answer.bound), 'cents', say.method),
      ],
    },
  });
};
