import { Fragment } from 'react';
import { orderGroups } from '../../documents/orderGroups';
import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { figurePath } from '../selected';
import css from './papers.module.css';

/** What is bought, as a supply counter reads it. */
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
        {orderGroups(plan.order).map(({ group, lines }) => (
          <Fragment key={group}>
            <tr className={css.group}>
              <th scope="colgroup" colSpan={3}>
                {say.orderGroups[group]}
              </th>
            </tr>
            {lines.map(({ line, at: i }) => (
              <tr key={line.item}>
                <th scope="row">
                  {line.say}
                  {line.leadDays !== null && (
                    <small className={css.lead}>
                      {say.leadBefore} <Figure path={figurePath(at, `order/${i}/leadDays`)}>{line.leadDays}</Figure>{' '}
                      {say.leadAfter}
                    </small>
                  )}
                </th>
                <td className={css.strong}>
                  <Figure path={figurePath(at, `order/${i}/quantity`)}>{line.quantity}</Figure>
                </td>
                <td>{line.unit}</td>
              </tr>
            ))}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
};
