import { gridWords as say } from '../../../words/en/grid';
import { BadList, ReportBox } from './BadList';
import { GridTable } from './GridTable';
import { GridTools } from './GridTools';
import css from './grid.module.css';
import { RowForms } from './RowForms';
import { useGrid } from './useGrid';
import { useNarrow } from './useNarrow';

/** Every circuit and every cable of the job: a spreadsheet where there is room for one, a form a row on a phone. */
export const CircuitsGrid = () => {
  const grid = useGrid();
  const narrow = useNarrow();
  return (
    <section className={css.circuits} aria-label={say.title}>
      <GridTools grid={grid} />
      {grid.report && <ReportBox report={grid.report} onClose={grid.dismiss} />}
      {grid.job.cableGroups.length === 0 && <p className={css.hint}>{say.needsGroup}</p>}
      {!narrow && grid.rows.length === 0 && <p className={css.hint}>{say.empty}</p>}
      {narrow ? <RowForms grid={grid} /> : <GridTable grid={grid} />}
      <BadList grid={grid} />
    </section>
  );
};
