import type { Plan } from '../../facts/result';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { Length } from '../parts/Length';
import { dollars } from '../parts/money';
import css from '../parts/table.module.css';
import { figurePath } from '../selected';

/** Pieces to cut from each coil, with what is left, and what is to be ordered. */
export const CutList = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => (
  <div className={css.pair}>
    <table className={css.table}>
      <caption>{say.cutsTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{say.colCable}</th>
          <th scope="col">{say.colFrom}</th>
          <th scope="col">{say.colPieces}</th>
          <th scope="col" className={css.right}>
            {say.colLeft}
          </th>
          <th scope="col" className={css.right}>
            {say.colCost}
          </th>
        </tr>
      </thead>
      <tbody>
        {plan.cuts.flatMap((cut, c) => {
          const path = (key: string) => figurePath(at, `cuts/${c}/${key}`);
          return cut.coils.map((coil, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: coils have no id; their place in the result is their name
            <tr key={`${c} ${k}`}>
              {k === 0 && (
                <th scope="rowgroup" rowSpan={cut.coils.length}>
                  <Figure path={path('cable')}>{cut.cable}</Figure>
                  <small>{cut.proof.best ? say.cutBest : say.cutAbove({ share: cut.proof.atMostAbove })}</small>
                </th>
              )}
              <td>
                <Figure path={path(`coils/${k}/length`)}>
                  <Length inches={coil.length} />
                </Figure>{' '}
                <small>{coil.bought ? say.coilBought : say.coilStock}</small>
              </td>
              <td className={css.pieces}>
                {coil.pieces.map((piece, p) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: one home run may have two pieces of a length
                  <span key={p}>
                    <Figure path={path(`coils/${k}/pieces/${p}/length`)}>
                      <Length inches={piece.length} />
                    </Figure>{' '}
                    <small>{piece.homeRun}</small>
                  </span>
                ))}
              </td>
              <td className={css.right}>
                <Figure path={path(`coils/${k}/left`)}>
                  <Length inches={coil.left} />
                </Figure>
              </td>
              {k === 0 && (
                <td className={css.right} rowSpan={cut.coils.length}>
                  <Figure path={path('cents')}>{dollars(cut.cents)}</Figure>
                </td>
              )}
            </tr>
          ));
        })}
      </tbody>
    </table>
    <table className={css.table}>
      <caption>{say.orderTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{say.colItem}</th>
          <th scope="col" className={css.right}>
            {say.colQuantity}
          </th>
          <th scope="col">{say.colUnit}</th>
        </tr>
      </thead>
      <tbody>
        {plan.order.map((line, i) => (
          <tr key={line.item}>
            <th scope="row">{line.say}</th>
            <td className={css.right}>
              <Figure path={figurePath(at, `order/${i}/quantity`)}>{line.quantity}</Figure>
            </td>
            <td>{line.unit}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
