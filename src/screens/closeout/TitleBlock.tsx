import type { ReactNode } from 'react';
import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { screenWords } from '../../words/en/screens';
import { AfciGain } from '../parts/AfciGain';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath, type OptionView, useJob } from '../selected';
import css from './paper.module.css';

const Cell = ({ head, main, note }: { readonly head: string; readonly main: ReactNode; readonly note: ReactNode }) => (
  <div>
    <span>{head}</span>
    <b>{main}</b>
    <small>{note}</small>
  </div>
);

/** Along the bottom of every page: job, option, code year, and the tally in its fixed order. */
export const TitleBlock = ({ view, plan }: { readonly view: OptionView; readonly plan: Plan }) => {
  const job = useJob();
  const { tally } = plan;
  const at = (key: string) => figurePath(view.at, `tally/${key}`);
  const { edition } = job.code;
  return (
    <div className={css.block}>
      <Cell head={say.job} main={job.title || screenWords.untitled} note={say.revision({ day: job.changedOn })} />
      <Cell head={say.option} main={view.letter} note={view.option.title} />
      <Cell
        head={say.codeYear}
        main={edition === 'unknown' ? screenWords.codeUnknown : screenWords.codeYear({ edition })}
        note={screenWords.grade[job.survey.grade]}
      />
      <Cell
        head={say.priceAs[plan.price.quote.as]}
        main={
          plan.price.quote.fixedCents === null ? (
            <>
              <Figure path={at('lowCents')}>{dollars(tally.lowCents)}</Figure>–
              <Figure path={at('highCents')}>{dollars(tally.highCents)}</Figure>
            </>
          ) : (
            <Figure path={figurePath(view.at, 'price/quote/fixedCents')}>{dollars(plan.price.quote.fixedCents)}</Figure>
          )
        }
        note={plan.price.complete ? '' : screenWords.notComplete}
      />
      <Cell
        head={say.laborOutage}
        main={
          <>
            <Figure path={at('crewHours')}>{tally.crewHours}</Figure> h ·{' '}
            <Figure path={at('outageHours')}>{tally.outageHours}</Figure> h
          </>
        }
        note={say.likelyHours}
      />
      <Cell
        head={say.splices}
        main={<Figure path={at('conductorsSpliced')}>{tally.conductorsSpliced}</Figure>}
        note={say.inBoxes({ boxes: tally.boxes })}
      />
      <Cell
        head={say.gainAfci}
        main={<AfciGain plan={plan} at={view.at} />}
        note={plan.afciOpen > 0 ? screenWords.afciOpen : say.circuits}
      />
      <Cell head={say.stops} main={<Figure path={at('stops')}>{tally.stops}</Figure>} note={say.stopsNote} />
      <i>5</i>
    </div>
  );
};
