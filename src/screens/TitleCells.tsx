import { isKnown } from '../units/types';
import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { useJob, useSelected } from './selected';

/** `Nov 24` of `2026-11-24`; as it stands where it is no ISO day. */
const monthDay = (day: string): string => {
  const [, month, date] = /^\d{4}-(\d\d)-(\d\d)/.exec(day) ?? [];
  const name = say.months[Number(month) - 1];
  return name && date ? `${name} ${Number(date)}` : day;
};

/** The title block: job, option, code year, survey, how often papers were issued and the day of the last change. */
export const TitleCells = () => {
  const job = useJob();
  const selected = useSelected();
  const cells: [string, string, boolean][] = [
    [say.cellJob, job.title || say.untitled, true],
    [say.cellOption, selected ? selected.letter : say.none, false],
    [say.cellCode, isKnown(job.code.edition) ? say.codeYear({ edition: job.code.edition }) : say.codeUnknown, false],
    [say.cellSurvey, say.grade[job.survey.grade], false],
    [say.cellRevision, say.revision({ issued: job.issued.length, day: monthDay(job.changedOn) }), false],
  ];
  return (
    <dl className={css.cells}>
      {cells.map(([term, value, wide]) => (
        <div key={term} className={wide ? css.cellWide : css.cell}>
          <dt>{term}</dt>
          <dd title={value}>{value}</dd>
        </div>
      ))}
    </dl>
  );
};
