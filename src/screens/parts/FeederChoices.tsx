import type { Plan } from '../../facts/result';
import { feederChoiceWords as say } from '../../words/en/feederChoices';
import { figurePath } from '../selected';
import { Figure } from './Figure';
import css from './feederChoices.module.css';
import { dollars } from './money';
import table from './table.module.css';

/** Keep, extend, replace: whether each does for the breaker in front of it, and at what price. Nothing where there is no feeder. */
export const FeederChoices = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const { choices, way } = plan.feeder;
  if (choices.length === 0) return null;
  return (
    <table className={`${table.table} ${css.choices}`}>
      <caption>{say.title}</caption>
      <thead>
        <tr>
          <th scope="col">{say.colWay}</th>
          <th scope="col">{say.colDoes}</th>
          <th scope="col" className={table.right}>
            {say.colPrice}
          </th>
        </tr>
      </thead>
      <tbody>
        {choices.map((choice, i) => {
          const path = (key: string) => figurePath(at, `feeder/choices/${i}/${key}`);
          return (
            <tr key={choice.way}>
              <th scope="row">
                <b>{say.way[choice.way]}</b>
                {choice.way === way && ` · ${say.planned}`}
                <small>
                  <Figure path={path('say')}>{choice.say}</Figure>
                </small>
              </th>
              <td>
                <Figure path={path('outcome')}>{choice.outcome}</Figure>
              </td>
              <td className={table.right}>
                {choice.cents === null ? (
                  choice.possible ? (
                    say.noPrice
                  ) : (
                    say.notPossible
                  )
                ) : (
                  <Figure path={path('cents')}>{dollars(choice.cents)}</Figure>
                )}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
