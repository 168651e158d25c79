import { createStore, type StoreApi } from 'zustand/vanilla';
import { applyEdit } from '../job/applyEdit';
import { type Edit, editName } from '../job/edit';
import { push, redo, startHistory, undo } from '../job/history';
import { openJob } from '../job/parse';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import type { Kept } from '../storage/shelf';
import type { Fault } from '../units/fault';
import { byId } from '../units/order';
import { stateWords as say } from '../words/en/state';
import { makeAutosave } from './autosave';
import { makeDragging } from './dragging';
import { type JobActions, type JobState, NOTHING } from './jobState';
import { makePlanAsking } from './planAsking';
import type { Ports } from './ports';
import { makeRevisions } from './revisions';

export interface JobStore extends Pick<StoreApi<JobState>, 'getState' | 'subscribe'> {
  readonly actions: JobActions;
}

const fault = (type: string, text: string): Fault => ({ error: { type, path: '', say: text } });
const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));
const DAY = 10; // characters of an ISO time that are its day

/** The job that is open, its undo list, what is selected, and the planner's answers. */
export const createJobStore = (ports: Ports): JobStore => {
  const store = createStore<JobState>(() => NOTHING);
  const revisionOf = makeRevisions();
  const askPlans = makePlanAsking(store, ports.planner);
  const autosave = makeAutosave(store, ports);
  /** The state of the job that was last handed out as a file. */
  let onDisk: Job | undefined;
  const now = (): Job | undefined => store.getState().history?.now;

  /** After the job has become another: keep it and plan it. */
  const settle = (history: NonNullable<JobState['history']>, keep: boolean): void => {
    const job = history.now;
    const revision = revisionOf(job);
    const { option } = store.getState();
    const chosen = job.options.some((o) => o.id === option) ? option : (byId(job.options)[0]?.id ?? null);
    store.setState({ history, revision, option: chosen, homeRun: null, note: null, live: null, refusal: null });
    if (keep) autosave.changed(job);
    void askPlans(job, revision);
  };

  const refuse = (refusal: JobState['refusal']): false => {
    store.setState({ refusal });
    return false;
  };

  const open = async (text: string, name: string, entry: Kept | null): Promise<boolean> => {
    const opened = openJob(text);
    if (!opened.ok) return refuse({ fault: opened.error, what: name, doing: 'opening' });
    await autosave.keepNow(); // of the job that was open
    if (store.getState().keeping.phase === 'failed' && now() !== onDisk)
      return refuse({ fault: fault('not-kept', say.wouldBeLost), what: name, doing: 'opening' });
    store.setState({ ...NOTHING, kept: store.getState().kept });
    autosave.openAs(entry ?? { key: ports.newKey(), version: 0 });
    const { job, repairs } = opened.value;
    store.setState({ repairs });
    settle(startHistory(job), entry === null || repairs.length > 0);
    if (entry && repairs.length === 0) store.setState({ keeping: { phase: 'kept', at: entry.keptAt } });
    return true;
  };

  const refreshKept = async (): Promise<void> => {
    try {
      store.setState({ kept: await ports.shelf.list() });
    } catch (reason) {
      store.setState({ keeping: { phase: 'failed', say: message(reason) } });
    }
  };

  const dragging = makeDragging(store, ports.live, (change) => actions.edit(change));

  const actions: JobActions = {
    openText: (text, name) => open(text, name, null),
    async openKept(key) {
      try {
        const entry = await ports.shelf.read(key);
        if (!entry) return refuse({ fault: fault('not-kept', say.notKept), what: say.keptJob, doing: 'opening' });
        return await open(entry.text, entry.title, entry);
      } catch (reason) {
        return refuse({ fault: fault('not-read', message(reason)), what: say.keptJob, doing: 'opening' });
      }
    },
    async removeKept(key) {
      if (store.getState().openKey !== key) await ports.shelf.remove(key);
      await refreshKept();
    },
    refreshKept,
    edit(edit: Edit) {
      const { history } = store.getState();
      if (!history) return false;
      const changed = applyEdit(history.now, edit);
      if (!changed.ok) return refuse({ fault: changed.error, what: editName(edit, history.now), doing: 'editing' });
      store.setState({ refusal: null });
      if (changed.value === history.now) return true;
      const today = ports.clock().slice(0, DAY);
      const stamped = applyEdit(changed.value, { edit: 'set value', path: '/changedOn', value: today });
      settle(push(history, editName(edit, history.now), stamped.ok ? stamped.value : changed.value), true);
      return true;
    },
    undo() {
      const { history } = store.getState();
      if (history && history.past.length > 0) settle(undo(history), true);
    },
    redo() {
      const { history } = store.getState();
      if (history && history.future.length > 0) settle(redo(history), true);
    },
    choose: (option) => store.setState({ option, homeRun: null, note: null, live: null }),
    singleOut: ({ homeRun = null, note = null }) => store.setState({ homeRun, note }),
    ...dragging,
    dismiss: () => store.setState({ refusal: null, repairs: [], parted: false }),
    planAgain() {
      const job = now();
      if (job) void askPlans(job, revisionOf(job));
    },
    keepNow: autosave.keepNow,
    fileText() {
      const job = now();
      if (!job) return null;
      onDisk = job;
      return saveJob(job);
    },
  };
  return { getState: store.getState, subscribe: store.subscribe, actions };
};
