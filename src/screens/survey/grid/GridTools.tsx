import { useRef } from 'react';
import { gridWords as say } from '../../../words/en/grid';
import parts from '../../parts/parts.module.css';
import { useHost } from '../../session';
import { gridCsv } from './csvRows';
import css from './grid.module.css';
import type { Grid } from './useGrid';

const csvName = (id: string): string => `${id.replace(/[^\p{L}\p{N}._-]+/gu, '-') || 'job'}.circuits.csv`;

/** Rows and files; a count of what there is. */
export const GridTools = ({ grid }: { readonly grid: Grid }) => {
  const host = useHost();
  const file = useRef<HTMLInputElement>(null);
  const { job } = grid;
  const read = async (input: HTMLInputElement): Promise<void> => {
    const chosen = input.files?.[0];
    input.value = '';
    if (chosen) grid.readFile(chosen.name, await chosen.text());
  };
  return (
    <div className={css.tools}>
      <h2 className={css.title}>{say.title}</h2>
      <span className={css.count}>{say.countRows({ circuits: job.circuits.length, cables: job.homeRuns.length })}</span>
      <button type="button" className={parts.button} onClick={grid.addRow}>
        {say.add}
      </button>
      <button type="button" className={parts.button} onClick={() => file.current?.click()}>
        {say.csvIn}
      </button>
      <input
        ref={file}
        type="file"
        accept=".csv,.tsv,.txt,text/csv"
        hidden
        aria-label={say.csvIn}
        onChange={(e) => void read(e.target)}
      />
      <button
        type="button"
        className={parts.button}
        disabled={grid.rows.length === 0}
        onClick={() => host.download(csvName(job.id), gridCsv(job))}
      >
        {say.csvOut}
      </button>
    </div>
  );
};
