import { Fragment, type ReactNode } from 'react';
import type { Line, Plan } from '../../facts/result';
import { priceWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath } from '../selected';
import css from './lines.module.css';
import { isCable, linesInOrder } from './linesInOrder';

const hundredths = (n: number): string => String(Math.round(n * 100) / 100);
const ENDS = ['lowCents', 'likelyCents', 'highCents'] as const;
const ON_TOP: ReadonlySet<Line['kind']> = new Set(['overhead', 'profit', 'tax']);

interface Props {
  readonly plan: Plan;
  readonly at: number;
  readonly letter: string;
  /** Id of the line looked into. */
  readonly open: string | null;
  readonly onOpen: (line: string | null) => void;
  /** What is behind it, where it stands right under the line. */
  readonly behind: ReactNode;
}

/** Every line of the price; the one picked says what is behind it. */
export const LinesTable = ({ plan, at, letter, open, onOpen, behind }: Props) => {
  const path = (key: string) => figurePath(at, `price/lines/${key}`);
  return (
    <table className={css.lines}>
      <caption>{say.title({ option: letter })}</caption>
      <thead>
        <tr>
          <th scope="col">{screenWords.colItem}</th>
          <th scope="col" className={css.right}>
            {screenWords.colQuantity}
          </th>
          {[screenWords.colLow, screenWords.colLikely, screenWords.colHigh].map((text) => (
            <th scope="col" key={text} className={css.right}>
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {linesInOrder(plan.price.lines).map(({ kind, lines }) => (
          <Fragment key={kind}>
            <tr className={css.kind}>
              <th scope="colgroup" colSpan={5}>
                {say.kinds[kind]}
              </th>
            </tr>
            {lines.map(({ line, at: i }) => {
              const on = open === line.id;
              return (
                <Fragment key={line.id}>
                  <tr className={on ? css.on : undefined}>
                    <th scope="row">
                      <button
                        type="button"
                        className={css.pick}
                        aria-pressed={on}
                        aria-label={say.openLine({ line: line.say })}
                        onClick={() => onOpen(on ? null : line.id)}
                      >
                        {line.say}
                      </button>
                      {line.rule !== null && <span className={css.mark} title={say.becauseTitle} aria-hidden="true" />}
                    </th>
                    <td className={css.right}>
                      {!ON_TOP.has(line.kind) && (
                        <>
                          <Figure path={path(`${i}/quantity`)}>{hundredths(line.quantity)}</Figure>{' '}
                          <small>
                            {line.unit === 'each' ? '' : line.unit} {isCable(line) && say.used}
                          </small>
                        </>
                      )}
                    </td>
                    {ENDS.map((key) => (
                      <td key={key} className={key === 'likelyCents' ? css.likely : css.right}>
                        <Figure path={path(`${i}/${key}`)}>{dollars(line[key])}</Figure>
                      </td>
                    ))}
                  </tr>
                  {on && behind && (
                    <tr>
                      <td colSpan={5} className={css.under}>
                        {behind}
                      </td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </Fragment>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={2}>
            {say.likely} <small>{say.nearest}</small>
          </th>
          {ENDS.map((key) => (
            <td key={key} className={key === 'likelyCents' ? css.likely : css.right}>
              <Figure path={figurePath(at, `tally/${key}`)}>{dollars(plan.tally[key])}</Figure>
            </td>
          ))}
        </tr>
      </tfoot>
    </table>
  );
};
