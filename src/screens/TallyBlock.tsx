import type { ReactNode } from 'react';
import type { Plan } from '../facts/result';
import { screenWords as say } from '../words/en/screens';
import { AfciGain } from './parts/AfciGain';
import { StopSign } from './parts/EffectMark';
import { Figure } from './parts/Figure';
import { dollars, thousands } from './parts/money';
import parts from './parts/parts.module.css';
import { WithTerms } from './parts/Term';
import { figurePath, useSelected } from './selected';
import css from './tally.module.css';

const Row = ({
  term,
  brief,
  children,
  stops = false,
}: {
  readonly term: ReactNode;
  readonly brief: string;
  readonly children: ReactNode;
  readonly stops?: boolean;
}) => (
  <div className={stops ? css.stops : css.row}>
    <dt>
      <span className={css.term}>{typeof term === 'string' ? <WithTerms text={term} /> : term}</span>
      <span className={css.brief} aria-hidden="true">
        {brief}
      </span>
    </dt>
    <dd>{children}</dd>
  </div>
);

/** The six figures of the selected option, in the order of every sheet. */
export const TallyBlock = () => {
  const selected = useSelected();
  const plan: Plan | null = selected?.plan ?? null;
  const at = (key: string) => figurePath(selected?.at ?? 0, `tally/${key}`);
  const none = <span>{say.noFigure}</span>;
  const t = plan?.tally;
  return (
    <dl className={css.tally}>
      <Row
        term={say.tally.price}
        brief={plan && !plan.price.complete ? say.tallyBrief.priceOpen : say.tallyBrief.price}
      >
        {t ? (
          <>
            <span className={css.full}>
              <Figure path={at('lowCents')}>{dollars(t.lowCents)}</Figure>–
              <Figure path={at('highCents')}>{dollars(t.highCents)}</Figure>
            </span>
            <span className={css.short}>
              <span className={parts.hidden}>
                {dollars(t.lowCents)}–{dollars(t.highCents)}
              </span>
              <span aria-hidden="true">
                ${thousands(t.lowCents)}–{thousands(t.highCents)}k
              </span>
            </span>
            {plan.price.complete || <small className={css.open}>{say.notComplete}</small>}
          </>
        ) : (
          none
        )}
      </Row>
      <Row term={say.tally.labor} brief={say.tallyBrief.labor}>
        {t ? (
          <>
            <Figure path={at('crewHours')}>{t.crewHours}</Figure> <small>h</small>
          </>
        ) : (
          none
        )}
      </Row>
      <Row term={say.tally.outage} brief={say.tallyBrief.outage}>
        {t ? (
          <>
            <Figure path={at('outageHours')}>{t.outageHours}</Figure> <small>h</small>
          </>
        ) : (
          none
        )}
      </Row>
      <Row term={say.tally.splices} brief={say.tallyBrief.splices}>
        {t ? (
          <>
            <Figure path={at('conductorsSpliced')}>{t.conductorsSpliced}</Figure> <small>{say.in}</small>{' '}
            <Figure path={at('boxes')}>{t.boxes}</Figure>{' '}
            <small className={css.unit}>{say.boxes({ count: t.boxes })}</small>
          </>
        ) : (
          none
        )}
      </Row>
      <Row term={say.tally.afci} brief={say.tallyBrief.afci}>
        {plan ? <AfciGain plan={plan} at={selected?.at ?? 0} /> : none}
      </Row>
      <Row
        stops={(t?.stops ?? 0) > 0}
        brief={say.tallyBrief.stops}
        term={
          <>
            {(t?.stops ?? 0) > 0 && <StopSign />} {say.tally.stops}
          </>
        }
      >
        {t ? <Figure path={at('stops')}>{t.stops}</Figure> : none}
      </Row>
    </dl>
  );
};
