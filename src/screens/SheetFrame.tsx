import type { ReactNode } from 'react';
import { screenWords as say } from '../words/en/screens';
import { SmallPlan } from './drawing/SmallPlan';
import { JobString } from './JobString';
import { Notes } from './Notes';
import { Notices } from './Notices';
import { OptionTabs } from './OptionTabs';
import { PanelFields } from './PanelFields';
import parts from './parts/parts.module.css';
import { SlotPlace } from './Slots';
import css from './sheet.module.css';
import { type SheetKey, sheetNumber } from './sheetKeys';
import { TallyBlock } from './TallyBlock';
import { TitleCells } from './TitleCells';
import { Tools } from './Tools';

interface Props {
  readonly sheet: SheetKey;
  /** Shows a small plan in the right column, for a sheet without a drawing. */
  readonly small: boolean;
  readonly children: ReactNode;
}

/** What is the same on every sheet: border, tools, right column, tally, title block, job string. */
export const SheetFrame = ({ sheet, small, children }: Props) => (
  <div className={css.sheet}>
    <div className={css.frame}>
      <div className={css.top}>
        <Tools />
        <Notices />
      </div>
      <section className={css.tabs} aria-label={say.optionsTitle}>
        <OptionTabs />
      </section>
      <main className={css.work} aria-label={say.sheets[sheet]}>
        <h2 className={parts.hidden}>{say.sheets[sheet]}</h2>
        {children}
      </main>
      <aside className={css.column} aria-label={say.columnTitle}>
        <SlotPlace of="selected" instead={<PanelFields />} />
        <Notes />
        {small && <SmallPlan />}
      </aside>
      <footer className={css.title}>
        <div className={css.cells}>
          <TitleCells />
        </div>
        <div className={css.corner}>
          <p>{say.aid}</p>
          <b aria-hidden="true">{sheetNumber(sheet)}</b>
        </div>
      </footer>
      <div className={css.foot}>
        <section className={css.tally} aria-label={say.tallyTitle}>
          <TallyBlock />
        </section>
        <div className={css.string}>
          <JobString open={sheet} />
        </div>
      </div>
    </div>
  </div>
);

/**
 * Lists of a sheet. At a desk they scroll below what stands over them; where all is one column they come after the
 * selected thing and the notes.
 */
export const AfterNotes = ({ label, children }: { readonly label: string; readonly children: ReactNode }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: the list scrolls at a desk, and a keyboard must reach it
  <section className={css.after} aria-label={label} tabIndex={0}>
    {children}
  </section>
);
