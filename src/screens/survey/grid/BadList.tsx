import { gridWords as say } from '../../../words/en/grid';
import parts from '../../parts/parts.module.css';
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
        {grid.badHere.map(({ at, cell }) => (
          <li key={`${at} ${cell.column}`}>
            <span>{say.badCell({ row: at + 1, column: say.heads[cell.column], say: cell.say })}</span>
            <button type="button" className={css.small} onClick={() => grid.discard(cell)}>
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
