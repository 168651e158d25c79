import type { Box, Run } from '../facts/result';
import type { RuleFacts } from '../facts/ruling';
import { toPointer } from '../job/pointer';
import type { Circuit, Enclosure, HomeRun, Job, Option } from '../job/schema';
import type { Cable } from '../standards/cable';
import { byId } from '../units/order';
import { type Id, isKnown, type U } from '../units/types';

/** Finding things in the facts, and saying where in the job file a field stands. */

type Listed = 'circuits' | 'homeRuns' | 'enclosures' | 'options' | 'cableGroups';

/** JSON pointer of a field of a listed thing. */
export const pathTo = (job: Job, list: Listed, id: Id, ...keys: readonly (string | number)[]): string =>
  toPointer([list, (job[list] as readonly { readonly id: Id }[]).findIndex((thing) => thing.id === id), ...keys]);

/** The same for what the site lists. */
export const sitePath = (
  job: Job,
  list: 'outline' | 'partitions' | 'openings' | 'areas' | 'framing' | 'bays' | 'obstacles',
  id: Id,
  ...keys: readonly (string | number)[]
): string =>
  toPointer([
    'site',
    list,
    (job.site[list] as readonly { readonly id: Id }[]).findIndex((thing) => thing.id === id),
    ...keys,
  ]);

/** A panel that rules look at, with the way to its fields. */
export interface PanelRead {
  readonly panel: Enclosure;
  readonly path: (key: string) => string;
}
export const newPanel = ({ job, option }: { readonly job: Job; readonly option: Option }): PanelRead => ({
  panel: option.enclosure,
  path: (key) => pathTo(job, 'options', option.id, 'enclosure', key),
});

/** Old panels this option does away with or keeps in another role, sorted by id. */
export const oldPanels = ({ job, option }: { readonly job: Job; readonly option: Option }): Enclosure[] =>
  byId(job.enclosures.filter((e) => option.replaces.some((r) => r.enclosure === e.id)));

/** Old panels that go on holding breakers: kept as a subpanel, or with circuits left in them. */
export const keptPanels = (facts: RuleFacts): Enclosure[] =>
  oldPanels(facts).filter(
    (e) =>
      facts.option.replaces.some((r) => r.enclosure === e.id && r.becomes === 'subpanel') ||
      facts.runs.some(
        (run) =>
          run.way === 'stays on old panel' &&
          groupOf(facts.job, homeRunById(facts.job, run.homeRun))?.enclosure === e.id,
      ),
  );

/** The new panel and every old one that keeps breakers: what place rules are asked of. */
export const breakerPanels = (facts: RuleFacts): Id[] =>
  [facts.option.enclosure.id, ...keptPanels(facts).map((e) => e.id)].sort();

export const panelById = (facts: RuleFacts, id: Id): PanelRead => {
  if (facts.option.enclosure.id === id) return newPanel(facts);
  const panel = facts.job.enclosures.find((e) => e.id === id)!;
  return { panel, path: (key) => pathTo(facts.job, 'enclosures', id, key) };
};

export const circuitById = (job: Job, id: Id): Circuit => job.circuits.find((c) => c.id === id)!;
export const homeRunById = (job: Job, id: Id): HomeRun => job.homeRuns.find((h) => h.id === id)!;
export const groupOf = (job: Job, homeRun: HomeRun) => job.cableGroups.find((g) => g.id === homeRun.group);
export const runOf = (facts: RuleFacts, homeRun: Id): Run | undefined => facts.runs.find((r) => r.homeRun === homeRun);

/** The cables that carry a circuit, sorted by id. */
export const cablesOf = (job: Job, circuit: Id): HomeRun[] =>
  byId(job.homeRuns.filter((h) => h.circuits.includes(circuit)));

/** Nothing is connected to it. */
export const isIdle = (circuit: Circuit): boolean => circuit.flags.includes('dead') || circuit.flags.includes('spare');

/** Ways that join new conductors to old ones. */
const EXTENDED: ReadonlySet<Run['way']> = new Set(['cut-in', 'splice can', 'splice in new panel', 'through raceway']);
export const isExtended = (run: Run): boolean => EXTENDED.has(run.way) && run.newCable !== null;
export const isUntouched = (run: Run): boolean => run.way === 'stays' || run.way === 'stays on old panel';

/** Legs this job lays: new cable, and old cable drawn to a new place. */
export const laidLegs = (run: Run) =>
  isUntouched(run) ? [] : run.legs.filter((leg) => leg.cable === 'new' || run.way === 'reuse');
/** The cable that lies along those legs. */
export const laidCable = (job: Job, run: Run): Cable => run.newCable ?? homeRunById(job, run.homeRun).cable;
/** Where the fields of that cable come from: an extension takes after the old cable. */
export const cablePaths = (job: Job, homeRun: Id, cable: Cable, keys: readonly (keyof Cable)[]): string[] =>
  keys.filter((key) => !isKnown(cable[key])).map((key) => pathTo(job, 'homeRuns', homeRun, 'cable', key));

/** 'unknown' where any answer is unknown and none decides. */
export const either = (answers: readonly U<boolean>[]): U<boolean> =>
  answers.includes(true) ? true : answers.includes('unknown') ? 'unknown' : false;

/**
 * Is a load connected between a hot and the neutral? A two-pole breaker on a shared neutral feeds two 120 V circuits
 * whatever the surveyor wrote, so the cable is asked, not the poles.
 */
export const lineToNeutral = (job: Job, circuit: Circuit): U<boolean> => {
  if (circuit.volts !== 240 || circuit.partner !== null) return true;
  return either(
    cablesOf(job, circuit.id).map(({ cable }) =>
      cable.hots === 1 || cable.neutral === 'none'
        ? false
        : !isKnown(cable.neutral) || !isKnown(cable.hots)
          ? 'unknown'
          : true,
    ),
  );
};

/** Routing names the box of a cabinet kept for splices after the cabinet. */
export const canOf = (job: Job, box: Box): Enclosure | undefined =>
  box.on === 'splice can' ? job.enclosures.find((e) => box.id === `can-${e.id}` || box.id === e.id) : undefined;

/** Old panels kept for splices: because the option says so, or because splices are in them. */
export const spliceCans = (facts: RuleFacts): Enclosure[] =>
  byId(
    facts.job.enclosures.filter(
      (e) =>
        facts.option.replaces.some((r) => r.enclosure === e.id && r.becomes === 'splice can') ||
        facts.boxes.some((b) => canOf(facts.job, b)?.id === e.id),
    ),
  );
