import { createContext, useContext, useSyncExternalStore } from 'react';
import type { JobActions, JobState } from '../state/jobState';
import type { JobStore } from '../state/jobStore';
import type { Rescue } from './Crash';
import type { Host } from './host';

interface Session {
  readonly store: JobStore;
  readonly host: Host;
  readonly rescue: Rescue;
}
const SessionContext = createContext<Session | null>(null);
export const SessionProvider = SessionContext.Provider;

const useSession = (): Session => {
  const session = useContext(SessionContext);
  if (!session) throw new Error('No session around this screen');
  return session;
};

/** A part of the state; the selector answers the same object as long as nothing changed. */
export const useJobState = <T>(select: (state: JobState) => T): T => {
  const { store } = useSession();
  return useSyncExternalStore(store.subscribe, () => select(store.getState()));
};
export const useActions = (): JobActions => useSession().store.actions;
export const useHost = (): Host => useSession().host;
export const useRescue = (): Rescue => useSession().rescue;
