import { PlanView } from '../drawing/PlanView';

/** The room and the old work. */
export const SurveySheet = () => <PlanView />;
