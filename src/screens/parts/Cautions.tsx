import { type CautionPlace, cautionsAt } from '../../documents/cautions';
import { cautionWords as say } from '../../words/en/cautions';
import { useJob } from '../selected';
import css from './cautions.module.css';

/** What this job is to be careful about, here. Nothing where there is nothing. */
export const Cautions = ({ at }: { readonly at: CautionPlace }) => {
  const cautions = cautionsAt(useJob(), at);
  if (cautions.length === 0) return null;
  return (
    <section className={css.cautions}>
      <h3>{say.title}</h3>
      {cautions.map((c) => (
        <p key={c.id}>
          {c.say} <small>{c.cited}</small>
        </p>
      ))}
    </section>
  );
};
