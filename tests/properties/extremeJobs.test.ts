import { describe, expect, test } from 'vitest';
import { advise } from '../../src/plan/advise';
import { planOption } from '../../src/plan/planOption';
import { cases } from '../support/effort';
import { planFaults } from '../support/planFaults';
import { CABLES, PINS } from './extremes/cables';
import { CEILINGS } from './extremes/ceilings';
import { EMPTIES } from './extremes/empties';
import { changedJob, type Extreme } from './extremes/extreme';
import { MONEY } from './extremes/money';
import { PANELS } from './extremes/panels';

/** Jobs that no ordinary house is, and that a file may hold: each is planned without holes, and in bounded time. */

/** Processor time, five times what the slowest takes: a bound on the work and not on the machine. */
const MOST_MS = 40_000;

const check = (row: Extreme) => {
  const job = changedJob(row);
  const started = process.cpuUsage();
  const plans = job.options.map((o) => planOption(job, o).plan);
  const took = process.cpuUsage(started).user / 1000;
  const plan: Parameters<NonNullable<Extreme['expect']>>[0]['plan'] = (kind) =>
    plans.find((p) => job.options.some((o) => o.id === p.option && o.kind === kind))!;
  const advice = advise(job, plans, () => plans);
  return [
    ...plans.flatMap((p, i) => planFaults(job, job.options[i]!, p).map((f) => `${p.option}: ${f}`)),
    ...(advice.say.length > 0 ? [] : ['the advice says nothing']),
    ...(plans.find((p) => p.option === advice.option)?.runs.some((r) => r.blockedBy.length > 0)
      ? ['a blocked one is recommended']
      : []),
    ...(took < MOST_MS ? [] : [`took ${Math.round(took)} ms`]),
    ...(row.expect?.({ job, plans, plan }) ?? []),
  ];
};

const TABLES: Readonly<Record<string, readonly Extreme[]>> = {
  'lists that are empty': EMPTIES,
  panels: PANELS,
  'ceilings and things': CEILINGS,
  cables: CABLES,
  pins: PINS,
  'prices and practice': MONEY,
};

describe.each(Object.entries(TABLES))('%s', (_name, rows) => {
  // every third one; `npm run hard` plans them all
  test.each(rows.filter((_, i) => i % cases(3, 1) === 0))('$what', (row) => {
    expect(check(row)).toEqual([]);
  });
});
