import type { Circuit, Job } from '../../job/schema';
import { AFCI_LISTED } from '../../standards/editionsAfci';
import { byId } from '../../units/order';
import { type Id, isKnown } from '../../units/types';
import { cablePaths, cablesOf, isIdle, lineToNeutral, pathTo } from '../reading';
import type { FactsInYear } from '../rule';

/** Circuits with something connected, sorted by id. */
export const liveCircuits = ({ job }: FactsInYear): Id[] =>
  byId(job.circuits.filter((c) => !isIdle(c))).map((c) => c.id);

/** Fields that decide whether a circuit is inside the arc-fault rule and are not known, or name no room of the list. */
export const scopePaths = (job: Job, circuit: Circuit): string[] => {
  const path = (key: string) => pathTo(job, 'circuits', circuit.id, key);
  const unnamed = isKnown(circuit.serves) && circuit.serves.some((use) => AFCI_LISTED[use] === 'not named');
  return [
    ...(isKnown(circuit.amps) ? [] : [path('amps')]),
    ...(isKnown(circuit.serves) && !unnamed ? [] : [path('serves')]),
    ...(isKnown(lineToNeutral(job, circuit))
      ? []
      : cablesOf(job, circuit.id).flatMap((h) => cablePaths(job, h.id, h.cable, ['neutral', 'hots']))),
  ];
};

/** The two circuits of every shared neutral, the smaller id first, sorted. */
export const sharedPairs = (job: Job): [Circuit, Circuit][] =>
  byId(job.circuits).flatMap((circuit): [Circuit, Circuit][] => {
    const partner = job.circuits.find((c) => c.id === circuit.partner);
    return partner && circuit.id < partner.id ? [[circuit, partner]] : [];
  });
