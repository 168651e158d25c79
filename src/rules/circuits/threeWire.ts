import type { RuleFacts } from '../../facts/ruling';
import type { Circuit, Job } from '../../job/schema';
import { isThreeWire } from '../../standards/threeWire';
import { type Id, isKnown, type U } from '../../units/types';
import { cablePaths, cablesOf, either, lineToNeutral, pathTo } from '../reading';
import type { FactsInYear } from '../rule';
import { liveCircuits } from './circuitReading';

/** Two-pole circuits of one cable pair's own: what a range or a dryer of old hangs on. Shared-neutral partners are not. */
export const twoPole = (facts: FactsInYear): Id[] =>
  liveCircuits(facts).filter((id) => {
    const circuit = facts.job.circuits.find((c) => c.id === id)!;
    return circuit.poles !== 1 && circuit.partner === null;
  });

/** Does a load of this circuit use the neutral, with no separate EGC beside it? */
export const threeWire = (job: Job, circuit: Circuit): U<boolean> => {
  if (lineToNeutral(job, circuit) === false) return false;
  return either(cablesOf(job, circuit.id).map((h) => isThreeWire(h.cable)));
};

export const threeWirePaths = (job: Job, circuit: Circuit): string[] =>
  cablesOf(job, circuit.id).flatMap((h) => cablePaths(job, h.id, h.cable, ['hots', 'neutral', 'ground']));

export const hasBareNeutral = (job: Job, circuit: Circuit): boolean =>
  cablesOf(job, circuit.id).some((h) => h.cable.neutral === 'bare');

/** New conductors all the way, with an insulated neutral and an EGC. */
export const isRunAnew = (facts: Pick<RuleFacts, 'job' | 'runs'>, circuit: Circuit): boolean =>
  cablesOf(facts.job, circuit.id).every((h) => {
    const run = facts.runs.find((r) => r.homeRun === h.id);
    return run?.way === 'new home run' && run.newCable?.neutral === 'insulated' && run.newCable.ground === true;
  });

/** Will the panel be a subpanel? The other panel's role decides for circuits left where they are. */
export const onSubpanel = (facts: FactsInYear): U<boolean> => {
  const { role } = facts.option.enclosure;
  return isKnown(role) ? role === 'feeder-fed' : 'unknown';
};
export const rolePath = ({ job, option }: FactsInYear): string =>
  pathTo(job, 'options', option.id, 'enclosure', 'role');
