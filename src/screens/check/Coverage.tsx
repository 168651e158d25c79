import { useState } from 'react';
import { type CoverageRow, type CoverageStatus, coverageCounts, coverageRows } from '../../documents/coverage';
import { MATTERS, coverageWords as say } from '../../words/en/coverage';
import { splitWords } from '../../words/en/splits';
import { ChoiceField } from '../layout/ChoiceField';
import { useJob } from '../selected';
import css from './coverage.module.css';

const ROWS = coverageRows();
type Filter = keyof typeof say.filters;
const FILTERS = Object.keys(say.filters) as Filter[];
const shown = (row: CoverageRow, filter: Filter): boolean =>
  filter === 'all' || (filter === 'split' ? row.split !== null : row.status === (filter satisfies CoverageStatus));

/** Every rule with its sections by code year, what becomes of it here, where it was read; then the other matters. */
export const Coverage = () => {
  const { edition } = useJob().code;
  const [filter, setFilter] = useState<Filter>('all');
  const rows = ROWS.filter((row) => shown(row, filter));
  return (
    <section className={css.page} aria-label={say.title}>
      <h3>{say.title}</h3>
      <p className={css.lead}>{say.lead}</p>
      <p className={css.counts}>{say.counts(coverageCounts(ROWS))}</p>
      <div className={css.filter}>
        <ChoiceField
          label={say.filter}
          value={filter}
          choices={FILTERS.map((value) => ({ value, say: say.filters[value] }))}
          onSet={setFilter}
        />
      </div>
      <ul className={css.rows}>
        {rows.map((row) => (
          <Rule key={row.rule} row={row} inForce={edition} />
        ))}
      </ul>
      <h3>{say.mattersTitle}</h3>
      <p className={css.lead}>{say.mattersLead}</p>
      <ul className={css.rows}>
        {MATTERS.map(([matter, rules, where]) => (
          <li key={matter} className={css.matter}>
            <b>{matter}</b>
            <span>{rules.join(', ')}</span>
            <span>{where}</span>
          </li>
        ))}
      </ul>
    </section>
  );
};

const Rule = ({ row, inForce }: { readonly row: CoverageRow; readonly inForce: number | 'unknown' }) => (
  <li className={css.rule}>
    <div>
      <b>{row.rule}</b>
      <p>{row.asks}</p>
    </div>
    <dl className={css.years}>
      {row.sections.map((s) => (
        <div key={s.edition} className={s.edition === inForce ? css.inForce : undefined}>
          <dt>{s.edition}</dt>
          <dd>
            {s.asked ? s.section : say.none}
            {s.asked && say.standingShort[s.standing] !== '' && <small>{say.standingShort[s.standing]}</small>}
          </dd>
        </div>
      ))}
    </dl>
    <div className={css.more}>
      <p>
        <b>{say.status[row.status]}</b>
        {row.why !== null && `. ${row.why}`}
      </p>
      {row.split !== null && (
        <p>
          <b>{splitWords.lead}</b> {row.split}
        </p>
      )}
      {row.questions.length > 0 && <p>{say.question({ names: row.questions.join('; ') })}</p>}
      <small>{say.readIn({ source: row.source })}</small>
    </div>
  </li>
);
