import type { Id } from '../units/types';
import { fieldWords as say } from '../words/en/fields';
import { fromPointer, valueAt } from './pointer';
import type { Job } from './schema';

/** Names by which people know the things of a job: what a pointer or an id alone does not tell them. */

export const circuitName = (c: Job['circuits'][number]): string => say.circuit(c);

/** By its circuits; with its own id where two cables serve the same. */
export const cableName = (job: Job, homeRun: Id): string => {
  const servedBy = (id: Id) => job.homeRuns.find((h) => h.id === id)?.circuits ?? [];
  const circuits = job.circuits.filter((c) => servedBy(homeRun).includes(c.id));
  const alike = job.homeRuns.filter((h) => circuits.length > 0 && circuits.every((c) => servedBy(h.id).includes(c.id)));
  return say.cable({ id: homeRun, circuits: circuits.map(circuitName), only: alike.length < 2 });
};

const oldPanel = (job: Job, id: Id) => say.oldPanel({ id, only: job.enclosures.length === 1 });
const newPanel = (job: Job, option: string) => say.newPanel({ option, only: job.options.length === 1 });

/** 'the washer'; with its id where there are several of a kind. */
const ofKind = (list: readonly { readonly id: Id; readonly kind: string }[], id: Id): string | undefined => {
  const found = list.find((one) => one.id === id);
  return found && say.named({ kind: found.kind, id, only: list.filter((o) => o.kind === found.kind).length === 1 });
};

/** Whatever of the job has this id, by name; the id itself where nothing has. */
export const thingNamed = (job: Job, id: Id): string => {
  const { site } = job;
  const has = (list: readonly { readonly id: Id }[]) => list.some((one) => one.id === id);
  const option = job.options.find((o) => o.enclosure.id === id);
  const bay = site.bays.find((b) => b.id === id);
  return (
    ofKind(site.obstacles, id) ??
    ofKind(site.openings, id) ??
    (has(site.outline) ? say.wall({ id }) : undefined) ??
    (has(site.partitions) ? say.named({ kind: say.partition, id, only: site.partitions.length === 1 }) : undefined) ??
    (bay && say.named({ kind: say.bay[bay.state], id, only: false })) ??
    (has(site.areas) ? say.named({ kind: say.area, id, only: false }) : undefined) ??
    (has(site.framing) ? say.joists({ id, only: site.framing.length === 1 }) : undefined) ??
    (has(job.enclosures) ? oldPanel(job, id) : undefined) ??
    (option && newPanel(job, option.title)) ??
    (has(job.homeRuns) ? cableName(job, id) : undefined) ??
    (job.options.some((o) => o.pins.some((p) => p.id === id && p.pin === 'keep out')) ? say.keepOut : undefined) ??
    id
  );
};

/** The thing a pointer leads into, by name. */
const thingAt = (job: Job, steps: readonly string[]): string => {
  const [list, at, part] = steps;
  const id = (place: readonly string[]): Id => (valueAt(job, place) as { id?: Id } | undefined)?.id ?? place.join(' ');
  const circuit = list === 'circuits' ? job.circuits[Number(at)] : undefined;
  if (circuit) return circuitName(circuit);
  const option = list === 'options' ? job.options[Number(at)] : undefined;
  if (option) {
    const replaced = part === 'replaces' ? option.replaces[Number(steps[3])] : undefined;
    if (replaced) return oldPanel(job, replaced.enclosure);
    return part === 'enclosure' ? newPanel(job, option.title) : say.option(option);
  }
  const group = list === 'cableGroups' ? job.cableGroups[Number(at)] : undefined;
  if (group) return say.group(group);
  if (list === 'feeder') return at === 'from' && steps.at(-1) !== 'breakerAmps' ? say.feederSource : say.feeder;
  if (list === 'house')
    return at === 'loads' ? (ofKind(job.house.loads, id(steps.slice(0, 3))) ?? say.house) : say.house;
  if (list === 'code') return say.code;
  if (list === 'site') return thingNamed(job, id(steps.slice(0, 3)));
  return list === undefined ? say.job : thingNamed(job, id(steps.slice(0, 2)));
};

const fieldAt = (job: Job, steps: readonly string[]): string => {
  const attached = steps.indexOf('attached');
  if (attached >= 0) {
    const one = valueAt(job, steps.slice(0, attached + 2)) as { kind?: string } | undefined;
    if (one?.kind !== undefined)
      return say.hung({ kind: one.kind, asks: steps.at(-1) === 'becomes' ? 'becomes' : 'answer' });
  }
  const state = steps.find((step): step is 'now' | 'after' => step === 'now' || step === 'after') ?? null;
  const face = steps.find((step) => step === 'front' || step === 'back') ?? null;
  return say.field({ key: steps.at(-1) ?? '', ofJoists: steps[1] === 'framing', state, face });
};

/** A field of the job that something waits for, in one sentence: "Not known of Bath (circuit 3): breaker rating." */
export const fieldSentence = (job: Job, pointer: string): string => {
  const steps = fromPointer(pointer) ?? [pointer];
  const v = { thing: thingAt(job, steps), field: fieldAt(job, steps) };
  const value = valueAt(job, steps);
  if (value === undefined || value === null || value === 'unknown') return say.notKnown(v);
  return typeof value === 'object' || steps.includes('replaces')
    ? say.toAnswerOnly(v)
    : say.toAnswer({ ...v, value: String(value) });
};
