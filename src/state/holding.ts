import type { StoreApi } from 'zustand/vanilla';
import type { JobState } from './jobState';
import type { Ports } from './ports';

/** A tab that is just being left gives its entry up a moment later; only after that is it said to be open elsewhere. */
const PATIENCE_MS = 300;

/**
 * One tab holds a kept job, the others that opened it look on: they follow what is kept there, and a change made in one
 * of them becomes a job of its own. When the holder is closed, the next one holds it.
 */
export const makeHolding = (store: StoreApi<JobState>, ports: Ports, follow: (key: string) => Promise<void>) => {
  let held: string | null = null;
  let giveUp = (): void => undefined;
  let callOff = (): void => undefined;

  const hold = (key: string): void => {
    giveUp();
    callOff();
    held = key;
    let mine = false;
    callOff = ports.later(() => {
      if (!mine) store.setState({ elsewhere: true });
    }, PATIENCE_MS);
    giveUp = ports.tabs.hold(key, () => {
      mine = true;
      if (held !== key || !store.getState().elsewhere) return;
      store.setState({ elsewhere: false });
      void follow(key);
    });
  };
  store.subscribe(({ openKey }) => {
    if (openKey !== null && openKey !== held) hold(openKey);
  });
  ports.tabs.onTold((key) => {
    if (key === held && store.getState().elsewhere) void follow(key);
  });
};
