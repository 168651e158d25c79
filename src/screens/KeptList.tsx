import { useDeferredValue, useEffect, useState } from 'react';
import { type Kept, PLACES, type Place } from '../storage/shelf';
import { jobsWords as words } from '../words/en/jobs';
import { screenWords as say } from '../words/en/screens';
import css from './jobs.module.css';
import { KeptRow } from './KeptRow';
import parts from './parts/parts.module.css';
import { Storing } from './Storing';
import { useActions, useJobState } from './session';

/** Every word somewhere in the title, place or customer. */
const matches = (entry: Kept, typed: string): boolean =>
  typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => entry.find.includes(word));

/** Fewer than these are seen at a glance. */
const WORTH_FINDING = 6;

/** Jobs kept in this browser, the latest first: those at hand, those put away, and those in the bin. */
export const KeptList = ({ onOpened }: { readonly onOpened?: () => void }) => {
  const kept = useJobState((s) => s.kept);
  const { refreshKept } = useActions();
  const [place, setPlace] = useState<Place>('jobs');
  const [typed, setTyped] = useState('');
  const wanted = useDeferredValue(typed.trim());
  useEffect(() => void refreshKept(), [refreshKept]);
  if (kept.length === 0) return null;
  const count = (of: Place): number => kept.filter((entry) => entry.place === of).length;
  const shown = kept.filter((entry) => entry.place === place && matches(entry, wanted));
  return (
    <section aria-labelledby="kept-title">
      <h2 id="kept-title" className={css.title}>
        {say.keptTitle}
      </h2>
      {(count('jobs') < kept.length || place !== 'jobs') && (
        <fieldset className={css.places}>
          <legend className={parts.hidden}>{words.placesTitle}</legend>
          {PLACES.map((one) => (
            <button
              key={one}
              type="button"
              className={parts.tool}
              aria-pressed={one === place}
              onClick={() => setPlace(one)}
            >
              {words.places[one]({ count: count(one) })}
            </button>
          ))}
        </fieldset>
      )}
      {(kept.length >= WORTH_FINDING || typed !== '') && (
        <div className={parts.edit}>
          <label htmlFor="find-job">{words.find}</label>
          <input
            id="find-job"
            type="search"
            autoComplete="off"
            maxLength={200}
            value={typed}
            onChange={(e) => setTyped(e.target.value)}
          />
        </div>
      )}
      <ul>
        {shown.map((entry) => (
          <KeptRow key={entry.key} entry={entry} onOpened={onOpened} />
        ))}
      </ul>
      {shown.length === 0 && (
        <p className={css.quiet} role="status">
          {wanted === '' ? words.nothingHere : words.nothingFound({ typed: wanted })}
        </p>
      )}
      <Storing />
    </section>
  );
};
