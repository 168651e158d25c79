import { PlanView } from '../drawing/PlanView';
import { CircuitsGrid } from './grid/CircuitsGrid';
import { SurveyViews, useShowsCircuits } from './grid/SurveyViews';

/** The room and the old work; its circuits as rows. */
export const SurveySheet = () => (
  <>
    <SurveyViews />
    {useShowsCircuits() ? <CircuitsGrid /> : <PlanView />}
  </>
);
