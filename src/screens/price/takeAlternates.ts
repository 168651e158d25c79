import type { Plan } from '../../facts/result';
import type { Edit } from '../../job/edit';
import type { Job } from '../../job/schema';
import type { Id } from '../../units/types';

type Alternates = Plan['price']['alternates'];

/** As the job has it now, before the planner has followed; what the job does not say is as planned. */
export const isTaken = (job: Job, { id, required, taken }: Alternates[number]): boolean =>
  required || (job.alternates.find((a) => a.id === id)?.taken ?? taken);

/** Finishes and covers: one of each can be had. */
const ONE_OF: readonly (readonly Id[])[] = [
  ['white finish', 'finish to match'],
  ['solid cover', 'clear cover'],
];

const written = (job: Job, changes: ReadonlyMap<Id, boolean>): Job['alternates'] => [
  ...job.alternates.map((a) => ({ ...a, taken: changes.get(a.id) ?? a.taken })),
  ...[...changes].filter(([id]) => !job.alternates.some((a) => a.id === id)).map(([id, taken]) => ({ id, taken })),
];

/** An alternate taken or left, as one step that undo names; what cannot be had beside it is left with it. */
export const choose = (job: Job, id: Id, taken: boolean, name: string): Edit => {
  const beside = taken ? (ONE_OF.find((list) => list.includes(id)) ?? []).filter((other) => other !== id) : [];
  const left = beside.filter((other) => job.alternates.some((a) => a.id === other && a.taken));
  const changes = new Map([...left.map((other) => [other, false] as const), [id, taken] as const]);
  return { edit: 'set values', name, values: [{ path: '/alternates', value: written(job, changes) }] };
};

/** The alternates of a package taken, all others that packages offer left. */
export const choosePackage = (
  job: Job,
  plan: Plan,
  id: Plan['price']['packages'][number]['id'],
  name: string,
): Edit => {
  const { packages } = plan.price;
  const offered = new Set(packages.flatMap((p) => p.alternates));
  const its = new Set(packages.find((p) => p.id === id)?.alternates ?? []);
  const changes = new Map([...offered].map((other) => [other, its.has(other)] as const));
  return { edit: 'set values', name, values: [{ path: '/alternates', value: written(job, changes) }] };
};
