import type { Host } from '../screens/host';
import type { JobStore } from '../state/jobStore';

/** What the browser answers, as far as it answers at all. */
export const keptHow: Host['keptHow'] = async () => {
  const { storage } = navigator;
  const answer = async <T>(ask: (() => Promise<T>) | undefined): Promise<T | null> => {
    try {
      return ask ? await ask() : null;
    } catch {
      return null; // not allowed here: it cannot be told, and that is said
    }
  };
  const room = await answer(storage && (() => storage.estimate()));
  return {
    promised: await answer(storage && (() => storage.persisted())),
    usedBytes: room?.usage ?? null,
    ofBytes: room?.quota ?? null,
  };
};

/** Asks the browser to keep jobs for good, once, when the first one has been kept: a person is at work here. */
export const askToKeep = (store: JobStore): void => {
  const stop = store.subscribe(() => {
    if (store.getState().keeping.phase !== 'kept') return;
    stop();
    // what it answers is read where it is shown
    navigator.storage?.persist?.().catch((reason: unknown) => console.warn('Not asked to keep jobs for good:', reason));
  });
};
