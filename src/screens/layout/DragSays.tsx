import { formatFeetInches } from '../../units/length';
import { layoutWords as say } from '../../words/en/layout';
import { EffectMark } from '../parts/EffectMark';
import { dollars } from '../parts/money';
import { wallName } from '../parts/names';
import { useSelected } from '../selected';
import { useJobState } from '../session';
import css from './layout.module.css';

/** While the panel is held: where, why it stops there, and what it comes to about there. */
export const DragSays = ({ stop }: { readonly stop: string | null }) => {
  const live = useJobState((s) => s.live);
  const selected = useSelected();
  if (!live || live.droppedAt !== null || !selected) return null;
  const { left, bottom } = live.on;
  const plan = live.plan;
  const stops = plan?.findings.filter((f) => f.effect === 'stops the job') ?? [];
  const conflict = stops[0]?.say;
  return (
    <div className={css.drag} role="status">
      <b>
        {wallName(live.on)} {formatFeetInches(left)}, {formatFeetInches(bottom)}
      </b>
      {stop !== null && <span>{stop}</span>}
      {plan === null || live.say !== null ? (
        <span>{live.say ?? say.livePlanning}</span>
      ) : (
        <>
          <span>{say.livePrice({ price: dollars(plan.tally.likelyCents) })}</span>
          <span>{say.liveAfci({ count: plan.tally.afciAdded })}</span>
          {conflict === undefined ? (
            <span>{say.liveClear}</span>
          ) : (
            <span>
              <EffectMark effect="stops the job" size={14} /> {conflict}
            </span>
          )}
        </>
      )}
    </div>
  );
};
