import type { Worked } from '../../../calculations/types';
import { pocketWords as say } from '../../../words/en/pocket';
import { Figure } from '../../parts/Figure';
import table from '../../parts/table.module.css';
import { figurePath, type OptionView } from '../../selected';
import css from './pocket.module.css';

const THOUSANDTH = 1000;
const plain = (value: number | string): string =>
  typeof value === 'number' ? String(Math.round(value * THOUSANDTH) / THOUSANDTH) : value;

const WorkedTable = ({ worked, path }: { readonly worked: Worked; readonly path: string }) => (
  <table className={`${table.table} ${css.steps}`}>
    <caption>
      {Object.hasOwn(say.names, worked.id) ? say.names[worked.id as keyof typeof say.names] : worked.id}
    </caption>
    <thead>
      <tr>
        <th scope="col">{say.colStep}</th>
        <th scope="col" className={table.right}>
          {say.colValue}
        </th>
        <th scope="col">{say.colSection}</th>
      </tr>
    </thead>
    <tbody>
      {worked.steps.map((step, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: steps have no other name and never change places
        <tr key={i}>
          <th scope="row">
            <Figure path={`${path}/steps/${i}/say`}>{step.say}</Figure>
          </th>
          <td className={table.right}>
            <Figure path={`${path}/steps/${i}/value`}>{plain(step.value)}</Figure> <small>{step.unit}</small>
          </td>
          <td>
            <small>
              <Figure path={`${path}/steps/${i}/section`}>{step.section}</Figure>
            </small>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** Load and feeder of the selected option, worked step by step by the same code as the pocket calculations. */
export const OptionWorked = ({ view }: { readonly view: OptionView }) => {
  const { plan, at } = view;
  const all = plan
    ? [
        ...plan.load.map((worked, i) => ({ worked, path: figurePath(at, `load/${i}`) })),
        ...plan.feeder.worked.map((worked, i) => ({ worked, path: figurePath(at, `feeder/worked/${i}`) })),
      ]
    : [];
  return (
    <section className={css.pocket}>
      <h3>{say.workedTitle}</h3>
      {all.length === 0 ? (
        <p className={css.refusal}>{say.workedNone}</p>
      ) : (
        all.map(({ worked, path }) => <WorkedTable key={path} worked={worked} path={path} />)
      )}
    </section>
  );
};
