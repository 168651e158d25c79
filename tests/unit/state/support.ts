import { readFileSync } from 'node:fs';
import type { Plan, Result } from '../../../src/facts/result';
import type { JobStore } from '../../../src/state/jobStore';
import type { Ports } from '../../../src/state/ports';
import { type KeptJob, type Shelf, ShelfTrouble, type Version } from '../../../src/storage/shelf';
import type { Tabs } from '../../../src/storage/tabs';
import type { PlanReply, PlanRequest, PlanStep } from '../../../src/workers/planner';

export const demoText = (name: string): string =>
  readFileSync(new URL(`../../../demo/${name}.job.json`, import.meta.url), 'utf8');

/** A shelf in memory; `broken` makes every call fail, as a browser that allows no database does. */
export const memoryShelf = () => {
  const entries = new Map<string, KeptJob>();
  const versions = new Map<string, Version[]>();
  const gone = new Set<() => void>();
  const state = { broken: false, clear: () => {} };
  state.clear = () => {
    entries.clear();
    for (const tell of gone) tell();
  };
  const guard = () => {
    if (state.broken) throw new ShelfTrouble('full', 'quota exceeded');
  };
  const shelf: Shelf = {
    async list() {
      guard();
      return [...entries.values()];
    },
    async read(key) {
      guard();
      return entries.get(key);
    },
    async keep(entry) {
      guard();
      const version = entries.get(entry.key)?.version ?? 0;
      if (version !== entry.version) return { kept: false, version };
      const there = entries.get(entry.key);
      const pictures = [...(there?.pictures ?? []), ...entry.pictures];
      entries.set(entry.key, { ...entry, place: there?.place ?? 'jobs', pictures, version: version + 1 });
      return { kept: true, version: version + 1 };
    },
    async remove(key) {
      guard();
      entries.delete(key);
    },
    async place(key, place) {
      guard();
      entries.set(key, { ...entries.get(key)!, place });
    },
    async versions(key) {
      guard();
      return [...(versions.get(key) ?? [])].reverse();
    },
    async version(key, at) {
      guard();
      return versions.get(key)?.find((v) => v.at === at);
    },
    async addVersion(key, version) {
      guard();
      versions.set(key, [...(versions.get(key) ?? []), version]);
    },
    onGone(tell) {
      gone.add(tell);
      return () => gone.delete(tell);
    },
  };
  return { shelf, entries, versions, state };
};

export interface Asked {
  readonly request: PlanRequest;
  readonly step: (done: number) => void;
  readonly reply: (kind: 'planned' | 'failed' | 'dropped') => Promise<void>;
}
export const planFor = (revision: number, option: string): Plan =>
  ({ option, grade: `r${revision}` }) as unknown as Plan;

/** Tabs of one browser: the first that asks for an entry holds it until it gives it up. */
export const testTabs = () => {
  const queues = new Map<string, { mine: () => void }[]>();
  const hear = new Set<(key: string) => void>();
  const tabs = (): Tabs => {
    const own = new Set<(key: string) => void>();
    return {
      hold(key, mine) {
        const queue = queues.get(key) ?? [];
        queues.set(key, queue);
        const one = { mine };
        queue.push(one);
        if (queue[0] === one) mine();
        return () => {
          const first = queue[0] === one;
          queue.splice(queue.indexOf(one), 1);
          if (first) queue[0]?.mine();
        };
      },
      tell: (key) => {
        for (const one of hear) if (!own.has(one)) one(key);
      },
      onTold(listen) {
        own.add(listen);
        hear.add(listen);
        return () => hear.delete(listen);
      },
    };
  };
  return tabs;
};

/** A planner that answers when the test says so, and timers that run when the test says so. */
export const testPorts = () => {
  const asked: Asked[] = [];
  const { shelf, entries, versions, state } = memoryShelf();
  const tabs = testTabs();
  const timers = new Set<() => void>();
  let keys = 0;
  const time = { now: '2026-11-25T10:00:00.000Z' };
  const remembered: (string | null)[] = [];
  const ports: Ports = {
    live: { plan: () => Promise.reject(new Error('nothing is dragged here')) },
    mapper: { map: () => Promise.reject(new Error('nothing is mapped here')), stop: () => {} },
    refiner: { refine: () => Promise.resolve([]) },
    planner: {
      plan: (request, onStep: (step: PlanStep) => void) =>
        new Promise<PlanReply>((resolve) => {
          const { revision, job } = request;
          const options = job.options.map((o) => o.id).sort();
          asked.push({
            request,
            step: (done) =>
              onStep({ revision, done, of: options.length + 1, plan: planFor(revision, options[done - 1]!) }),
            async reply(kind) {
              const plans = options.map((o) => planFor(revision, o));
              const result = { plans, advice: { option: options[0] } } as unknown as Result;
              resolve(
                kind === 'planned'
                  ? { revision, kind, result }
                  : kind === 'failed'
                    ? { revision, kind, say: 'a bug' }
                    : { revision, kind },
              );
              await new Promise((r) => setTimeout(r, 0));
            },
          });
        }),
    },
    shelf,
    tabs: tabs(),
    clock: () => time.now,
    newKey: () => `key ${++keys}`,
    later: (run) => {
      timers.add(run);
      return () => timers.delete(run);
    },
    remember: (key) => remembered.push(key),
  };
  const runTimers = async (store: JobStore): Promise<void> => {
    for (const run of [...timers]) {
      timers.delete(run);
      run();
    }
    await store.actions.keepNow();
  };
  /** The same browser seen from another tab. */
  const otherTab = (): Ports => ({ ...ports, tabs: tabs() });
  return { ports, otherTab, time, asked, entries, versions, shelfState: state, timers, runTimers, remembered };
};
