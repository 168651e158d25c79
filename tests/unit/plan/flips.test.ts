import { expect, test } from 'vitest';
import { setValue } from '../../../src/job/change';
import type { Job, Option } from '../../../src/job/schema';
import { recommended } from '../../../src/plan/decision';
import { planJob } from '../../../src/plan/planJob';
import { planOption } from '../../../src/plan/planOption';
import { byId } from '../../../src/units/order';
import { demoJob } from '../../support/demos';
import { homeRun, NEW_PANEL, room } from '../routing/smallRoom';
import { washerCase } from './map/washerCase';

/** The job after a flip, planned from nothing. */
const after = (job: Job, { path, value }: { readonly path: string; readonly value: unknown }) => {
  const key = path.match(/^\/code\/amendments\/(.+)$/)?.[1];
  const changed = key
    ? { ...job, code: { ...job.code, amendments: { ...job.code.amendments, [key]: value as string } } }
    : (() => {
        const set = setValue(job, path, value);
        if (!set.ok) throw new Error(set.error.error.say);
        return set.value as Job;
      })();
  return recommended(byId(changed.options).map((o) => planOption(changed, o).plan));
};

/** Ten cables through the ceiling to a panel across the room, or spliced to one beside the old can. */
const throughCeiling = (now: 'drywall' | 'open joists', cables: number): Job => {
  const { job, option } = room({ homeRuns: Array.from({ length: cables }, (_, i) => homeRun(`h${i}`)) });
  const state = { use: 'laundry', ceiling: 92, floorRise: 0 } as const;
  const cover = { now: { ...state, cover: now }, after: { ...state, cover: 'drywall' } } as const;
  const beside: Option = {
    ...option,
    id: 'beside',
    enclosure: { ...NEW_PANEL, id: 'other', on: { wall: 'w0', face: 'front', left: 20, bottom: 36 } },
    replaces: [{ enclosure: 'old', becomes: 'program chooses' }],
  };
  const areas = job.site.areas.map((a) => ({ ...a, state: cover }));
  return { ...job, site: { ...job.site, areas }, options: [{ ...option, id: 'across' }, beside] };
};
/** The near place is barred by the washer, which nobody has thought of moving. */
const washerLeft = (): Job => {
  const job = washerCase(10_000);
  return { ...job, options: job.options.map((o) => ({ ...o, moves: [] })) };
};

/** Job, and the changes that must be among its flips with the option they lead to. */
const cases: readonly (readonly [string, Job, readonly (readonly [string, string])[]])[] = [
  ['small house', demoJob('small-house'), []],
  ['washer demo', demoJob('washer'), []],
  [
    'washer before the near place, moved',
    washerCase(20_000),
    [
      ['/code/amendments/afciOnPanelReplacement', 'far'],
      ['/priceBook', 'far'],
      ['/options/1/enclosure/on/left', 'far'],
    ],
  ],
  ['washer before the near place, dear to move', washerCase(40_000), [['/priceBook', 'near']]],
  ['washer before the near place, left there', washerLeft(), [['/options/1/moves', 'near']]],
  [
    'drywall in the way',
    throughCeiling('drywall', 10),
    [
      ['/site/areas', 'across'],
      ['/code/amendments/spliceCan', 'across'],
    ],
  ],
  ['drywall to come', throughCeiling('open joists', 4), [['/site/areas', 'beside']]],
];

test.each(cases)(
  'every flip, applied and planned from nothing, gives the option and the difference it says: %s',
  (_name, job, must) => {
    const { plans, advice } = planJob(job);
    const best = recommended(plans);
    for (const flip of advice.flips) {
      const winner = after(job, flip.change);
      expect([flip.say, winner?.option ?? null]).toEqual([flip.say, flip.option]);
      expect((winner?.tally.likelyCents ?? 0) - (best?.tally.likelyCents ?? 0)).toBe(flip.cents);
    }
    const found = advice.flips.map((f) => `${f.change.path} ${f.option}`);
    for (const [path, option] of must) expect(found).toContain(`${path} ${option}`);
  },
  60_000,
);
