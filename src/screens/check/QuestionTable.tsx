import type { QuestionRow } from '../../documents/questionSheet';
import { questionWords as say } from '../../words/en/questions';
import css from './questions.module.css';

/** The question sheet on paper: what was answered, and lines to write on where nothing was. */
export const QuestionTable = ({ rows }: { readonly rows: readonly QuestionRow[] }) => (
  <>
    <p className={css.paperLead}>{say.lead}</p>
    <table className={css.paperTable}>
      <thead>
        <tr>
          <th scope="col">{say.question}</th>
          <th scope="col">{say.blank.answer}</th>
          <th scope="col">{say.blank.by}</th>
          <th scope="col">{say.blank.on}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key}>
            <th scope="row">
              {row.ask}
              <small>
                {row.why}
                {!row.asked && ` ${say.notInThisYear}`}
              </small>
            </th>
            <td>
              {row.answered ? (
                <b>{row.answered.say}</b>
              ) : row.choices && row.choices.length < 3 ? (
                row.choices.map((c) => (
                  <span key={String(c.answer)} className={css.tick}>
                    <i /> {c.say}
                  </span>
                ))
              ) : null}
              {row.answered && row.answered.note !== '' && <small>{row.answered.note}</small>}
            </td>
            <td>{row.answered?.by ?? ''}</td>
            <td>{row.answered?.on ?? ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </>
);
