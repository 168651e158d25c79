import { ROOM_RULES as ROOMS } from '../../standards/editionsPlace';
import type { Use } from '../../standards/uses';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { sitePath } from '../reading';
import { cannotBeTold, type FactsInYear, holds, type Says, stops } from '../rule';
import type { Standing } from './placeReading';

const includes = (list: readonly Use[], use: Use): boolean => list.includes(use);

/** A room where breakers have no place, by what it is used for after the finishing. */
export const judgeRoom = (
  facts: FactsInYear,
  place: Standing,
  rule: keyof typeof ROOMS,
  words: { readonly fails: string; readonly ask: string },
): Says => {
  const { room } = place;
  const use = room?.state.after.use ?? 'unknown';
  if (!isKnown(use))
    return cannotBeTold(say.roomUnknown(), say.roomLook(), [
      room ? sitePath(facts.job, 'areas', room.id, 'state', 'after', 'use') : '/site/areas',
    ]);
  const { barred, ask } = ROOMS[rule];
  if (includes(barred, use))
    return stops(words.fails, { remedies: [{ say: say.otherPlace(), cents: null, work: [] }] });
  return includes(ask, use) ? cannotBeTold(words.ask, say.askLook(), []) : holds(say.roomHolds({ use }));
};
