import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { WithTerms } from './parts/Term';
import { sheetAddress, useSheetKey } from './sheetHash';

/** In place of panel and notes while the job has no option: what to measure first, and where to go on. */
export const FirstSteps = () => {
  const sheet = useSheetKey() ?? 'survey';
  // the survey sheet says it by itself
  if (sheet === 'survey') return null;
  return (
    <section className={css.section} aria-labelledby="first-title">
      <h2 id="first-title" className={css.heading}>
        {say.measureTitle}
      </h2>
      <ol className={css.first}>
        {say.measureFirst.map((text) => (
          <li key={text}>
            <span>
              <WithTerms text={text} />
            </span>
          </li>
        ))}
      </ol>
      <p className={css.then}>
        {say.measureOn} <a href={sheetAddress('survey')}>{say.sheets.survey}</a>
      </p>
      {sheet !== 'layout' && (
        <p className={css.then}>
          {say.thenOption} <a href={sheetAddress('layout')}>{say.sheets.layout}</a>
        </p>
      )}
    </section>
  );
};
