import type { Place } from '../../facts/result';
import type { RuleFacts } from '../../facts/ruling';
import { thingNamed } from '../../job/names';
import type { Job, OnWall, Option } from '../../job/schema';
import { turned } from '../../job/turned';
import { compareText } from '../../units/order';
import { fieldWords } from '../../words/en/fields';
import { planWords as say } from '../../words/en/plan';
import { barsThePlace } from '../barred';
import { type Planned, planOption } from '../planOption';
import type { Position } from './positions';

/** Where, how high and which way up. */
export interface Spot {
  readonly on: OnWall;
  readonly upright: boolean;
}

/** The map asks of a relocation: an option in place, seen elsewhere, is one. */
export const relocated = (option: Option): Option => ({ ...option, kind: 'relocate' });

/** The job with an option's new panel at a place. */
export const laidAt = (job: Job, option: Option, { on, upright }: Spot): { job: Job; option: Option } => {
  const laid = { ...option, enclosure: { ...turned(option.enclosure, upright), on } };
  return { job: { ...job, options: job.options.map((o) => (o.id === option.id ? laid : o)) }, option: laid };
};

const barred = (spot: Spot, rules: readonly string[], why: string): Place => ({
  ...spot,
  clear: false,
  rules: [...new Set(rules)].sort(compareText),
  why,
  cents: null,
  afciAdded: null,
  past: [],
  conductorsSpliced: null,
  grade: null,
});

/** What stands against a place before any cable has a way; null where nothing does. `facts`: of the option anywhere. */
export const barredAt = (
  job: Job,
  option: Option,
  spot: Spot,
  why: Position['why'],
  facts: RuleFacts,
): Place | null => {
  const laid = laidAt(job, option, spot);
  const verdicts = barsThePlace({ ...facts, ...laid });
  if (verdicts.length === 0 && why === null) return null;
  const said = [...new Set(verdicts.map((v) => v.say))].join(' ');
  return barred(
    spot,
    verdicts.map((v) => v.rule),
    said === '' ? say.inTheWay({ thing: why! }) : said,
  );
};

/** The option planned there. */
export const plannedAt = (job: Job, option: Option, spot: Spot, grade: 'live' | 'final'): Place => {
  const laid = laidAt(job, option, spot);
  return placeOf(spot, planOption(laid.job, laid.option, grade), grade, laid.job);
};

const placeOf = (spot: Spot, { plan }: Planned, grade: 'live' | 'final', job: Job): Place => {
  const stops = plan.findings.filter((f) => f.effect === 'stops the job');
  const blocked = plan.runs.filter((r) => r.blockedBy.length > 0);
  const figures = {
    cents: plan.tally.likelyCents,
    afciAdded: plan.tally.afciAdded,
    past: plan.afci.filter((a) => a.required === 'yes').map((a) => a.circuit),
    conductorsSpliced: plan.tally.conductorsSpliced,
    grade,
  };
  if (stops.length === 0 && blocked.length === 0) return { ...spot, clear: true, rules: [], why: '', ...figures };
  const ways = blocked.map((r) =>
    say.unreachable({
      cable: thingNamed(job, r.homeRun),
      by: fieldWords.list(r.blockedBy.map((id) => thingNamed(job, id))),
    }),
  );
  const rules = stops.map((f) => f.rule);
  return barred(spot, rules, [...new Set([...stops.map((f) => f.say), ...ways])].join(' '));
};
