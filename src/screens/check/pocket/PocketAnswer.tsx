import type { CalcOutput } from '../../../calculations/types';
import { figureWords, pocketWords as say } from '../../../words/en/pocket';
import table from '../../parts/table.module.css';
import css from './pocket.module.css';
import { shown } from './shown';

/** What came out: the verdict, every figure, and every step with its section. */
export const PocketAnswer = ({ answer }: { readonly answer: CalcOutput }) => (
  <>
    <p className={css.verdict}>{say.outcome[answer.outcome]}</p>
    <dl className={css.figures}>
      {Object.entries(answer.figures).map(([key, value]) => {
        const [name, unit] = figureWords(key);
        return (
          <div key={key}>
            <dt>{name}</dt>
            <dd>
              {shown(value)} {unit !== '' && <small>{unit}</small>}
            </dd>
          </div>
        );
      })}
    </dl>
    <table className={`${table.table} ${css.steps}`}>
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
              {shown(step.value)} <small>{step.unit}</small>
            </td>
            <td>
              <small>{step.section}</small>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </>
);
