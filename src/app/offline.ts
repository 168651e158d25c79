/** Keeps the app usable without a network from the first load on, and says when a newer version waits. */
type Ready = (load: () => void) => void;
const listeners = new Set<Ready>();
let waiting: (() => void) | null = null;

const announce = (worker: ServiceWorker): void => {
  waiting = () => {
    // a running edit is never swapped under: only when the person says so
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    worker.postMessage('change over');
  };
  for (const ready of listeners) ready(waiting);
};

export const onUpdate = (ready: Ready): (() => void) => {
  listeners.add(ready);
  if (waiting) ready(waiting);
  return () => listeners.delete(ready);
};

export const goOffline = async (): Promise<void> => {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const registration = await navigator.serviceWorker
    .register('./sw.js', { updateViaCache: 'none' })
    .catch((reason: unknown) => {
      console.warn('Not kept for use without a network:', reason); // the app itself works all the same
      return undefined;
    });
  if (!registration) return;
  if (registration.waiting && navigator.serviceWorker.controller) announce(registration.waiting);
  registration.addEventListener('updatefound', () => {
    const next = registration.installing;
    next?.addEventListener('statechange', () => {
      if (next.state === 'installed' && navigator.serviceWorker.controller) announce(next);
    });
  });
};
