import { useCallback, useSyncExternalStore } from 'react';

/** As narrow as a phone. */
export const NARROW = '(max-width: 599px)';

/** Does the page match a media query now? */
export const useMedia = (query: string): boolean => {
  const subscribe = useCallback(
    (told: () => void) => {
      const media = matchMedia(query);
      media.addEventListener('change', told);
      return () => media.removeEventListener('change', told);
    },
    [query],
  );
  return useSyncExternalStore(subscribe, () => matchMedia(query).matches);
};
