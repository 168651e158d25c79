import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { blankJob } from '../job/blankJob';
import { saveJob } from '../job/save';
import { Crash, type Rescue } from '../screens/Crash';
import { fileNameOf } from '../screens/fileName';
import type { Host } from '../screens/host';
import { Screens } from '../screens/Screens';
import { SessionProvider } from '../screens/session';
import { createJobStore } from '../state/jobStore';
import { idbShelf } from '../storage/idbShelf';
import { browserTabs } from '../storage/tabs';
import { workerLive } from '../workers/workerLive';
import { workerMapper } from '../workers/workerMapper';
import { workerPlanner } from '../workers/workerPlanner';
import { workerRefiner } from '../workers/workerRefiner';
import './tokens.css';
import './base.css';
import { DEMOS, demoText } from './demos';
import { download } from './download';
import { askToKeep, keptHow } from './keptHow';
import { hear, listen } from './lastWords';
import { look, setLook } from './look';
import { goOffline, onUpdate } from './offline';
import { keepOwnText, ownText } from './ownTexts';
import { ScenePane } from './ScenePane';
import { remember, remembered } from './tab';

const shelf = idbShelf();
const newKey = (): string => crypto.randomUUID();
const store = createJobStore({
  planner: workerPlanner(),
  live: workerLive(),
  mapper: workerMapper(),
  refiner: workerRefiner(),
  shelf,
  tabs: browserTabs(),
  clock: () => new Date().toISOString(),
  newKey,
  later: (run, ms) => {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
  remember,
});

const host: Host = {
  demos: DEMOS,
  demoText,
  download,
  look,
  setLook,
  ownText,
  keepOwnText,
  newJobText: () => saveJob(blankJob({ id: crypto.randomUUID(), on: new Date().toISOString().slice(0, 10) })),
  keptHow,
  onUpdate: (ready) => onUpdate((load) => ready(() => void store.actions.keepNow().then(load))),
  Scene: ScenePane,
  timeOfDay: (iso) => new Date(iso).toLocaleTimeString('en-US', { hour: 'numeric', minute: '2-digit' }),
};

const rescue: Rescue = {
  open: () => {
    const { history } = store.getState();
    return history && { job: history.now, steps: history.past.map(({ name, kind }) => ({ name, kind })) };
  },
  save: () => {
    const text = store.actions.fileText();
    const job = store.getState().history?.now;
    if (text !== null && job) download(fileNameOf(job), text);
  },
  download,
  reload: () => location.reload(),
};

/** What waits to be kept is written when the tab is left; where it could not be kept, leaving is asked back. */
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') void store.actions.keepNow();
});
askToKeep(store);
const sayLast = listen(store);
addEventListener('beforeunload', (event) => {
  const { phase } = store.getState().keeping;
  if (phase === 'failed') event.preventDefault();
  if (phase !== 'waiting' && phase !== 'failed') return;
  sayLast();
  void store.actions.keepNow();
});

/** A database that does not answer keeps nobody from the screens. */
const LONGEST_START_MS = 4000;
/** The job that was open. A browser that was killed may have forgotten which: then the one kept last. */
const keyToOpen = async (): Promise<string | null> => {
  const known = remembered();
  if (known !== null) return known;
  const kept = await shelf.list().catch(() => []); // said on the way in, where jobs are listed
  return kept.find((entry) => entry.place === 'jobs')?.key ?? null;
};
const start = async (): Promise<void> => {
  const key = await keyToOpen();
  if (key === null) return;
  await hear(key, shelf, newKey);
  if (store.getState().history === null) await store.actions.openKept(key);
};

const root = document.getElementById('app');
if (!root) throw new Error('The page has no place for the app');
await Promise.race([start(), new Promise((resolve) => setTimeout(resolve, LONGEST_START_MS))]);
createRoot(root).render(
  <StrictMode>
    <Crash rescue={rescue}>
      <SessionProvider value={{ store, host, rescue }}>
        <Screens />
      </SessionProvider>
    </Crash>
  </StrictMode>,
);
void goOffline();
