import type { DirectoryEntry, Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { Figure } from '../parts/Figure';
import { figurePath } from '../selected';
import css from './papers.module.css';

interface Entry {
  readonly entry: DirectoryEntry;
  readonly i: number;
}
/** Odd spaces left, even ones right, as they stand in the panel. */
const sides = (plan: Plan): readonly [Entry[], Entry[]] => {
  const all = plan.directory.map((entry, i) => ({ entry, i }));
  return [all.filter(({ entry }) => entry.space % 2 === 1), all.filter(({ entry }) => entry.space % 2 === 0)];
};

/** The list inside the panel's door. */
export const DirectoryTable = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  if (plan.directory.length === 0) return <p className={css.none}>{say.noDirectory}</p>;
  return (
    <section aria-label={say.directoryTitle}>
      <h3 className={css.head}>{say.directoryTitle}</h3>
      <div className={css.directory}>
        {sides(plan).map((entries, side) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: left and right, always
          <table key={side} className={css.table}>
            <thead>
              <tr>
                {[say.space, say.leg, say.circuit, say.protection].map((text) => (
                  <th scope="col" key={text}>
                    {text}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {entries.map(({ entry, i }) => {
                const path = (key: string) => figurePath(at, `directory/${i}/${key}`);
                return (
                  <tr key={entry.space}>
                    <th scope="row">
                      <Figure path={path('space')}>{entry.space}</Figure>
                    </th>
                    <td>
                      <Figure path={path('leg')}>{entry.leg}</Figure>
                    </td>
                    <td className={css.entry}>
                      <Figure path={path('text')}>{entry.text}</Figure>
                    </td>
                    <td className={css.noWrap}>
                      <Figure path={path('protection')}>{entry.protection}</Figure>
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        ))}
      </div>
    </section>
  );
};
