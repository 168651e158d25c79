import { useEffect, useSyncExternalStore } from 'react';
import type { Id } from '../../../units/types';
import type { BadCells } from './apply';

/** What was typed and not taken, by job: kept while another sheet is looked at, until the page is left. */
const kept = new Map<Id, BadCells>();
const listeners = new Set<() => void>();
const NONE: BadCells = new Map();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};
export const useBadCells = (job: Id): BadCells => useSyncExternalStore(subscribe, () => kept.get(job) ?? NONE);
export const keepBadCells = (job: Id, bad: BadCells): void => {
  kept.set(job, bad);
  for (const listener of listeners) listener();
};

/** Jobs whose grid shows text the job does not have: it goes with the page, so leaving is asked back. */
const owing = new Set<Id>();
const askBack = (event: BeforeUnloadEvent): void => event.preventDefault();
export const useAskBack = (job: Id, owes: boolean): void =>
  useEffect(() => {
    if (owes) owing.add(job);
    else owing.delete(job);
    if (owing.size > 0) addEventListener('beforeunload', askBack);
    else removeEventListener('beforeunload', askBack);
  }, [job, owes]);
