import type { Plan } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import css from '../parts/table.module.css';
import { figurePath } from '../selected';

const hundredths = (n: number): string => String(Math.round(n * 100) / 100);

/** Every line of the price, what has no price, what drives the range, and what may be taken or left. */
export const PriceLines = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const path = (key: string) => figurePath(at, `price/${key}`);
  const { price, tally } = plan;
  return (
    <div className={css.pair}>
      <table className={css.table}>
        <caption>{say.linesBehind}</caption>
        <thead>
          <tr>
            <th scope="col">{say.colItem}</th>
            <th scope="col" className={css.right}>
              {say.colQuantity}
            </th>
            <th scope="col">{say.colUnit}</th>
            {[say.colLow, say.colLikely, say.colHigh].map((text) => (
              <th scope="col" key={text} className={css.right}>
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {price.lines.map((line, i) => (
            <tr key={line.id}>
              <th scope="row">
                {line.say} <small>{line.kind}</small>
              </th>
              <td className={css.right}>
                <Figure path={path(`lines/${i}/quantity`)}>{hundredths(line.quantity)}</Figure>
              </td>
              <td>{line.unit}</td>
              {(['lowCents', 'likelyCents', 'highCents'] as const).map((key) => (
                <td key={key} className={css.right}>
                  <Figure path={path(`lines/${i}/${key}`)}>{dollars(line[key])}</Figure>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={3}>
              {say.priceLikely}
            </th>
            {(['lowCents', 'likelyCents', 'highCents'] as const).map((key) => (
              <td key={key} className={css.right}>
                <Figure path={figurePath(at, `tally/${key}`)}>{dollars(tally[key])}</Figure>
              </td>
            ))}
          </tr>
        </tfoot>
      </table>
      <div className={css.stack}>
        {price.missing.length > 0 && (
          <section>
            <h3>{say.missingTitle}</h3>
            <ul>
              {price.missingSay.map((sentence, i) => (
                <li key={price.missing[i]}>
                  <Figure path={path(`missingSay/${i}`)}>{sentence}</Figure>
                </li>
              ))}
            </ul>
          </section>
        )}
        <section>
          <h3>{say.driversTitle}</h3>
          <ul>
            {price.drivers.map((driver, i) => (
              <li key={driver.id} className={css.spread}>
                <span>{driver.say}</span>
                <Figure path={path(`drivers/${i}/cents`)}>{dollars(driver.cents)}</Figure>
              </li>
            ))}
          </ul>
        </section>
        <section>
          <h3>{say.alternatesTitle}</h3>
          <ul>
            {price.alternates.map((alternate, i) => (
              <li key={alternate.id} className={css.spread}>
                <span>
                  {alternate.say} <small>{say.alternate(alternate)}</small>
                </span>
                <Figure path={path(`alternates/${i}/cents`)}>{dollars(alternate.cents)}</Figure>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </div>
  );
};
