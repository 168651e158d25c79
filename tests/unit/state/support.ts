import { readFileSync } from 'node:fs';
import type { Plan, Result } from '../../../src/facts/result';
import type { JobStore } from '../../../src/state/jobStore';
import type { Ports } from '../../../src/state/ports';
import type { KeptJob, Shelf } from '../../../src/storage/shelf';
import type { PlanReply, PlanRequest, PlanStep } from '../../../src/workers/planner';

export const demoText = (name: string): string =>
  readFileSync(new URL(`../../../demo/${name}.job.json`, import.meta.url), 'utf8');

/** A shelf in memory; `broken` makes every call fail, as a browser that allows no database does. */
export const memoryShelf = () => {
  const entries = new Map<string, KeptJob>();
  const state = { broken: false };
  const guard = () => {
    if (state.broken) throw new Error('quota exceeded');
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
      entries.set(entry.key, { ...entry, version: version + 1 });
      return { kept: true, version: version + 1 };
    },
    async remove(key) {
      guard();
      entries.delete(key);
    },
  };
  return { shelf, entries, state };
};

export interface Asked {
  readonly request: PlanRequest;
  readonly step: (done: number) => void;
  readonly reply: (kind: 'planned' | 'failed' | 'dropped') => Promise<void>;
}
export const planFor = (revision: number, option: string): Plan =>
  ({ option, grade: `r${revision}` }) as unknown as Plan;

/** A planner that answers when the test says so, and timers that run when the test says so. */
export const testPorts = () => {
  const asked: Asked[] = [];
  const { shelf, entries, state } = memoryShelf();
  const timers = new Set<() => void>();
  let keys = 0;
  const remembered: (string | null)[] = [];
  const ports: Ports = {
    live: { plan: () => Promise.reject(new Error('nothing is dragged here')) },
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
    clock: () => '2026-11-25T10:00:00.000Z',
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
  return { ports, asked, entries, shelfState: state, timers, runTimers, remembered };
};
