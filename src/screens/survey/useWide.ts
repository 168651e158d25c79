import { useSyncExternalStore } from 'react';

/** The sheet has its right column beside the work, as the style of the frame says. */
const WIDE = '(min-width: 1200px) and (min-height: 640px)';
const follow = (changed: () => void): (() => void) => {
  const query = matchMedia(WIDE);
  query.addEventListener('change', changed);
  return () => query.removeEventListener('change', changed);
};
export const useWide = (): boolean => useSyncExternalStore(follow, () => matchMedia(WIDE).matches);
