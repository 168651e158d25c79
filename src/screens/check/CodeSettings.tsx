import { answeredCount, questionRows } from '../../documents/questionSheet';
import { EDITIONS } from '../../units/types';
import { checkWords as say } from '../../words/en/check';
import { coverageWords } from '../../words/en/coverage';
import { questionWords } from '../../words/en/questions';
import { ChoiceField } from '../layout/ChoiceField';
import { TextField } from '../layout/TextField';
import { useTryEdit } from '../layout/useOptionEdit';
import { useJob } from '../selected';
import { useActions } from '../session';
import { sheetAddress } from '../sheetHash';
import css from './check.module.css';

/** The code year in force and the place; the way to what the inspector was asked, and to all that is checked. */
export const CodeSettings = () => {
  const job = useJob();
  const { edit } = useActions();
  const tryEdit = useTryEdit();
  const { edition, place } = job.code;
  const rows = questionRows(job, []);
  return (
    <section className={css.block}>
      <h3>{say.settingsTitle}</h3>
      <ChoiceField
        label={say.edition}
        value={String(edition)}
        choices={[
          { value: 'unknown', say: say.editionUnknown },
          ...EDITIONS.map((year) => ({ value: String(year), say: say.nec({ edition: year }) })),
        ]}
        onSet={(value) =>
          edit({ edit: 'set value', path: '/code/edition', value: value === 'unknown' ? value : Number(value) })
        }
      />
      <TextField
        label={say.place}
        value={place}
        onSet={(value) => tryEdit({ edit: 'set value', path: '/code/place', value })}
      />
      <a className={css.way} href={sheetAddress('check', 'questions')}>
        <span className={css.wayName}>{questionWords.open}</span>
        <small>{questionWords.answered({ count: answeredCount(rows), of: rows.length })}</small>
      </a>
      <a className={css.way} href={sheetAddress('check', 'coverage')}>
        <span className={css.wayName}>{coverageWords.open}</span>
      </a>
    </section>
  );
};
