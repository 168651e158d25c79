import { boxNames, rowNames } from '../drawings/newWork';
import type { AfciEntry, Plan, Run, TimePlan } from '../facts/result';
import type { Job } from '../job/schema';
import { cableName } from '../standards/cableNames';
import type { Id } from '../units/types';
import { closeoutWords as say } from '../words/en/closeout';
import { compareWork } from './workOrder';

/** What a crew needs of one home run; `at` is its place in the result. */
export interface ScheduleRow {
  readonly run: Run;
  readonly at: number;
  readonly serves: string;
  readonly numbers: string;
  /** The cable that is there, by name. */
  readonly cable: string;
  /** The box it is spliced in: S1, the old can, the new panel; empty where none. */
  readonly box: string;
  readonly rows: string;
  /** Its circuits' strictest word on AFCI, with its place in the result. */
  readonly afci: { readonly at: number; readonly required: AfciEntry['required'] } | null;
}

const STRICTEST: readonly AfciEntry['required'][] = ['yes', 'inspector decides', 'cannot be told', 'no'];
const afciOf = (plan: Plan, circuits: readonly Id[]): ScheduleRow['afci'] =>
  plan.afci
    .map((entry, at) => ({ at, circuit: entry.circuit, required: entry.required }))
    .filter((entry) => circuits.includes(entry.circuit))
    .sort((a, b) => STRICTEST.indexOf(a.required) - STRICTEST.indexOf(b.required))[0] ?? null;

const boxOf = (plan: Plan, names: ReadonlyMap<Id, string>, id: Id | null): string => {
  if (id === null) return '';
  return names.get(id) ?? (plan.boxes.find((b) => b.id === id)?.on === 'new panel' ? say.newPanel : say.oldCan);
};

/** Cables that are left alone first, then by the way they take, so that like work stands together. */
const WAYS: readonly Run['way'][] = [
  'stays',
  'stays on old panel',
  'reuse',
  'cut-in',
  'splice can',
  'splice in new panel',
  'through raceway',
  'new home run',
];

export const scheduleOf = (job: Job, plan: Plan): ScheduleRow[] => {
  const boxes = boxNames(plan);
  const rows = rowNames(plan);
  return plan.runs
    .map((run, at): ScheduleRow => {
      const homeRun = job.homeRuns.find((h) => h.id === run.homeRun);
      const circuits = job.circuits.filter((c) => homeRun?.circuits.includes(c.id));
      const its = [...new Set(run.legs.flatMap((leg) => (leg.row === null ? [] : [leg.row])))];
      return {
        run,
        at,
        serves: circuits.map((c) => c.label).join(' · '),
        numbers: circuits.map((c) => c.number).join(', '),
        cable: homeRun ? cableName(homeRun.cable) : '',
        box: boxOf(plan, boxes, run.box),
        rows: its.map((id) => rows.get(id) ?? '').join(' '),
        afci: afciOf(plan, homeRun?.circuits ?? []),
      };
    })
    .sort((a, b) => WAYS.indexOf(a.run.way) - WAYS.indexOf(b.run.way) || a.at - b.at);
};

export const WHENS = ['before outage', 'outage', 'after'] as const;
export interface TaskOf {
  readonly task: TimePlan['byTask'][number];
  readonly at: number;
}
/** Tasks of one part of the day in the order of work, with their places in the result. */
export const tasksWhen = (plan: Plan, when: (typeof WHENS)[number]): TaskOf[] =>
  plan.time.byTask
    .map((task, at) => ({ task, at }))
    .filter(({ task }) => task.when === when)
    .sort((a, b) => compareWork(a.task.id, b.task.id));
