import type { Plan } from '../../facts/result';
import { priceWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath } from '../selected';
import css from './drivers.module.css';

/** What drives low and high apart, as bars on one scale. A credit drives them too: its bar is its size. */
export const Drivers = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const drivers = plan.price.drivers
    .map((driver, i) => ({ driver, i }))
    .sort((a, b) => Math.abs(b.driver.cents) - Math.abs(a.driver.cents));
  const most = Math.abs(drivers[0]?.driver.cents ?? 1);
  return (
    <section className={css.box}>
      <h3>{say.driversTitle}</h3>
      <p className={css.note}>{say.driversNote({ count: drivers.length })}</p>
      <ul>
        {drivers.map(({ driver, i }) => (
          <li key={driver.id} className={css.driver}>
            <span>{driver.say}</span>
            <span className={css.bar} aria-hidden="true">
              <span style={{ width: `${(Math.abs(driver.cents) / most) * 100}%` }} />
            </span>
            <b>
              <Figure path={figurePath(at, `price/drivers/${i}/cents`)}>{dollars(driver.cents)}</Figure>
            </b>
          </li>
        ))}
      </ul>
    </section>
  );
};
