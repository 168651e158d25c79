import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { useOptions } from '../selected';
import { useActions, useJobState } from '../session';
import css from './advice.module.css';

/** How sure a walk-through's advice is, and what to find out first. */
const Sure = () => {
  const confidence = useJobState((s) => s.answer?.result?.advice.confidence ?? null);
  if (!confidence) return null;
  return (
    <>
      <p className={css.sure}>
        <Figure path="advice/confidence/say">{confidence.say}</Figure>
      </p>
      {confidence.unknowns.length > 0 && (
        <ol className={css.flip}>
          {confidence.unknowns.map((one, i) => (
            <li key={one.path}>
              <Figure path={`advice/confidence/unknowns/${i}/say`}>{one.say}</Figure>
              {one.cents > 0 && (
                <>
                  {' ± '}
                  <Figure path={`advice/confidence/unknowns/${i}/cents`}>{dollars(one.cents)}</Figure>
                </>
              )}
            </li>
          ))}
        </ol>
      )}
    </>
  );
};

/** What the program advises, why, and what would change its mind. */
export const AdviceStrip = () => {
  const advice = useJobState((s) => s.answer?.result?.advice ?? null);
  const planning = useJobState((s) => s.planning);
  const chosen = useJobState((s) => s.option);
  const options = useOptions();
  const { choose } = useActions();
  if (!advice)
    return (
      <section className={css.advice} aria-label={say.adviceTitle}>
        <p>{planning.phase === 'working' ? say.adviceComing : say.noAdvice}</p>
      </section>
    );
  const taken = options.find((o) => o.option.id === advice.option);
  return (
    <section className={css.advice} aria-label={say.adviceTitle}>
      <div>
        <p className={css.sentence}>
          <Figure path="advice/say">{advice.say}</Figure>
        </p>
        {advice.reasons.length > 0 && (
          <details className={css.why}>
            <summary>{say.why({ count: advice.reasons.length })}</summary>
            <ul>
              {advice.reasons.map((reason, i) => (
                <li key={reason.say}>
                  <Figure path={`advice/reasons/${i}/say`}>{reason.say}</Figure>
                </li>
              ))}
            </ul>
          </details>
        )}
        {advice.flips.map((flip, i) => (
          <p key={flip.say} className={css.flip}>
            <Figure path={`advice/flips/${i}/say`}>{flip.say}</Figure>
            {flip.cents > 0 && (
              <>
                {' +'}
                <Figure path={`advice/flips/${i}/cents`}>{dollars(flip.cents)}</Figure>
              </>
            )}
          </p>
        ))}
        <Sure />
      </div>
      {taken && taken.option.id !== chosen && (
        <button type="button" className={`${parts.button} ${css.show}`} onClick={() => choose(taken.option.id)}>
          {say.showOption({ letter: taken.letter })}
        </button>
      )}
    </section>
  );
};
