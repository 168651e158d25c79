import type { Refinement } from '../../facts/result';
import type { Option } from '../../job/schema';
import { turned } from '../../job/turned';
import { formatFeetInches } from '../../units/length';
import { refineWords as say } from '../../words/en/refine';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { useJob } from '../selected';
import { useActions, useJobState } from '../session';
import layout from './layout.module.css';
import css from './refine.module.css';
import { optionPath } from './useOptionEdit';

const cost = (cents: number): string => `${cents < 0 ? '−' : '+'}${dollars(Math.abs(cents))}`;
/** What spares a cable, or money, is worth telling. */
const worth = ({ saves, cents }: Refinement): boolean => saves > 0 || (saves === 0 && cents < 0);

const One = ({ option, one }: { readonly option: Option; readonly one: Refinement }) => {
  const job = useJob();
  const { edit } = useActions();
  const take = (): void => {
    if (one.upright === option.enclosure.upright) edit({ edit: 'move panel', option: option.id, on: one.on });
    else
      edit({
        edit: 'set value',
        path: optionPath(job, option, 'enclosure'),
        value: turned(option.enclosure, one.upright),
      });
  };
  return (
    <li className={css.one}>
      <span>
        <b>{one.say}</b>
        <small>{say.at({ left: formatFeetInches(one.on.left), bottom: formatFeetInches(one.on.bottom) })}</small>
      </span>
      <span>{say.saves({ count: one.saves })}</span>
      <span className={css.cost}>{cost(one.cents)}</span>
      <button type="button" className={parts.button} onClick={take}>
        {say.take}
      </button>
    </li>
  );
};

/** Before a panel in place is given up: what a few inches, or turning it, would spare. */
export const Refine = ({ option }: { readonly option: Option }) => {
  const refined = useJobState((s) => s.refined);
  const revision = useJobState((s) => s.revision);
  const { refine } = useActions();
  if (option.kind !== 'in place') return null;
  const mine = refined?.option === option.id && refined.revision === revision ? refined : null;
  const found = mine?.found?.filter(worth) ?? null;
  return (
    <details className={`${layout.more} ${css.refine}`}>
      <summary>{say.title}</summary>
      <p>{say.how}</p>
      {mine === null && (
        <button type="button" className={parts.button} onClick={() => void refine(option.id)}>
          {say.find}
        </button>
      )}
      {mine !== null && found === null && (
        <p role="status">{mine.say === null ? say.looking : say.failed({ say: mine.say })}</p>
      )}
      {found?.length === 0 && <p role="status">{say.none}</p>}
      {found && found.length > 0 && (
        <ul className={css.list}>
          {found.map((one) => (
            <One key={one.id} option={option} one={one} />
          ))}
        </ul>
      )}
    </details>
  );
};
