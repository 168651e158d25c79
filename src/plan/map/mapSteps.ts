import type { Place } from '../../facts/result';
import type { Job, Option } from '../../job/schema';
import { compareText } from '../../units/order';
import { type Planned, planOption } from '../planOption';
import { stageOf } from '../stages';
import { furtherSpots, whyAt } from './furtherChoices';
import { barredAt, laidAt, plannedAt, relocated, type Spot } from './lookAt';
import { positionsOf } from './positions';
import { cheaper, placeKey, ranked } from './rank';
import { type Spliced, splicesOnly } from './splicesOnly';

/** Places planned again cold and whole: the first of these is the position offered. */
export const BEST = 10;
/** Places whose other heights are tried. */
const FURTHER_AT = 5;

/** `done` of `of` places are planned; places that are new or say something new since the step before, by `placeKey`. */
export interface MapProgress {
  readonly done: number;
  readonly of: number;
  readonly changed: readonly Place[];
}

/** Direct cost → likely price, as in the option's own plan. */
const loadedOf = ({ plan }: Planned): number => {
  const direct = plan.price.lines
    .filter((l) => l.kind !== 'overhead' && l.kind !== 'profit' && l.kind !== 'tax')
    .reduce((sum, l) => sum + l.likelyCents, 0);
  return direct > 0 ? plan.tally.likelyCents / direct : 1;
};

/** At once: what is barred and by what; where nothing is, about what it comes to with every cable spliced. */
const firstLook = (job: Job, option: Option, own: Planned): Place[] => {
  const reckon = splicesOnly(stageOf(job, option, 'live'));
  const here = reckon(option.enclosure.on).mills;
  const loaded = loadedOf(own);
  const { upright } = option.enclosure;
  const estimate = (spot: Spot, { mills, past }: Spliced): Place => ({
    ...spot,
    clear: true,
    rules: [],
    why: '',
    cents:
      Number.isFinite(mills) && Number.isFinite(here)
        ? own.plan.tally.likelyCents + Math.round(((mills - here) * loaded) / 10)
        : null,
    afciAdded: past.length,
    past,
    conductorsSpliced: null,
    grade: 'splices only',
  });
  return positionsOf(job, option).map(({ on, why }) => {
    const spot = { on, upright };
    return barredAt(job, option, spot, why, own.facts) ?? estimate(spot, reckon(on));
  });
};

/**
 * Where the option's new panel can go: every step and both ends of every clear stretch of every wall face, first as an
 * estimate with every cable spliced where it lies, then each clear place planned at live grade, the most promising
 * first; then other heights and upside down at the best; at last the best planned cold and whole. Whoever drives the
 * generator may stop after any step and keep what there is.
 */
export function* mapSteps(job: Job, asked: Option): Generator<MapProgress, Place[]> {
  const option = relocated(asked);
  const base = laidAt(job, option, { on: option.enclosure.on, upright: option.enclosure.upright });
  const own = planOption(base.job, base.option, 'live');
  const first = firstLook(base.job, base.option, own);
  const places = new Map(first.map((p) => [placeKey(p), p]));
  const clear = first
    .filter((p) => p.clear)
    .sort((a, b) => (a.cents === null ? 1 : 0) - (b.cents === null ? 1 : 0) || cheaper(a, b));
  let done = 0;
  let of = clear.length + Math.min(BEST, clear.length);
  const step = (place: Place): MapProgress => {
    places.set(placeKey(place), place);
    return { done, of, changed: [place] };
  };
  yield { done, of, changed: first };

  for (const spot of clear) {
    const place = plannedAt(base.job, base.option, spot, 'live');
    done++;
    yield step(place);
  }
  const further = ranked([...places.values()])
    .slice(0, FURTHER_AT)
    .flatMap((best) => furtherSpots(option, best));
  of += further.length;
  for (const spot of further) {
    const shut = barredAt(base.job, base.option, spot, whyAt(base.job, base.option, spot), own.facts);
    done++;
    yield step(shut ?? plannedAt(base.job, base.option, spot, 'live'));
  }
  for (const spot of ranked([...places.values()]).slice(0, BEST)) {
    const place = plannedAt(base.job, base.option, spot, 'final');
    done++;
    yield step(place);
  }
  return [...places.values()].sort(
    (a, b) =>
      compareText(a.on.wall, b.on.wall) ||
      compareText(a.on.face, b.on.face) ||
      a.on.bottom - b.on.bottom ||
      a.on.left - b.on.left ||
      Number(b.upright) - Number(a.upright),
  );
}
