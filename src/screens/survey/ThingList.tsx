import type { Job } from '../../job/schema';
import { surveyWords as say } from '../../words/en/survey';
import { thingName } from '../parts/names';
import { useJob } from '../selected';
import { LISTS, PARTS, part, type Ref, recordsOf, sameRef } from './ref';
import { useSheet } from './sheetState';
import css from './survey.module.css';
import { unknownFields } from './unknowns';

const Item = ({ of, name }: { readonly of: Ref; readonly name: string }) => {
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
        <span>{name}</span>
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
          <div key={list}>
            <h3>{say.lists[list]}</h3>
            <ul>
              {records.map(({ id }) => (
                <Item key={id} of={{ list, id }} name={sayName(job, list, id)} />
              ))}
            </ul>
          </div>
        );
      })}
      <div>
        <h3>{say.houseTitle}</h3>
        <ul>
          {PARTS.map((p) => (
            <Item key={p} of={part(p)} name={say.parts[p]} />
          ))}
        </ul>
      </div>
    </section>
  );
};

/** Several of one kind are told apart by their ids. */
const sayName = (job: Job, list: string, id: string): string => {
  const name = thingName(job, id);
  const alike = recordsOf(job, list).filter((r) => thingName(job, r.id) === name).length;
  return alike > 1 ? `${name} (${id})` : name;
};
