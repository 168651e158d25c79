import { surveyWords as say } from '../../words/en/survey';
import { useJob } from '../selected';
import { nameOf } from './nameOf';
import { LISTS, PARTS, part, type Ref, recordsOf, sameRef } from './ref';
import { useSheet } from './sheetState';
import css from './survey.module.css';
import { unknownFields } from './unknowns';

const Item = ({ of }: { readonly of: Ref }) => {
  const job = useJob();
  const { now, set } = useSheet();
  const open = unknownFields(job, of).length;
  return (
    <li>
      <button
        type="button"
        aria-pressed={sameRef(now.selected, of)}
        onClick={() => set({ selected: of, tool: 'select', taken: null })}
      >
        <span>{nameOf(of)}</span>
        {open > 0 && <small className={css.dotted}>{say.notKnownCount({ n: open })}</small>}
      </button>
    </li>
  );
};

/** Everything in the survey, by kind; what is chosen here is selected in the plan. */
export const ThingList = () => {
  const job = useJob();
  return (
    <section className={css.list} aria-labelledby="survey-list">
      <h2 id="survey-list">{say.listTitle}</h2>
      {LISTS.map((list) => {
        const records = recordsOf(job, list);
        return records.length === 0 ? null : (
          <div key={list} className={css.kind}>
            <h3>{say.lists[list]}</h3>
            <ul>
              {records.map(({ id }) => (
                <Item key={id} of={{ list, id }} />
              ))}
            </ul>
          </div>
        );
      })}
      <div className={css.kind}>
        <h3>{say.houseTitle}</h3>
        <ul>
          {PARTS.map((p) => (
            <Item key={p} of={part(p)} />
          ))}
        </ul>
      </div>
    </section>
  );
};
