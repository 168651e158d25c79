import type { OrderLine, Plan } from '../facts/result';
import { formatFeetInches } from '../units/length';
import type { Id } from '../units/types';
import { closeoutWords } from '../words/en/closeout';
import { writeCsv } from './csv';

const say = closeoutWords.csv;

/** Every piece on a line of its own, under the coil it is cut from; lengths in inches and as written on the sheet. */
export const cutListCsv = (plan: Plan, tagOf: (homeRun: Id) => string): string =>
  writeCsv([
    [say.cable, say.coil, say.from, say.coilInches, say.homeRun, say.tag, say.pieceInches, say.piece, say.leftInches],
    ...plan.cuts.flatMap((cut) =>
      cut.coils.flatMap((coil, k) =>
        coil.pieces.map((piece) => [
          cut.cable,
          String(k + 1),
          coil.bought ? closeoutWords.bought : closeoutWords.stock,
          String(coil.length),
          piece.homeRun,
          tagOf(piece.homeRun),
          String(piece.length),
          formatFeetInches(piece.length),
          String(coil.left),
        ]),
      ),
    ),
  ]);

export const orderCsv = (order: readonly OrderLine[]): string =>
  writeCsv([
    [say.item, say.say, say.quantity, say.unit, say.leadDays],
    ...order.map((line) => [
      line.item,
      line.say,
      String(line.quantity),
      line.unit,
      line.leadDays === null ? '' : String(line.leadDays),
    ]),
  ]);
