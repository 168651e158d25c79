import { screenWords as say } from '../words/en/screens';
import css from './column.module.css';
import { StopSign } from './parts/EffectMark';
import parts from './parts/parts.module.css';
import { useOptions } from './selected';
import { useActions, useJobState } from './session';

/** Which option is looked at; an octagon where something stops it. */
export const OptionTabs = () => {
  const options = useOptions();
  const chosen = useJobState((s) => s.option);
  const { choose } = useActions();
  if (options.length === 0) return <p className={css.empty}>{say.noOption}</p>;
  return (
    <fieldset className={css.options}>
      <legend className={parts.hidden}>{say.optionsTitle}</legend>
      {options.map(({ option, letter, plan }) => {
        const stopped = (plan?.tally.stops ?? 0) > 0;
        return (
          <label key={option.id} className={option.id === chosen ? css.chosen : css.option} title={option.title}>
            <input
              type="radio"
              name="option"
              checked={option.id === chosen}
              onChange={() => choose(option.id)}
              aria-label={stopped ? say.optionStopped({ title: option.title }) : option.title}
            />
            <span>{letter}</span>
            {stopped && <StopSign size={12} />}
          </label>
        );
      })}
    </fieldset>
  );
};
