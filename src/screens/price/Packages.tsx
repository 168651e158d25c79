import type { Plan } from '../../facts/result';
import { pricePartWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import parts from '../parts/parts.module.css';
import { figurePath, useJob } from '../selected';
import { useActions } from '../session';
import beside from './beside.module.css';
import css from './drivers.module.css';
import { choosePackage } from './takeAlternates';

/** Good, better, best: the same job with more or less of what the owner may choose. */
export const Packages = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const job = useJob();
  const { edit } = useActions();
  const { packages, alternates } = plan.price;
  if (packages.length === 0) return null;
  const named = (id: string) => alternates.find((a) => a.id === id)?.say ?? id;
  return (
    <section className={css.box}>
      <h3>{say.packagesTitle}</h3>
      <p className={css.note}>{say.packagesNote}</p>
      <ul>
        {packages.map((p, i) => (
          <li key={p.id} className={beside.package} aria-current={p.taken || undefined}>
            <div>
              <b>{p.say}</b> {p.taken && <small>{say.packageTaken}</small>}
              <small>{say.withAlternates({ names: p.alternates.map(named).join(', ') })}</small>
            </div>
            <span>
              <b>
                <Figure path={figurePath(at, `price/packages/${i}/likelyCents`)}>{dollars(p.likelyCents)}</Figure>
              </b>
              <small>
                <Figure path={figurePath(at, `price/packages/${i}/lowCents`)}>{dollars(p.lowCents)}</Figure>–
                <Figure path={figurePath(at, `price/packages/${i}/highCents`)}>{dollars(p.highCents)}</Figure>
              </small>
            </span>
            <button
              type="button"
              className={parts.button}
              disabled={p.taken}
              aria-label={say.takePackage({ name: p.say })}
              onClick={() => edit(choosePackage(job, plan, p.id, say.takePackage({ name: p.say })))}
            >
              {say.take}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
