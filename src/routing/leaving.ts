import type { In } from '../units/types';
import { longestSpur, mayBend } from './cutIn';
import { runPoints } from './existingRuns';
import type { HomeRunFacts } from './homeRunFacts';
import type { Network, RunPoint } from './types';

/** Home runs with the same way, tail and reachable part leave their run alike. */
export const spurKey = (f: HomeRunFacts): string => f.alike;

/** Off its run a cable is drawn back out of its holes, so it must be known that it can be. */
export const mayLeave = (f: HomeRunFacts): boolean => f.group.drawsBack === true && mayBend(f.homeRun);

/** Where a cable may be taken off its run, and how much of it there is to give. */
export const leavings = (network: Network, f: HomeRunFacts): { readonly at: RunPoint; readonly give: In }[] =>
  runPoints(network, f.id).flatMap((at) => {
    const give = longestSpur(at.chain, f.tail, f.group.reachable);
    return give >= 0 ? [{ at, give }] : [];
  });
