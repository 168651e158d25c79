import { applyEdit } from '../../../src/job/applyEdit';
import { blankJob } from '../../../src/job/blankJob';
import type { CableGroup, Job } from '../../../src/job/schema';
import { type Applied, applyCells, type BadCells, type CellText } from '../../../src/screens/survey/grid/apply';
import { gridEdit } from '../../../src/screens/survey/grid/gridEdit';
import { demoJob } from '../job/demo';

export const NO_BAD: BadCells = new Map();

/** A room with one old panel and cable groups to it; no circuits. */
export const groupedJob = (groups: readonly string[] = ['g-north']): Job => {
  const washer = demoJob('washer');
  const panel = {
    ...washer.enclosures[0]!,
    id: 'old',
    on: { wall: 'north', face: 'front', left: 60, bottom: 48 } as const,
  };
  const group = (id: string): CableGroup => ({
    id,
    enclosure: 'old',
    path: [
      [60, 140, 80],
      [60, 100, 90],
    ],
    reachable: [],
    pivot: 20,
    drawsBack: true,
    entry: 'top',
    tails: { hot: 20, neutral: 22, ground: 18 },
  });
  const job = { ...blankJob({ id: 'j', on: '2026-03-01' }), enclosures: [panel], cableGroups: groups.map(group) };
  return taken(job, job);
};

/** What applied cells make of a job, through the job's own check: a grid may never hand over what it refuses. */
export const taken = (before: Job, after: Job, name = 'a change'): Job => {
  const edit = gridEdit(before, after, name);
  if (edit === null) return before;
  const result = applyEdit(before, edit);
  if (!result.ok) throw new Error(`${result.error.error.path}: ${result.error.error.say}`);
  return result.value;
};
export const write = (job: Job, cells: readonly CellText[], bad = NO_BAD): Applied & { readonly after: Job } => {
  const applied = applyCells(job, bad, cells);
  return { ...applied, after: taken(job, applied.job) };
};
