import { createStore, type StoreApi } from 'zustand/vanilla';
import { applyEdit } from '../job/applyEdit';
import { type Edit, editName } from '../job/edit';
import { editKind } from '../job/editKind';
import { push, redo, startHistory, undo } from '../job/history';
import { type Opened, openJob } from '../job/parse';
import { withoutPictures } from '../job/pictures';
import { JSON_LIMITS } from '../job/readJson';
import { saveJob } from '../job/save';
import type { Job } from '../job/schema';
import { share } from '../job/share';
import { type KeptJob, troubleOf } from '../storage/shelf';
import type { Fault } from '../units/fault';
import { byId } from '../units/order';
import type { Result } from '../units/result';
import { jobWords } from '../words/en/job';
import { stateWords as say } from '../words/en/state';
import { makeAutosave } from './autosave';
import { makeDragging } from './dragging';
import { makeHolding } from './holding';
import { type JobActions, type JobState, NOTHING } from './jobState';
import { makeLibrary, openEntry } from './library';
import { makeMapping } from './mapping';
import { makePlanAsking } from './planAsking';
import type { Ports } from './ports';
import { makeRevisions } from './revisions';

export interface JobStore extends Pick<StoreApi<JobState>, 'getState' | 'subscribe'> {
  readonly actions: JobActions;
}

const fault = (type: string, text: string): Fault => ({ error: { type, path: '', say: text } });
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
    if (keep && store.getState().elsewhere) {
      // the other tab's job stays as it is; what is changed here goes on as one of its own
      autosave.openAs({ key: ports.newKey(), version: 0, pictures: new Map() }, null);
      store.setState({ elsewhere: false, parted: true });
    }
    if (keep) autosave.changed(job);
    void askPlans(job, revision);
  };

  const refuse = (refusal: JobState['refusal']): false => {
    store.setState({ refusal });
    return false;
  };

  const show = (opened: Opened, entry: KeptJob | null): void => {
    const { kept, openKey, elsewhere } = store.getState();
    store.setState({ ...NOTHING, kept, elsewhere: elsewhere && entry?.key === openKey });
    const pictures = new Map(entry?.pictures.map(({ id, data }) => [id, data]));
    autosave.openAs(
      { key: entry?.key ?? ports.newKey(), version: entry?.version ?? 0, pictures },
      entry && { at: entry.keptAt, text: entry.text },
    );
    const { job, repairs } = opened;
    store.setState({ repairs });
    settle(startHistory(job), entry === null || repairs.length > 0);
    if (entry && repairs.length === 0) store.setState({ keeping: { phase: 'kept', at: entry.keptAt } });
  };

  const open = async (opened: Result<Opened, Fault>, name: string, entry: KeptJob | null): Promise<boolean> => {
    if (!opened.ok) return refuse({ fault: opened.error, what: name, doing: 'opening' });
    await autosave.keepNow(); // of the job that was open
    if (store.getState().keeping.phase === 'failed' && now() !== onDisk)
      return refuse({ fault: fault('not-kept', say.wouldBeLost), what: name, doing: 'opening' });
    show(opened.value, entry);
    return true;
  };

  /** Another tab has kept this job anew: what it kept is shown, as long as nothing was changed here. */
  const follow = async (key: string): Promise<void> => {
    try {
      const entry = await ports.shelf.read(key);
      if (!entry || store.getState().openKey !== key || !autosave.isQuiet()) return;
      const opened = openEntry(entry);
      if (!opened.ok) return void refuse({ fault: opened.error, what: entry.title, doing: 'opening' });
      const { option } = store.getState();
      show(opened.value, entry);
      if (opened.value.job.options.some((o) => o.id === option)) store.setState({ option });
    } catch (reason) {
      refuse({ fault: fault('not-read', troubleOf(reason).message), what: say.keptJob, doing: 'opening' });
    }
  };
  makeHolding(store, ports, follow);
  const library = makeLibrary(store, ports, autosave.keepNow);

  const mapping = makeMapping(store, ports.mapper, ports.refiner);
  const dragging = makeDragging(store, ports.live, (change) => actions.edit(change));

  const actions: JobActions = {
    openText: (text, name) => open(openJob(text), name, null),
    async openFile(file) {
      const { characters: most } = JSON_LIMITS;
      if (file.size > most) {
        const tooLarge = fault('too-large', jobWords.tooLarge({ characters: file.size, most }));
        return refuse({ fault: tooLarge, what: file.name, doing: 'opening' });
      }
      try {
        return await actions.openText(await file.text(), file.name);
      } catch (reason) {
        return refuse({ fault: fault('not-read', troubleOf(reason).message), what: file.name, doing: 'opening' });
      }
    },
    async openKept(key) {
      if (store.getState().openKey === key && now()) return true;
      try {
        const entry = await ports.shelf.read(key);
        if (!entry) return refuse({ fault: fault('not-kept', say.notKept), what: say.keptJob, doing: 'opening' });
        return await open(openEntry(entry), entry.title, entry);
      } catch (reason) {
        return refuse({ fault: fault('not-read', troubleOf(reason).message), what: say.keptJob, doing: 'opening' });
      }
    },
    refreshKept: library.refreshKept,
    refreshVersions: library.refreshVersions,
    placeKept: library.placeKept,
    removeKept: library.removeKept,
    duplicateKept: library.duplicateKept,
    nameVersion: library.nameVersion,
    async restoreVersion(at) {
      const { history, versions } = store.getState();
      if (!history) return;
      const what = say.goBack({ at, name: versions.find((v) => v.at === at)?.name ?? null });
      try {
        const version = await library.versionOf(at);
        if (!version.ok) return void refuse({ fault: version.error, what, doing: 'editing' });
        settle(push(history, what, share(history.now, version.value), 'go back'), true);
      } catch (reason) {
        refuse({ fault: fault('not-read', troubleOf(reason).message), what, doing: 'editing' });
      }
    },
    edit(edit: Edit) {
      const { history } = store.getState();
      if (!history) return false;
      const changed = applyEdit(history.now, edit);
      if (!changed.ok) return refuse({ fault: changed.error, what: editName(edit, history.now), doing: 'editing' });
      store.setState({ refusal: null });
      if (changed.value === history.now) return true;
      const today = ports.clock().slice(0, DAY);
      const stamped = applyEdit(changed.value, { edit: 'set value', path: '/changedOn', value: today });
      const job = stamped.ok ? stamped.value : changed.value;
      settle(push(history, editName(edit, history.now), job, editKind(edit)), true);
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
    ...mapping,
    dismiss: () => store.setState({ refusal: null, repairs: [], parted: false, cleared: false }),
    planAgain() {
      const job = now();
      if (job) void askPlans(job, revisionOf(job));
    },
    keepNow: autosave.keepNow,
    fileText(photos = true) {
      const job = now();
      if (!job) return null;
      if (photos || withoutPictures(job) === job) onDisk = job;
      return saveJob(photos ? job : withoutPictures(job));
    },
  };
  return { getState: store.getState, subscribe: store.subscribe, actions };
};
