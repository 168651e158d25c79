import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { screenWords } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { Length } from '../parts/Length';
import { dollars } from '../parts/money';
import { homeRunTag } from '../parts/names';
import { figurePath, useJob } from '../selected';
import css from './papers.module.css';

/** Pieces to cut from each coil, with a bar of how they lie in it and what is left. */
export const CutList = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  if (plan.cuts.length === 0) return <p className={css.none}>{say.noCuts}</p>;
  return (
    <table className={`${css.table} ${css.cuts}`}>
      <caption>
        {say.cutsTitle} <small>{say.cutsNote}</small>
      </caption>
      <thead>
        <tr>
          <th scope="col">{say.cable}</th>
          <th scope="col">{say.from}</th>
          <th scope="col">{say.pieces}</th>
          <th scope="col" className={css.right}>
            {say.left}
          </th>
          <th scope="col" className={css.right}>
            {say.costBought}
          </th>
        </tr>
      </thead>
      <tbody>
        {plan.cuts.flatMap((cut, c) => {
          const path = (key: string) => figurePath(at, `cuts/${c}/${key}`);
          return cut.coils.map((coil, k) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: coils have no id; their place in the result is their name
            <tr key={`${c} ${k}`} className={k > 0 ? css.further : c > 0 ? css.nextWay : undefined}>
              {k === 0 && (
                <th scope="rowgroup" rowSpan={cut.coils.length} className={css.noWrap}>
                  <Figure path={path('cable')}>{cut.cable}</Figure>
                  <small>
                    {cut.proof.best ? screenWords.cutBest : screenWords.cutAbove({ share: cut.proof.atMostAbove })}
                  </small>
                </th>
              )}
              <td className={css.noWrap}>
                <Figure path={path(`coils/${k}/length`)}>
                  <Length inches={coil.length} />
                </Figure>{' '}
                <small>{coil.bought ? say.bought : say.stock}</small>
              </td>
              <td>
                <span className={css.coil} aria-hidden="true">
                  {coil.pieces.map((piece, p) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: one home run may have two pieces of a length
                    <span key={p} style={{ width: `${(piece.length / coil.length) * 100}%` }} />
                  ))}
                </span>
                <span className={css.pieces}>
                  {coil.pieces.map((piece, p) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: one home run may have two pieces of a length
                    <span key={p}>
                      <Figure path={path(`coils/${k}/pieces/${p}/length`)}>
                        <Length inches={piece.length} />
                      </Figure>{' '}
                      <small>{homeRunTag(job, piece.homeRun)}</small>
                    </span>
                  ))}
                </span>
              </td>
              <td className={css.right}>
                <Figure path={path(`coils/${k}/left`)}>
                  <Length inches={coil.left} />
                </Figure>
                {coil.kept && <small> {say.toTruck}</small>}
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
  );
};
