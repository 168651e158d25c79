import { Cautions } from '../parts/Cautions';
import { InColumn } from '../Slots';
import { useJob } from '../selected';
import { DrawRail } from './DrawRail';
import { CircuitsGrid } from './grid/CircuitsGrid';
import { SurveyViews, useShowsCircuits } from './grid/SurveyViews';
import { ToolPanel } from './panels/ToolPanel';
import { SurveyPlan } from './plan/SurveyPlan';
import { SelectedThing } from './SelectedThing';
import { SheetProvider, useSheetOf } from './sheetState';
import css from './survey.module.css';
import { ThingList } from './ThingList';
import { Unknowns } from './Unknowns';
import { useWide } from './useWide';

/** The room and the old work, or its circuits as rows. */
export const SurveySheet = () => (
  <>
    <SurveyViews />
    {useShowsCircuits() ? <CircuitsGrid /> : <RoomSheet />}
  </>
);

/** The room and the old work: drawn and typed, with what is still unknown. */
const RoomSheet = () => {
  const sheet = useSheetOf(useJob().id);
  const wide = useWide();
  return (
    <SheetProvider value={sheet}>
      <div className={css.sheet}>
        <div className={css.drawing}>
          <SurveyPlan />
        </div>
        <DrawRail />
        <div className={css.lower}>
          <ToolPanel />
          {!wide && (sheet.now.selected !== null || sheet.now.tool === 'select') && <SelectedThing />}
          <ThingList />
          <Unknowns />
          <div className={css.cautions}>
            <Cautions at="survey" />
          </div>
        </div>
      </div>
      {wide && (
        <InColumn>
          <SelectedThing />
        </InColumn>
      )}
    </SheetProvider>
  );
};
