import type { Plan } from '../../facts/result';
import type { Job, Terms } from '../../job/schema';
import { closeoutWords } from '../../words/en/closeout';
import { pricePartWords as say } from '../../words/en/price';
import { screenWords } from '../../words/en/screens';
import { Tasks } from '../closeout/Tasks';
import { Figure } from '../parts/Figure';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { figurePath, useJob, useSelected } from '../selected';
import { useActions } from '../session';
import beside from './beside.module.css';
import css from './drivers.module.css';
import lines from './lines.module.css';

interface Props {
  readonly plan: Plan;
  readonly at: number;
}
const hundredths = (n: number): string => String(Math.round(n * 100) / 100);

/** Who works how long, when the house is dark, and where the work waits for somebody. */
export const DayPart = () => {
  const selected = useSelected();
  const plan = selected?.plan;
  if (!selected || !plan) return <p className={parts.empty}>{say.notPlanned}</p>;
  const { at } = selected;
  return (
    <AfterNotes label={say.parts.day}>
      <div className={lines.pair}>
        <div>
          <TermFields />
          <Shutting plan={plan} at={at} />
          <Crews plan={plan} at={at} />
        </div>
        <div>
          <Holds plan={plan} at={at} />
          <Off plan={plan} at={at} />
        </div>
      </div>
      <Tasks plan={plan} at={at} />
    </AfterNotes>
  );
};

const HOURS = Array.from({ length: 35 }, (_, i) => 5 + i / 2);

const TermFields = () => {
  const { terms } = useJob();
  const { edit } = useActions();
  const set = <K extends keyof Terms>(key: K, value: Job['terms'][K], term: string) =>
    edit({ edit: 'set values', name: say.setTerm({ term }), values: [{ path: `/terms/${key}`, value }] });
  const hour = (key: 'startsAt' | 'endsAt', term: string, fits: (h: number) => boolean) => (
    <label className={parts.field}>
      <span>{term}</span>
      <select value={terms[key]} onChange={(e) => set(key, Number(e.target.value), term.toLowerCase())}>
        {[...new Set([...HOURS, terms[key]])]
          .sort((a, b) => a - b)
          .filter(fits)
          .map((h) => (
            <option key={h} value={h}>
              {say.clock(h)}
            </option>
          ))}
      </select>
    </label>
  );
  return (
    <section className={css.box}>
      <h3>{say.dayTitle}</h3>
      <div className={beside.terms}>
        <label className={parts.field}>
          <span>{say.people}</span>
          <select
            value={terms.people}
            onChange={(e) => set('people', Number(e.target.value) as Terms['people'], say.people.toLowerCase())}
          >
            {[1, 2, 3].map((n) => (
              <option key={n}>{n}</option>
            ))}
          </select>
        </label>
        <label className={parts.field}>
          <span>{say.cutOver}</span>
          <select
            value={terms.cutOver}
            onChange={(e) => set('cutOver', e.target.value as Terms['cutOver'], say.cutOver.toLowerCase())}
          >
            {(['all at once', 'roll-over'] as const).map((name) => (
              <option key={name} value={name}>
                {say.cutOvers[name]}
              </option>
            ))}
          </select>
        </label>
        {hour('startsAt', say.startsAt, (h) => h < terms.endsAt)}
        {hour('endsAt', say.endsAt, (h) => h > terms.startsAt)}
      </div>
    </section>
  );
};

const Shutting = ({ plan, at }: Props) => {
  const { time } = plan;
  const path = (key: string) => figurePath(at, `time/${key}`);
  return (
    <section className={css.box}>
      <h3>{say.goNoGoTitle}</h3>
      {time.goNoGo !== null && (
        <p className={beside.hour}>
          <b>{say.clock(time.goNoGo)}</b> {say.goNoGo}
        </p>
      )}
      {time.goNoGo === null && <p className={css.note}>{time.longOutageHours === 0 ? say.noOutage : say.noGoNoGo}</p>}
      {time.longOutageHours > 0 && (
        <p className={css.share}>
          <span>{say.longOutage}</span>
          <b>
            <Figure path={path('longOutageHours')}>{hundredths(time.longOutageHours)}</Figure> {closeoutWords.hours}
          </b>
        </p>
      )}
      {time.remarks.map((remark, i) => (
        <p key={remark.id} className={beside.remark}>
          <Figure path={path(`remarks/${i}/say`)}>{remark.say}</Figure>
        </p>
      ))}
    </section>
  );
};

const Crews = ({ plan, at }: Props) => (
  <section className={css.box}>
    <h3>{say.crewsTitle}</h3>
    <table className={beside.small}>
      <thead>
        <tr>
          <th scope="col">{say.people}</th>
          <th scope="col">{say.cutOver}</th>
          <th scope="col">{say.days}</th>
          <th scope="col">{say.outageHouse}</th>
        </tr>
      </thead>
      <tbody>
        {plan.time.crews.map((crew, i) => {
          const on = crew.people === plan.time.people && crew.cutOver === plan.time.cutOver;
          const path = (key: string) => figurePath(at, `time/crews/${i}/${key}`);
          return (
            <tr key={`${crew.people} ${crew.cutOver}`} className={on ? lines.on : undefined}>
              <th scope="row">
                <Figure path={path('people')}>{crew.people}</Figure> {on && <small>{say.thisCrew}</small>}
              </th>
              <td>{say.cutOvers[crew.cutOver]}</td>
              <td>
                <Figure path={path('days')}>{hundredths(crew.days)}</Figure>
              </td>
              <td>
                <Figure path={path('outageHours')}>{hundredths(crew.outageHours)}</Figure> {closeoutWords.hours}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  </section>
);

const Holds = ({ plan, at }: Props) => (
  <section className={css.box}>
    <h3>{say.holdsTitle}</h3>
    <ul>
      {plan.time.holds.map((hold, i) => (
        <li key={hold.id} className={beside.risk}>
          <Figure path={figurePath(at, `time/holds/${i}/say`)}>{hold.say}</Figure>
          <small>{closeoutWords.when[hold.when].toLowerCase()}</small>
        </li>
      ))}
    </ul>
  </section>
);

/** One sentence where all are off alike, else one row a circuit. */
const Off = ({ plan, at }: Props) => {
  const job = useJob();
  const { outage } = plan.time;
  const alike = new Set(outage.map((o) => o.hours)).size <= 1;
  return (
    <section className={css.box}>
      <h3>{say.offTitle}</h3>
      <ul>
        {(alike ? outage.slice(0, 1) : outage).map((off, i) => {
          const circuit = job.circuits.find((c) => c.id === off.circuit);
          return (
            <li key={off.circuit} className={css.share}>
              <span>{alike ? say.offAll : `${circuit?.number ?? ''} ${circuit?.label ?? screenWords.untitled}`}</span>
              <b>
                <Figure path={figurePath(at, `time/outage/${i}/hours`)}>{hundredths(off.hours)}</Figure>{' '}
                {closeoutWords.hours}
              </b>
            </li>
          );
        })}
      </ul>
    </section>
  );
};
