import { memo, useState } from 'react';
import type { Kept } from '../storage/shelf';
import { jobsWords as words } from '../words/en/jobs';
import { screenWords as say } from '../words/en/screens';
import css from './jobs.module.css';
import parts from './parts/parts.module.css';
import { useActions, useHost, useJobState } from './session';
import { useOpening } from './useOpening';

interface Props {
  readonly entry: Kept;
  readonly onOpened: (() => void) | undefined;
}

/** One kept job: opened by its title; what else can be done with it folds out. */
export const KeptRow = memo(({ entry, onOpened }: Props) => {
  const host = useHost();
  const isOpen = useJobState((s) => s.openKey === entry.key);
  const { openOneKept } = useOpening(onOpened);
  const [more, setMore] = useState(false);
  const title = entry.title || say.untitled;
  return (
    <li className={css.keptRow}>
      <button type="button" className={css.row} onClick={() => void openOneKept(entry.key)}>
        <b>{title}</b>
        <small>
          {say.keptAt({ day: entry.keptAt.slice(0, 10), time: host.timeOfDay(entry.keptAt) })}
          {isOpen && ` · ${say.isOpen}`}
        </small>
      </button>
      <button type="button" className={css.more} aria-expanded={more} onClick={() => setMore(!more)}>
        {words.more}
        <span className={parts.hidden}> {title}</span>
      </button>
      {more && <RowTools entry={entry} isOpen={isOpen} />}
    </li>
  );
});

const RowTools = ({ entry, isOpen }: { readonly entry: Kept; readonly isOpen: boolean }) => {
  const { placeKept, removeKept, duplicateKept } = useActions();
  const [sure, setSure] = useState(false);
  const { key, place } = entry;
  const tool = (text: string, run: () => void) => (
    <button type="button" className={parts.button} onClick={run}>
      {text}
    </button>
  );
  if (place === 'bin')
    return (
      <div className={css.rowTools}>
        {tool(words.restore, () => void placeKept(key, 'jobs'))}
        {sure ? tool(words.sure, () => void removeKept(key)) : tool(words.forGood, () => setSure(true))}
      </div>
    );
  return (
    <div className={css.rowTools}>
      {tool(words.duplicate, () => void duplicateKept(key))}
      {place === 'archive' && tool(words.back, () => void placeKept(key, 'jobs'))}
      {!isOpen && place === 'jobs' && tool(words.toArchive, () => void placeKept(key, 'archive'))}
      {!isOpen && tool(words.toBin, () => void placeKept(key, 'bin'))}
    </div>
  );
};
