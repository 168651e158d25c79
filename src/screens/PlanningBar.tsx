import { screenWords as say } from '../words/en/screens';
import parts from './parts/parts.module.css';
import { useStale } from './selected';
import { useJobState } from './session';
import css from './tools.module.css';

/** How far the planner is, in the tool row, and whether the figures shown are still those from before the last edit. */
export const PlanningBar = () => {
  const planning = useJobState((s) => s.planning);
  const stale = useStale();
  const working = planning.phase === 'working';
  const text = working
    ? say.planning({ done: planning.done, of: planning.of })
    : planning.phase === 'done'
      ? say.planned
      : '';
  return (
    <span className={working ? css.planning : parts.hidden} role="status">
      {text}
      {stale && <span className={parts.hidden}> {say.staleFigures}</span>}
    </span>
  );
};
