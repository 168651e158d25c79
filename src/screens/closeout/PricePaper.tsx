import type { Plan } from '../../facts/result';
import { closeoutWords } from '../../words/en/closeout';
import { priceWords, pricePartWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { linesInOrder } from '../price/linesInOrder';
import { RangePicture } from '../price/RangePicture';
import { figurePath } from '../selected';
import frame from './paper.module.css';
import css from './papers.module.css';
import paper from './pricePaper.module.css';

interface Props {
  readonly plan: Plan;
  readonly at: number;
}
const hundredths = (n: number): string => String(Math.round(n * 100) / 100);

/** The price for the contractor's file: how it is offered, its range, its lines, and what may turn up beside them. */
export const PricePaper = ({ plan, at }: Props) => {
  const { price } = plan;
  const path = (key: string) => figurePath(at, `price/${key}`);
  return (
    <>
      <div className={paper.two}>
        <section>
          <h3>{say.offeredTitle}</h3>
          <p className={paper.offer}>
            {price.quote.fixedCents === null ? (
              say.offered[price.quote.as]
            ) : (
              <>
                {say.fixedSum} <Figure path={path('quote/fixedCents')}>{dollars(price.quote.fixedCents)}</Figure>
              </>
            )}
          </p>
          <p>
            <Figure path={path('quote/say')}>{price.quote.say}</Figure>
          </p>
          {price.quote.as === 'time and material' && (
            <p>
              {say.hourly} <Figure path={path('quote/hourCents')}>{dollars(price.quote.hourCents)}</Figure>.{' '}
              {say.materialOver}{' '}
              <Figure path={path('quote/materialShare')}>{`${Math.round(price.quote.materialShare * 100)} %`}</Figure>.
            </p>
          )}
          <p>
            {priceWords.restsOn}{' '}
            <b>
              <Figure path={path('unverifiedShare')}>{`${Math.round(price.unverifiedShare * 100)} %`}</Figure>
            </b>
          </p>
        </section>
        <RangePicture plan={plan} at={at} />
      </div>
      <Risks plan={plan} at={at} />
      <div className={frame.two}>
        <Lines plan={plan} at={at} />
      </div>
    </>
  );
};

const Lines = ({ plan, at }: Props) => (
  <table className={css.table}>
    <caption>{say.linesTitle}</caption>
    <thead>
      <tr>
        <th scope="col">{screenWords.colItem}</th>
        <th scope="col" className={css.right}>
          {screenWords.colQuantity}
        </th>
        <th scope="col" className={css.right}>
          {screenWords.colLikely}
        </th>
      </tr>
    </thead>
    <tbody>
      {linesInOrder(plan.price.lines).flatMap(({ kind, lines }) => [
        <tr key={kind} className={css.group}>
          <th scope="colgroup" colSpan={3}>
            {priceWords.kinds[kind]}
          </th>
        </tr>,
        ...lines.map(({ line, at: i }) => (
          <tr key={line.id}>
            <th scope="row">{line.say}</th>
            <td className={css.right}>
              {line.unit !== '$' && (
                <>
                  <Figure path={figurePath(at, `price/lines/${i}/quantity`)}>{hundredths(line.quantity)}</Figure>{' '}
                  <small>{line.unit === 'each' ? '' : line.unit}</small>
                </>
              )}
            </td>
            <td className={css.right}>
              <Figure path={figurePath(at, `price/lines/${i}/likelyCents`)}>{dollars(line.likelyCents)}</Figure>
            </td>
          </tr>
        )),
      ])}
      <tr>
        <th scope="row">
          <b>{closeoutWords.likely}</b>
        </th>
        <td />
        <td className={css.right}>
          <b>
            <Figure path={figurePath(at, 'tally/likelyCents')}>{dollars(plan.tally.likelyCents)}</Figure>
          </b>
        </td>
      </tr>
    </tbody>
  </table>
);

const Risks = ({ plan, at }: Props) => (
  <table className={css.table}>
    <caption>
      {say.risksTitle} <small>{say.risksNote}</small>
    </caption>
    <tbody>
      {plan.price.unitChanges.map((change, i) => (
        <tr key={change.id}>
          <th scope="row">
            {change.say} <small>{say.each(change)}</small>
          </th>
          <td className={css.right}>
            <Figure path={figurePath(at, `price/unitChanges/${i}/cents`)}>{dollars(change.cents)}</Figure>
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
