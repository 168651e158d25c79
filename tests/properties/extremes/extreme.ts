import type { Plan } from '../../../src/facts/result';
import { checkJob } from '../../../src/job/parse';
import type { Job, Option } from '../../../src/job/schema';
import { demoJob } from '../../support/demos';

// biome-ignore lint/suspicious/noExplicitAny: the tables write any valid thing anywhere
export type Raw = any;

/** What a row expects besides a sound plan; each sentence it gives back is a fault. */
export type Expect = (v: {
  readonly job: Job;
  readonly plans: readonly Plan[];
  /** The plan of the option by its kind: 'in place' or 'relocate'. */
  readonly plan: (kind: Option['kind']) => Plan;
}) => readonly string[];

/** A valid job that no ordinary house is: what is changed in the small house, and what must come of it. */
export interface Extreme {
  readonly what: string;
  readonly change: (job: Raw) => void;
  readonly expect?: Expect;
}
export const extreme = (what: string, change: (job: Raw) => void, expect?: Expect | undefined): Extreme =>
  expect ? { what, change, expect } : { what, change };

/** A place where no panel may hang: some rule stops the relocation. */
export const stopped: Expect = ({ plan }) => must(plan('relocate').tally.stops > 0, 'nothing stops the relocation');
/** Every cable that has no way names this thing, and so does the price that is not whole. */
export const barredBy =
  (id: string, least = 1): Expect =>
  ({ job, plan }) => {
    const { runs, price } = plan('relocate');
    const blocked = runs.filter((r) => r.blockedBy.length > 0);
    return [
      ...must(blocked.length >= least, `${blocked.length} cables are blocked`),
      ...blocked.filter((r) => !r.blockedBy.includes(id)).map((r) => `${r.homeRun} names ${r.blockedBy}`),
      ...must(
        blocked.every((r) => price.missing.includes(`/homeRuns/${job.homeRuns.findIndex((h) => h.id === r.homeRun)}`)),
        `missing: ${price.missing}`,
      ),
    ];
  };
export const must = (holds: boolean, say: string): string[] => (holds ? [] : [say]);

/** The small house changed; a row that is not a valid job is a mistake of the table. */
export const changedJob = (row: Extreme): Job => {
  const job = structuredClone(demoJob('small-house')) as Raw;
  row.change(job);
  const checked = checkJob(job);
  if (!checked.ok) throw new Error(`${row.what}: ${checked.error.error.path} ${checked.error.error.say}`);
  return checked.value;
};

export const box = (id: string, corner: number[], size: number[], bottom = 0, more: Raw = {}) => ({
  id,
  kind: 'shelf',
  corner,
  turn: 0,
  size: { width: size[0], depth: size[1], height: size[2] },
  sizes: 'measured',
  bottom,
  blocksCable: true,
  blocksSpace: true,
  foreign: false,
  clearance: 1,
  exists: { now: true, after: true },
  stored: false,
  moveCents: null,
  ...more,
});
export const relocated = (job: Raw) => job.options.find((o: Raw) => o.kind === 'relocate');
/** The new panel of the relocation hung elsewhere. */
export const hang = (job: Raw, wall: string, left: number, bottom = 43, face = 'front') => {
  relocated(job).enclosure.on = { wall, face, left, bottom };
};
export const framing = (id: string, outline: Raw, direction: number, underside: number, more: Raw = {}) => ({
  id,
  outline,
  direction,
  firstJoist: 8,
  spacing: 16,
  depth: 7.25,
  kind: 'sawn',
  underside,
  ...more,
});
export const stud = { build: 'open studs', insulated: false };
export const partition = (id: string, from: number[], to: number[], more: Raw = {}) => ({
  id,
  from,
  to,
  thickness: 4.5,
  height: 84,
  exists: { now: true, after: true },
  front: { now: stud, after: stud },
  back: { now: stud, after: stud },
  studSpacing: 16,
  ...more,
});
export const whole = [
  [0, 0],
  [0, 144],
  [216, 144],
  [216, 0],
];
