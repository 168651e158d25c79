import { closeoutWords as say } from '../../words/en/closeout';
import css from './paper.module.css';

/** Lines to fill in by hand: torque as the part is marked, who proved and who saw. No figure is invented for them. */
export const Records = () => (
  <div className={css.records}>
    <section>
      <h3>{say.torqueTitle}</h3>
      {say.torque.map((text) => (
        <p key={text}>
          {text} <b>{say.torqueUnit}</b>
        </p>
      ))}
      <p>{say.tool}</p>
    </section>
    <section>
      <h3>{say.signedTitle}</h3>
      {say.signed.map((text, i) => (
        <p key={text}>
          {text} {i === 2 && <b>{say.ohm}</b>}
        </p>
      ))}
    </section>
  </div>
);
