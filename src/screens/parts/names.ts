import type { HomeRun, Job, OnWall } from '../../job/schema';
import type { Id } from '../../units/types';
import { nameWords as say } from '../../words/en/names';

/** Names of records as people read them; an id only where the job has nothing better. */

export const wallName = (on: Pick<OnWall, 'wall' | 'face'>): string =>
  say.wall({ name: say.spoken(on.wall), back: on.face === 'back' });

const numbersOf = (job: Job, run: HomeRun): string =>
  run.circuits
    .map((id) => job.circuits.find((c) => c.id === id)?.number ?? '')
    .filter((n) => n !== '')
    .join('/');

/** The numbers of its circuits, with a letter where several home runs have the same: `9b`, `1/2`. */
export const homeRunTag = (job: Job, id: Id): string => {
  const run = job.homeRuns.find((h) => h.id === id);
  const numbers = run && numbersOf(job, run);
  if (!numbers) return say.spoken(id);
  const alike = job.homeRuns.filter((h) => numbersOf(job, h) === numbers);
  if (alike.length === 1) return numbers;
  return `${numbers}${String.fromCharCode(97 + alike.findIndex((h) => h.id === id))}`;
};

/** Anything of the job by its id: circuit, home run, thing in the way, wall, panel, option. */
export const thingName = (job: Job, id: Id): string => {
  const circuit = job.circuits.find((c) => c.id === id);
  if (circuit) return say.circuit(circuit);
  if (job.homeRuns.some((h) => h.id === id)) return say.homeRun({ tag: homeRunTag(job, id) });
  const kind = job.site.obstacles.find((o) => o.id === id)?.kind;
  if (kind) return kind;
  if (job.enclosures.some((e) => e.id === id)) return say.oldPanel({ id: say.spoken(id) });
  if (job.cableGroups.some((g) => g.id === id)) return say.group({ id: say.spoken(id) });
  const option = job.options.find((o) => o.id === id || o.enclosure.id === id);
  return option?.title || say.spoken(id);
};

const HEADS: Readonly<Record<string, string>> = { feeder: say.feeder, house: say.house, site: say.site };

/** A pointer into the job as a person reads it: which thing, and what of it. `/circuits/19/amps`: Sump, breaker rating. */
export const pointerName = (job: Job, pointer: string): { readonly thing: string; readonly what: string } => {
  const steps = pointer.split('/').slice(1);
  const what = say.key(steps.findLast((step) => !/^\d+$/.test(step)) ?? '');
  let at: unknown = job;
  let thing: string | null = null;
  for (const step of steps) {
    at = (at as Record<string, unknown> | undefined)?.[step];
    if (at !== null && typeof at === 'object' && 'id' in at && typeof at.id === 'string')
      thing =
        steps[0] === 'house' && 'kind' in at && typeof at.kind === 'string'
          ? say.loadOf({ kind: at.kind })
          : thingName(job, at.id);
  }
  return { thing: thing ?? HEADS[steps[0] ?? ''] ?? say.job, what };
};
