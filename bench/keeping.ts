import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { applyEdit } from '../src/job/applyEdit';
import { push, startHistory, undo } from '../src/job/history';
import { openJob } from '../src/job/parse';
import { saveJob } from '../src/job/save';
import type { Job } from '../src/job/schema';
import { planOption } from '../src/plan/planOption';
import { basement } from './basement';
import { oneSweep } from './replan';
import { interleaved, type Line } from './rounds';

const EDITS = 1000;
const MOST_MB = 10;
const MOST_SWEEPS = 40;
/** A whole final plan of 66 circuits is long: fewer rounds than elsewhere. */
const ROUNDS = 7;

const collect = (): void => {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
};
const heapMb = (): number => {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
};
const renamed = (job: Job, title: string): Job => {
  const { on } = job.options[0]!.enclosure;
  const left = 60 + (Number(title) % 200);
  const moved = applyEdit(job, { edit: 'move panel', option: job.options[0]!.id, on: { ...on, left } });
  if (!moved.ok) throw new Error(moved.error.error.say);
  return moved.value;
};

/** B16: what a long day of editing leaves in memory, and how soon a job file is a plan. */
export const keepingLines = (): Line[] => {
  const job = basement(66);
  const text = saveJob(job);
  const opened = (): Job => {
    const read = openJob(text);
    if (!read.ok) throw new Error(read.error.error.say);
    return read.value.job;
  };
  const started = performance.now();
  const first = opened();
  planOption(first, first.options[0]!, 'final');
  const coldMs = performance.now() - started;

  let history = startHistory(job);
  const before = heapMb();
  for (let i = 0; i < EDITS; i++) {
    history = push(history, `edit ${i}`, renamed(history.now, String(i)));
    if (i % 10 === 9) history = undo(history);
  }
  const grown = heapMb() - before;
  const kept = history.past.length;

  const ms = interleaved(
    {
      sweep: oneSweep(job),
      parse: opened,
      openAndPlan: () => {
        const now = opened();
        return planOption(now, now.options[0]!, 'final');
      },
    },
    ROUNDS,
    1,
  );
  const sweeps = (ms.openAndPlan - ms.parse) / ms.sweep;
  return [
    {
      id: 'B16',
      what: `${EDITS} edits, each tenth undone: heap growth with ${kept} steps to undo`,
      goal: `≤ ${MOST_MB} MB`,
      measured: `${grown.toFixed(1)} MB`,
      ok: grown <= MOST_MB,
    },
    {
      id: 'B16',
      what: `job file of 66 circuits open to first plan, warm; parsing apart ${(ms.parse / ms.sweep).toFixed(1)} S`,
      goal: `≤ ${MOST_SWEEPS} S`,
      measured: `${sweeps.toFixed(1)} S`,
      ok: sweeps <= MOST_SWEEPS,
    },
    { id: 'B16', what: 'the same, cold', goal: 'printed', measured: `${(coldMs / ms.sweep).toFixed(0)} S`, ok: null },
  ];
};
