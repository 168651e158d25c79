import type { Comparison } from '../../facts/result';
import { priceWords, pricePartWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { useOptions, useSelected } from '../selected';
import { useJobState } from '../session';
import css from './lines.module.css';

/** The selected option line by line beside the advised one, and what would make the two cost the same. */
export const ComparePart = () => {
  const selected = useSelected();
  const options = useOptions();
  const comparisons = useJobState((s) => s.answer?.result?.comparisons ?? null);
  const k = comparisons?.findIndex((c) => c.option === selected?.option.id) ?? -1;
  const its = comparisons?.[k];
  if (!selected || comparisons === null) return <p className={parts.empty}>{say.notPlanned}</p>;
  if (!its) return <p className={parts.empty}>{say.alone}</p>;
  const against = options.find((o) => o.option.id === its.against)?.letter ?? its.against;
  return (
    <AfterNotes label={say.parts.compare}>
      <div className={css.pair}>
        <Rows its={its} path={`comparisons/${k}`} letters={[selected.letter, against]} />
        <Evens its={its} path={`comparisons/${k}`} />
      </div>
    </AfterNotes>
  );
};

/** From the middle: less to the left, more to the right. */
const barStyle = (share: number) => ({
  width: `${Math.abs(share) * 50}%`,
  marginLeft: `${share < 0 ? 50 + share * 50 : 50}%`,
});

interface Props {
  readonly its: Comparison;
  readonly path: string;
}
const Rows = ({ its, path, letters: [mine, other] }: Props & { readonly letters: readonly [string, string] }) => {
  const most = Math.max(1, ...its.rows.map((r) => Math.abs(r.differsCents)));
  return (
    <table className={`${css.lines} ${css.compare}`}>
      <caption>
        {say.compareTitle({ option: mine, against: other })}{' '}
        <small>{its.rows.length === 0 ? say.same : say.only}</small>
      </caption>
      <thead>
        <tr>
          <th scope="col">{screenWords.colItem}</th>
          {[mine, other].map((text) => (
            <th scope="col" key={text} className={css.right}>
              {text}
            </th>
          ))}
          <th scope="col" colSpan={2} className={css.right}>
            {say.difference}
          </th>
        </tr>
      </thead>
      <tbody>
        {its.rows.map((row, i) => (
          <tr key={row.id}>
            <th scope="row">
              {row.say} <small>{priceWords.kinds[row.kind].split(',')[0]!.toLowerCase()}</small>
            </th>
            <td className={css.right}>
              <Figure path={`${path}/rows/${i}/cents`}>{dollars(row.cents)}</Figure>
            </td>
            <td className={css.right}>
              <Figure path={`${path}/rows/${i}/againstCents`}>{dollars(row.againstCents)}</Figure>
            </td>
            <td className={css.barCell} aria-hidden="true">
              <span className={row.differsCents < 0 ? css.less : css.more} style={barStyle(row.differsCents / most)} />
            </td>
            <td className={css.likely}>
              <Figure path={`${path}/rows/${i}/differsCents`}>{dollars(row.differsCents)}</Figure>
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{say.difference}</th>
          <td colSpan={3} />
          <td className={css.likely}>
            <Figure path={`${path}/differsCents`}>{dollars(its.differsCents)}</Figure>
          </td>
        </tr>
      </tfoot>
    </table>
  );
};

const Evens = ({ its, path }: Props) => (
  <div>
    <table className={css.lines}>
      <caption>
        {say.evensTitle} <small>{its.breakEvens.length === 0 ? say.noEvens : say.evensNote}</small>
      </caption>
      <thead>
        <tr>
          <th scope="col">{screenWords.colItem}</th>
          <th scope="col" className={css.right}>
            {say.now} $
          </th>
          <th scope="col" className={css.right}>
            {say.even} $
          </th>
        </tr>
      </thead>
      <tbody>
        {its.breakEvens.map((even, i) => (
          <tr key={even.id}>
            <th scope="row">
              {even.say} <small>{say.perUnit(even)}</small>
            </th>
            <td className={css.right}>
              <Figure path={`${path}/breakEvens/${i}/now`}>{even.now.toFixed(2)}</Figure>
            </td>
            <td className={css.likely}>
              <Figure path={`${path}/breakEvens/${i}/at`}>{even.at.toFixed(2)}</Figure>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
