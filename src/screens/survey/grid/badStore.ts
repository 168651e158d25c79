import { useSyncExternalStore } from 'react';
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
