import { answerOf, quoted } from '../../job/questions';
import { ROOM_RULES as ROOMS } from '../../standards/editionsPlace';
import type { Use } from '../../standards/uses';
import { isKnown } from '../../units/types';
import { placeWords as say } from '../../words/en/rulesPlace';
import { sitePath } from '../reading';
import { cannotBeTold, type FactsInYear, holds, type Says, stops } from '../rule';
import type { Standing } from './placeReading';

const AMENDMENT = 'likeForLike';

const includes = (list: readonly Use[], use: Use): boolean => list.includes(use);

/** A room where breakers have no place, by what it is used for after the finishing. */
export const judgeRoom = (
  facts: FactsInYear,
  place: Standing,
  rule: keyof typeof ROOMS,
  words: { readonly fails: string; readonly ask: string; readonly holds: (v: { use: string }) => string },
): Says => {
  const { room } = place;
  const use = room?.state.after.use ?? 'unknown';
  if (!isKnown(use))
    return cannotBeTold(say.roomUnknown(), say.roomLook(), [
      room ? sitePath(facts.job, 'areas', room.id, 'state', 'after', 'use') : '/site/areas',
    ]);
  const { barred, ask } = ROOMS[rule];
  if (includes(barred, use) && facts.option.kind === 'in place' && answerOf(facts.job, AMENDMENT)?.answer === 'yes')
    return holds(say.likeForLike({ use }), { amendment: quoted(facts.job, AMENDMENT) });
  if (includes(barred, use))
    return stops(words.fails, {
      remedies: [{ say: say.otherPlace(), cents: null, work: [] }],
      amendment: facts.option.kind === 'in place' ? quoted(facts.job, AMENDMENT) : null,
    });
  return includes(ask, use) ? cannotBeTold(words.ask, say.askLook(), []) : holds(words.holds({ use }));
};
