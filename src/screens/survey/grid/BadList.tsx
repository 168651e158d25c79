import { gridWords as say } from '../../../words/en/grid';
import parts from '../../parts/parts.module.css';
import { badLines } from './badLines';
import css from './grid.module.css';
import type { Grid, Report } from './useGrid';

/** Every cell whose text is not in the job, until it is mended or put back. */
export const BadList = ({ grid }: { readonly grid: Grid }) => {
  if (grid.badHere.length === 0) return null;
  return (
    <div className={css.badList} role="status">
      <p>
        <b>{say.notTaken({ count: grid.badHere.length })}</b>
      </p>
      <ul>
        {badLines(grid.badHere.map(({ at, cell }) => ({ ...cell, row: at + 1, cell }))).map(({ line, of }) => (
          <li key={line}>
            <span>{line}</span>
            <button type="button" className={css.small} onClick={() => grid.discard(of.map(({ cell }) => cell))}>
              {say.discard}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
};

/** What reading a file came to. */
export const ReportBox = ({ report, onClose }: { readonly report: Report; readonly onClose: () => void }) => (
  <div className={css.report} role="status">
    <div>
      <b>{report.title}</b>
      <ul>
        {[...new Set(report.lines)].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
    <button type="button" className={parts.button} onClick={onClose}>
      {say.dismiss}
    </button>
  </div>
);
