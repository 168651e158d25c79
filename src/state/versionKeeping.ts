import type { StoreApi } from 'zustand/vanilla';
import { troubleOf } from '../storage/shelf';
import type { JobState } from './jobState';
import type { Ports } from './ports';

interface State {
  readonly at: string;
  /** The job file without pictures. */
  readonly text: string;
}
/** The program puts a state by at most so often, by itself. */
const APART_MS = 10 * 60_000;

/** Puts states of the open job by: the one it was opened in, then one every ten minutes of work. */
export const makeVersionKeeping = (store: StoreApi<JobState>, ports: Ports) => {
  let before: State | null = null;
  let last: string | null = null;

  return {
    start(opened: State | null): void {
      before = opened;
      last = null;
    },
    /** After `now` has been kept in the entry. A version that cannot be put by is told beside the versions. */
    async after(key: string, now: State): Promise<void> {
      const due = before ?? (last === null || Date.parse(now.at) - Date.parse(last) < APART_MS ? null : now);
      before = null;
      last ??= now.at;
      if (!due) return;
      last = now.at;
      try {
        await ports.shelf.addVersion(key, { ...due, name: null });
        store.setState({ noVersions: null });
      } catch (reason) {
        store.setState({ noVersions: troubleOf(reason).message });
      }
    },
  };
};
