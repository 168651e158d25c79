import type { Place, Result } from '../src/facts/result';
import type { Job } from '../src/job/schema';
import { optionById } from '../src/job/site';
import { mapOption } from '../src/plan/map/mapFor';
import { BEST, mapSteps } from '../src/plan/map/mapSteps';
import { ranked } from '../src/plan/map/rank';
import { formatFeetInches } from '../src/units/length';
import { formatDollars } from '../src/units/money';
import { nameWords } from '../src/words/en/names';
import { planWords as say } from '../src/words/en/plan';

/** Where the panel can go, told of on stderr while it is worked out. */
export const withMap = (job: Job, output: Result, id: string | undefined): Result => {
  const option = id === undefined ? mapOption(job, output.advice) : optionById(job, id);
  if (!option) return { ...output, places: [] };
  const steps = mapSteps(job, option);
  for (;;) {
    const step = steps.next();
    if (step.done) return { ...output, places: step.value };
    const { done, of } = step.value;
    if (done % 50 === 0) console.error(`${option.id}: ${done} of ${of} places`);
  }
};

const name = ({ on, upright }: Place): string =>
  `${nameWords.wall({ name: nameWords.spoken(on.wall), back: on.face === 'back' })} ${formatFeetInches(on.left)}, ${formatFeetInches(on.bottom)} up${upright ? '' : ', upside down'}`;

/** The best places, one a line, and how many are barred. */
export const mapLines = (places: readonly Place[]): string[] => {
  const best = ranked(places).slice(0, BEST);
  const wide = Math.max(0, ...best.map((p) => name(p).length));
  return [
    '',
    say.bestPlaces({ clear: places.filter((p) => p.clear).length, of: places.length }),
    ...best.map(
      (p) =>
        `- ${name(p).padEnd(wide)}  ${formatDollars(p.cents ?? 0)}  AFCI ${p.afciAdded ?? 0}  spliced ${p.conductorsSpliced ?? '-'}`,
    ),
  ];
};
