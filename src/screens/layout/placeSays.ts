import { circuitNumbers } from '../../drawings/mapModel';
import type { Place } from '../../facts/result';
import type { Job } from '../../job/schema';
import { formatFeetInches } from '../../units/length';
import { mapWords as say } from '../../words/en/map';
import { dollars } from '../parts/money';
import { wallName } from '../parts/names';

/** Where a place is, in words. */
export const placeName = ({ on, upright }: Place): string =>
  say.place({
    wall: wallName(on),
    left: formatFeetInches(on.left),
    bottom: formatFeetInches(on.bottom),
    down: !upright,
  });

/** What there is to know of a place: price, AFCI, splices; or what bars it. */
export const placeSays = (job: Job, place: Place): string[] => {
  const { clear, rules, why, cents, afciAdded, past, conductorsSpliced, grade } = place;
  if (!clear) return [say.barred({ rules: rules.join(', '), why })];
  if (cents === null) return [say.noWay];
  const price = dollars(cents);
  return [
    grade === 'splices only' ? say.about({ price }) : say.price({ price }),
    ...(afciAdded === null ? [] : [say.afci({ count: afciAdded, circuits: circuitNumbers(job, past) })]),
    ...(conductorsSpliced === null ? [] : [say.spliced({ count: conductorsSpliced })]),
  ];
};
