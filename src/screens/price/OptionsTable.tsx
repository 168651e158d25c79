import type { Plan } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { StopSign } from '../parts/EffectMark';
import { Figure } from '../parts/Figure';
import parts from '../parts/parts.module.css';
import table from '../parts/table.module.css';
import { figurePath, type OptionView, useOptions } from '../selected';
import { useActions, useJobState } from '../session';
import { PriceAxis, PriceRange, priceScale } from './PriceRange';
import css from './price.module.css';

const head = [say.colOption, null, say.colLabor, say.colOutage, say.colSplices, say.colAfci, say.colStops] as const;

const Cells = ({ view, plan }: { readonly view: OptionView; readonly plan: Plan }) => {
  const at = (key: string) => figurePath(view.at, `tally/${key}`);
  const { tally } = plan;
  return (
    <>
      <td className={css.number}>
        <Figure path={at('crewHours')}>{tally.crewHours}</Figure> <small>h</small>
      </td>
      <td className={css.number}>
        <Figure path={at('outageHours')}>{tally.outageHours}</Figure> <small>h</small>
      </td>
      <td className={css.number}>
        <Figure path={at('conductorsSpliced')}>{tally.conductorsSpliced}</Figure> <small>{say.in}</small>{' '}
        <Figure path={at('boxes')}>{tally.boxes}</Figure>
      </td>
      <td className={css.number}>
        <Figure path={at('afciAdded')}>{tally.afciAdded}</Figure> <small className={css.onlyNarrow}>AFCI</small>
      </td>
      <td className={css.stopsCell}>
        {tally.stops > 0 ? (
          <>
            <StopSign /> <Figure path={at('stops')}>{tally.stops}</Figure>{' '}
            {[...new Set(plan.findings.filter((f) => f.effect === 'stops the job').map((f) => f.rule))].join(', ')}
          </>
        ) : (
          <>
            <span className={parts.hidden}>
              <Figure path={at('stops')}>{tally.stops}</Figure>
            </span>
            {say.noConflictShort}
          </>
        )}
      </td>
    </>
  );
};

/** Options side by side on one price axis; the one looked at is marked, and chosen by its name. */
export const OptionsTable = () => {
  const options = useOptions();
  const chosen = useJobState((s) => s.option);
  const { choose } = useActions();
  const scale = priceScale(options.flatMap((o) => (o.plan ? [o.plan.tally] : [])));
  return (
    <table aria-label={say.optionsTitle} className={css.options}>
      <thead>
        <tr className={css.optionsHead}>
          {head.map((text, i) => (
            <th scope="col" key={text ?? 'price'} className={i > 1 && i < 6 ? css.numberHead : undefined}>
              {text ?? (
                <>
                  <span className={parts.hidden}>{say.colPrice}</span>
                  {scale && <PriceAxis scale={scale} />}
                </>
              )}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {options.map((view) => {
          const { option, letter, plan } = view;
          const on = option.id === chosen;
          return (
            <tr key={option.id} className={on ? css.optionOn : css.optionRow}>
              <th scope="row">
                <button type="button" className={table.pick} aria-pressed={on} onClick={() => choose(option.id)}>
                  <b>{letter}</b> <span>{option.title}</span>
                </button>
              </th>
              <td>
                {plan && scale ? (
                  <PriceRange plan={plan} scale={scale} at={view.at} strong={on} />
                ) : (
                  <small>{say.notPlannedYet}</small>
                )}
              </td>
              {plan && <Cells view={view} plan={plan} />}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
