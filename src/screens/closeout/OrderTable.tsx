import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { figurePath } from '../selected';
import css from './papers.module.css';

/** What is bought, with a box to tick at the counter. */
export const OrderTable = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  if (plan.order.length === 0) return <p className={css.none}>{say.noOrder}</p>;
  return (
    <table className={css.table}>
      <caption>{say.orderTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{say.item}</th>
          <th scope="col" className={css.right}>
            {say.quantity}
          </th>
          <th scope="col">{say.unit}</th>
        </tr>
      </thead>
      <tbody>
        {plan.order.map((line, i) => (
          <tr key={line.item}>
            <th scope="row">{line.say}</th>
            <td className={css.strong}>
              <Figure path={figurePath(at, `order/${i}/quantity`)}>{line.quantity}</Figure>
            </td>
            <td>{line.unit}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
