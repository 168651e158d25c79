import type { CalcOutput } from '../../calculations/types';
import { pocketWords as say } from '../../words/en/pocket';
import table from '../parts/table.module.css';
import css from './check.module.css';

const THOUSANDTH = 1000;
const written = (value: number | string | boolean): string =>
  typeof value === 'number'
    ? String(Math.round(value * THOUSANDTH) / THOUSANDTH)
    : value === true
      ? say.yes
      : value === false
        ? say.no
        : value;

/** What came out, and every step with its section. */
export const PocketAnswer = ({ answer }: { readonly answer: CalcOutput }) => (
  <div role="status" aria-label={say.answer}>
    <p className={css.measured}>
      {say.outcome[answer.outcome]} · {written(answer.worked.value)} {answer.worked.unit}
    </p>
    <table className={table.table}>
      <caption>{say.stepsTitle}</caption>
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
        {answer.worked.steps.map((step, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: steps have no other name and never change places
          <tr key={i}>
            <th scope="row">{step.say}</th>
            <td className={table.right}>
              {written(step.value)} <small>{step.unit}</small>
            </td>
            <td>
              <small>{step.section}</small>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
