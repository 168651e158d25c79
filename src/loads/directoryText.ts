import type { Circuit } from '../job/schema';
import { byId } from '../units/order';
import { type Id, isKnown } from '../units/types';
import { directoryWords as say } from '../words/en/directory';

/**
 * Labels that tell what kind of thing hangs on a circuit and not which: the directory has to name every circuit by a
 * clear, evident and specific purpose, told apart from all others (408.4(A)). The list is common practice, no source.
 */
const GENERAL =
  /^(lights?|lighting|receptacles?|outlets?|plugs?|rooms?|misc\.?|miscellaneous|general|house|circuit|other|unknown|\?*)$/i;

const roomsOf = (c: Circuit): string[] => (isKnown(c.serves) ? [...new Set(c.serves)].sort() : []);

const alone = (c: Circuit): string => {
  const label = c.label.trim();
  const rooms = roomsOf(c);
  if (label === '') return rooms.length > 0 ? say.rooms({ rooms }) : say.untraced({ number: c.number });
  return GENERAL.test(label) && rooms.length > 0 ? say.where({ label, rooms }) : label;
};

/** The directory's text of every circuit: specific, and no two alike. */
export const directoryTexts = (circuits: readonly Circuit[]): ReadonlyMap<Id, string> => {
  const texts = byId(circuits).map((c) => ({ c, text: alone(c) }));
  const times = new Map<string, number>();
  for (const { text } of texts) times.set(text.toLowerCase(), (times.get(text.toLowerCase()) ?? 0) + 1);
  return new Map(
    texts.map(({ c, text }) => [
      c.id,
      times.get(text.toLowerCase()) === 1 || c.number === '' ? text : say.numbered({ label: text, number: c.number }),
    ]),
  );
};
