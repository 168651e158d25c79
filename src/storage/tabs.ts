/** What tabs of one browser say to each other about a kept job. */
export interface Tabs {
  /**
   * Holds an entry for this tab as soon as no other tab holds it; `mine` is called then. Answers what gives it up, also
   * while it is still waited for.
   */
  hold(key: string, mine: () => void): () => void;
  /** Tells the other tabs that an entry has been kept anew, or that the list has changed. */
  tell(key: string): void;
  onTold(hear: (key: string) => void): () => void;
}

const CHANNEL = 'backboard jobs';

/** By the browser's own locks and broadcasts; where there are no locks, every tab holds what it opens. */
export const browserTabs = (): Tabs => {
  const channel = new BroadcastChannel(CHANNEL);
  return {
    hold(key, mine) {
      if (!('locks' in navigator)) {
        mine();
        return () => undefined;
      }
      const asking = new AbortController();
      let giveUp = (): void => undefined;
      const given = new Promise<void>((resolve) => {
        giveUp = resolve;
      });
      navigator.locks
        .request(`backboard job ${key}`, { signal: asking.signal }, () => {
          mine();
          return given;
        })
        .catch(() => undefined); // given up before it was its turn
      return () => {
        asking.abort();
        giveUp();
      };
    },
    tell: (key) => channel.postMessage(key),
    onTold(hear) {
      const listen = ({ data }: MessageEvent): void => {
        if (typeof data === 'string') hear(data);
      };
      channel.addEventListener('message', listen);
      return () => channel.removeEventListener('message', listen);
    },
  };
};
