import { isKnown } from '../units/types';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { useJob, useSelected } from './selected';

/** The title block: job, option, code year, survey, day of change; the caution below. */
export const TitleCells = () => {
  const job = useJob();
  const selected = useSelected();
  const cells: [string, string, boolean][] = [
    [say.cellJob, job.title || job.id, true],
    [say.cellOption, selected ? say.optionCell({ letter: selected.letter, title: selected.option.title }) : '', true],
    [say.cellCode, isKnown(job.code.edition) ? say.codeYear({ edition: job.code.edition }) : say.codeUnknown, false],
    [say.cellSurvey, say.grade[job.survey.grade], false],
  ];
  return (
    <div className={css.block}>
      <dl className={css.cells}>
        {cells.map(([term, value, wide]) => (
          <div key={term} className={wide ? css.cellWide : css.cell}>
            <dt>{term}</dt>
            <dd title={value}>{value}</dd>
          </div>
        ))}
      </dl>
      <p className={css.aid}>{say.aid}</p>
    </div>
  );
};
