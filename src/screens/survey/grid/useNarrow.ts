import { useSyncExternalStore } from 'react';

/** Below this a grid of many columns is a keyhole. */
const QUERY = '(max-width: 699px)';
const subscribe = (tell: () => void): (() => void) => {
  const query = matchMedia(QUERY);
  query.addEventListener('change', tell);
  return () => query.removeEventListener('change', tell);
};
export const useNarrow = (): boolean => useSyncExternalStore(subscribe, () => matchMedia(QUERY).matches);
