import { screenWords as say } from '../words/en/screens';
import { AdviceStrip } from './AdviceStrip';
import { PlanView } from './drawing/PlanView';
import { Notes } from './Notes';
import { Notices } from './Notices';
import { OptionTabs } from './OptionTabs';
import { PanelFields } from './PanelFields';
import { PlanningBar } from './PlanningBar';
import css from './sheet.module.css';
import { TallyBlock } from './TallyBlock';
import { TitleCells } from './TitleCells';
import { Tools } from './Tools';
import { Tables } from './tables/Tables';

/** The one sheet: drawing and lists on the left, option, panel, notes, tally and title block on the right. */
export const JobSheet = () => (
  <div className={css.sheet}>
    <div className={css.frame}>
      <div className={css.top}>
        <Tools />
        <Notices />
      </div>
      <aside className={css.column} aria-label={say.columnTitle}>
        <div className={css.tabs}>
          <OptionTabs />
        </div>
        <div className={css.fields}>
          <PanelFields />
        </div>
        <div className={css.notes}>
          <Notes />
        </div>
        <div className={css.tally}>
          <TallyBlock />
        </div>
        <div className={css.cells}>
          <TitleCells />
        </div>
      </aside>
      <main className={css.work}>
        <div className={css.drawing}>
          <PlanView />
        </div>
        <div className={css.lower}>
          <PlanningBar />
          <AdviceStrip />
          <Tables />
          <p className={css.caution}>{say.cautions}</p>
        </div>
      </main>
    </div>
  </div>
);
