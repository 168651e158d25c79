import { type AfciJudgement, type AfciQuestion, judgeAfci } from '../calculations/afciJudgement';
import type { AfciEntry, Run } from '../facts/result';
import type { AfciDemand } from '../facts/ruling';
import type { Circuit, Job, Option } from '../job/schema';
import { AFCI_EDITIONS, AFCI_EXEMPT_IN, AFCI_VOLTS, LENGTH_NOISE_IN } from '../standards/editionsAfci';
import { byId, compareText } from '../units/order';
import { EDITIONS, type Id, isKnown } from '../units/types';
import { circuitWords as say } from '../words/en/rulesCircuit';
import { gfciAdded } from './gfci';
import { cablesOf, isIdle, isUntouched, lineToNeutral } from './reading';

/** What the job knows of a circuit, before any work on its wiring. */
const questionOf = (job: Job, circuit: Circuit): AfciQuestion => {
  const toNeutral = lineToNeutral(job, circuit);
  return {
    edition: job.code.edition,
    volts: isKnown(toNeutral) ? (toNeutral ? AFCI_VOLTS : circuit.volts) : toNeutral,
    amps: circuit.amps,
    serves: isKnown(circuit.serves) ? [...circuit.serves] : circuit.serves,
    outsideIn: 0,
    tailsIn: 0,
    addsOutlet: circuit.addsOutlet,
    shortenedOnly: false,
    newHomeRun: false,
    amendments: job.code.amendments,
  };
};

/** What is done to one cable of a circuit; null where nobody touches it. */
const workOn = (option: Option, run: Run): Partial<AfciQuestion> | null => {
  if (isUntouched(run)) return null;
  if (run.way === 'new home run') return { newHomeRun: true, outsideIn: run.codeLength };
  // A panel changed where it hangs leaves the branch circuit as it was; one drawn back to a new place is cut shorter.
  if (run.way === 'reuse') return option.kind === 'in place' ? null : { shortenedOnly: true };
  return { outsideIn: run.codeLength, tailsIn: Math.max(0, run.codeLengthWithTails - run.codeLength) };
};

/** From what costs most to what costs nothing. */
const WEIGHT: readonly AfciEntry['required'][] = ['yes', 'cannot be told', 'inspector decides', 'no'];

export interface CircuitJudgement extends AfciJudgement {
  readonly circuit: Circuit;
  /** Of its longest extended home run, in. */
  readonly codeLength: number;
  readonly codeLengthWithTails: number;
  /** Is anything done to its wiring? */
  readonly touched: boolean;
  /** Lengths of its extended home runs, in, where each is excused by itself and all of them together are not; else empty. */
  readonly together: readonly number[];
}

/** The question asked of all extensions of a circuit as one, where there are several. */
const asOne = (works: readonly Partial<AfciQuestion>[]): Partial<AfciQuestion> | null => {
  const extended = works.filter((work) => work.outsideIn !== undefined && !work.newHomeRun);
  const sum = (of: (work: Partial<AfciQuestion>) => number | undefined) =>
    extended.reduce((total, work) => total + (of(work) ?? 0), 0);
  return extended.length > 1 ? { outsideIn: sum((w) => w.outsideIn), tailsIn: sum((w) => w.tailsIn) } : null;
};

/**
 * One circuit, judged by the home run that asks most of it. Whether the length that is excused is of each extension or
 * of the circuit the code does not say: several that pass it only together are for the inspector.
 */
export const judgeCircuit = (job: Job, option: Option, runs: readonly Run[], circuit: Circuit): CircuitJudgement => {
  const question = questionOf(job, circuit);
  const own = cablesOf(job, circuit.id).flatMap((h) => runs.filter((r) => r.homeRun === h.id));
  const works = own.flatMap((run) => workOn(option, run) ?? []);
  const asked = isIdle(circuit) ? [] : works;
  const untouched = judgeAfci({ ...question, addsOutlet: circuit.addsOutlet && !isIdle(circuit) });
  const judged = asked.length > 0 ? asked.map((work) => judgeAfci({ ...question, ...work })) : [untouched];
  const worst = [...judged].sort(
    (a, b) => WEIGHT.indexOf(a.required) - WEIGHT.indexOf(b.required) || Number(b.tapeIt) - Number(a.tapeIt),
  )[0]!;
  const whole = asOne(asked);
  const summed = worst.required === 'no' && whole !== null && judgeAfci({ ...question, ...whole }).required !== 'no';
  return {
    ...worst,
    required: summed ? 'inspector decides' : worst.required,
    together: summed ? asked.flatMap((work) => work.outsideIn ?? []) : [],
    tapeIt: judged.some((j) => j.tapeIt),
    circuit,
    codeLength: Math.max(0, ...own.map((r) => r.codeLength)),
    codeLengthWithTails: Math.max(0, ...own.map((r) => r.codeLengthWithTails)),
    touched: asked.length > 0 || circuit.addsOutlet,
  };
};

/** Does the breaker of this circuit guard against ground faults too: because it does today, or because it gains it? */
export const withGfci = (job: Job, circuit: Circuit, gained: readonly Id[]): boolean =>
  job.circuits
    .filter((c) => c.id === circuit.id || c.id === circuit.partner)
    .some((c) => c.protection === 'GFCI' || c.protection === 'AFCI and GFCI' || gained.includes(c.id));

const remedyOf = (job: Job, judged: CircuitJudgement, gained: readonly Id[]): string | null => {
  if (judged.required === 'no') return null;
  const devices = new Set(
    (isKnown(job.code.edition) ? [job.code.edition] : EDITIONS).map((edition) => AFCI_EDITIONS[edition].firstDevice),
  );
  // Only what every code year in question accepts is offered.
  const withSwitch = devices.size === 1 && devices.has('first receptacle or switch');
  return say.afciRemedy({
    withSwitch,
    shared: judged.circuit.partner !== null,
    hardWired: judged.circuit.hardWired === true,
    gfci: withGfci(job, judged.circuit, gained),
  });
};

/** One entry a circuit, every circuit, sorted by id. */
export const afciEntries = (job: Job, option: Option, runs: readonly Run[]): AfciEntry[] => {
  const gained = gfciAdded(job, runs);
  return byId(job.circuits).map((circuit) => {
    const judged = judgeCircuit(job, option, runs, circuit);
    return {
      circuit: circuit.id,
      required: judged.required,
      codeLength: judged.codeLength,
      tapeIt: judged.tapeIt,
      section: judged.section,
      remedy: remedyOf(job, judged, gained),
    };
  });
};

/** Circuits that one breaker serves: the two of a shared neutral stand together under a common trip. */
const underOneBreaker = (job: Job): Circuit[][] => {
  const circuits = byId(job.circuits).filter((c) => !isIdle(c));
  return circuits.flatMap((circuit): Circuit[][] => {
    const partner = circuits.find((other) => other.id === circuit.partner);
    if (!partner) return [[circuit]];
    return compareText(circuit.id, partner.id) < 0 ? [[circuit, partner]] : [];
  });
};

/** Conductors the crew leaves in box and panel: what a code length may be before tails are counted with it, in. */
const limitOf = (job: Job): number => {
  const limit = Math.min(...EDITIONS.map((edition) => AFCI_EXEMPT_IN[edition])) + LENGTH_NOISE_IN;
  const setting = job.code.amendments.afciCountsTails;
  const counts = setting === true || setting === 'yes';
  return counts ? limit - job.practice.freeInBox - job.practice.tailInPanel : limit;
};

/** A length nothing is shorter than: protection is asked for whatever the way. */
const NOTHING_ESCAPES_IN = -1;

/**
 * What routing is told before any route is known: which breakers turn dear when an extension grows too long. A code
 * year nobody knows is taken at its strictest.
 */
export const afciDemands = (job: Job, _option: Option): AfciDemand[] => {
  const relief = job.code.amendments.afciOnPanelReplacement === 'none';
  return underOneBreaker(job).map((circuits): AfciDemand => {
    const scopes = circuits.map((circuit) => ({ circuit, inScope: judgeAfci(questionOf(job, circuit)).inScope }));
    const asked = scopes.filter((s) => !relief || s.circuit.addsOutlet).map((s) => s.inScope);
    const inScope = asked.includes('yes') ? 'yes' : asked.includes('cannot be told') ? 'cannot be told' : 'no';
    const adds = scopes.some((s) => s.inScope !== 'no' && s.circuit.addsOutlet);
    const homeRuns = new Set<Id>(circuits.flatMap((c) => cablesOf(job, c.id).map((h) => h.id)));
    return {
      id: circuits[0]!.id,
      circuits,
      homeRuns: [...homeRuns].sort(compareText),
      inScope,
      limitIn: adds ? NOTHING_ESCAPES_IN : limitOf(job),
      atAnyLengthIfNewHomeRun: inScope !== 'no',
    };
  });
};
