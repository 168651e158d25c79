/**
 * Tells when a worker is no more. A worker that throws or cannot be loaded says so; one that was ended from outside, or
 * ended itself, says nothing: but then it lets go of a lock it held, and whoever waits for that lock knows.
 */
export const watchWorker = (worker: Worker, holds: () => Promise<string | null>, died: (say: string) => void): void => {
  worker.addEventListener('error', (event) => died(event.message || 'worker error'));
  worker.addEventListener('messageerror', () => died('message error'));
  const wait = async (): Promise<void> => {
    const lock = await holds();
    if (lock !== null) await navigator.locks.request(lock, () => died('the worker was ended'));
  };
  wait().catch(() => undefined); // without locks its errors are all there is to go by
};

/** In the worker: holds a lock of its own as long as it lives, and answers its name; null where there are no locks. */
export const holdForLife = (): Promise<string | null> => {
  if (!globalThis.navigator?.locks) return Promise.resolve(null);
  const name = `backboard worker ${crypto.randomUUID()}`;
  return new Promise((resolve) => {
    void navigator.locks.request(name, () => {
      resolve(name);
      return new Promise(() => undefined);
    });
  });
};
