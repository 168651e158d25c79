import type { Circuit, HomeRun, Job } from '../../../job/schema';
import type { Id } from '../../../units/types';
import { UNKNOWN_CABLE } from './cableText';

/** The lowest free name: c-01, c-02 …. */
const freeId = (prefix: string, taken: readonly { readonly id: Id }[]): Id => {
  const ids = new Set(taken.map((r) => r.id));
  for (let n = 1; ; n++) {
    const id = `${prefix}-${String(n).padStart(2, '0')}`;
    if (!ids.has(id)) return id;
  }
};
export const freeCircuitId = (job: Job): Id => freeId('c', job.circuits);
export const freeHomeRunId = (job: Job): Id => freeId('h', job.homeRuns);

/** A circuit of which nothing is known. One pole until something else is said: a record must have poles. */
export const blankCircuit = (id: Id): Circuit => ({
  id,
  number: '',
  label: '',
  poles: 1,
  volts: 120,
  amps: 'unknown',
  partner: null,
  serves: 'unknown',
  va: 'unknown',
  continuous: 'unknown',
  protection: 'unknown',
  addsOutlet: false,
  hardWired: 'unknown',
  flags: [],
});

/** A cable of which only its group is known. */
export const blankHomeRun = (id: Id, group: Id, circuits: readonly Id[]): HomeRun => ({
  id,
  group,
  circuits,
  cable: UNKNOWN_CABLE,
  ownPath: null,
  ownPivot: null,
  ownTails: null,
  wholeLength: 'unknown',
  traced: false,
  condition: [],
});
