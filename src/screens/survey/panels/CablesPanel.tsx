import { useState } from 'react';
import { surveyWords as say } from '../../../words/en/survey';
import { thingName } from '../../parts/names';
import parts from '../../parts/parts.module.css';
import { useJob } from '../../selected';
import { ChoiceField } from '../fields/ChoiceField';
import { type Entry, entryPoint } from '../placing';
import { useTaken } from '../useTaken';
import css from './panels.module.css';

const ENTRIES: readonly Entry[] = ['top', 'bottom', 'left', 'right', 'back'];

/** Old cables: a group and its run from the can on, the feeder's run, a sleeve through a wall. */
export const CablesPanel = () => {
  const job = useJob();
  const { start, comeOutOf } = useTaken();
  const [enclosure, setEnclosure] = useState(job.enclosures[0]?.id ?? '');
  const [entry, setEntry] = useState<Entry>('top');
  const can = job.enclosures.find((e) => e.id === enclosure) ?? job.enclosures[0];
  const startGroup = (): void => {
    const from = can && entryPoint(job, can, entry);
    if (!from) return;
    comeOutOf({ enclosure: can.id, entry });
    start('cables', [from]);
  };
  return (
    <div className={css.narrow}>
      <h3 className={css.head}>{say.addCables}</h3>
      {can ? (
        <>
          <ChoiceField
            spec={{ label: say.f.enclosure, unknown: false }}
            of={job.enclosures.map((e) => ({ value: e.id, say: thingName(job, e.id) }))}
            value={can.id}
            onSet={(value) => {
              setEnclosure(value as string);
              return null;
            }}
          />
          <ChoiceField
            spec={{ label: say.f.entry, unknown: false }}
            of={ENTRIES.map((value) => ({ value, say: value }))}
            value={entry}
            onSet={(value) => {
              setEntry(value as Entry);
              return null;
            }}
          />
          <button type="button" className={parts.button} onClick={startGroup}>
            {say.newGroup}
          </button>
        </>
      ) : (
        <p>{say.noPanelYet}</p>
      )}
      <div className={css.buttons}>
        <button type="button" className={css.quiet} onClick={() => start('feeder')}>
          {say.drawFeeder}
        </button>
        <button type="button" className={css.quiet} onClick={() => start('sleeve')}>
          {say.drawSleeve}
        </button>
      </div>
    </div>
  );
};
