import type { Plan } from '../../facts/result';
import type { Id } from '../../units/types';
import { layoutWords } from '../../words/en/layout';
import { priceWords } from '../../words/en/price';
import { screenWords as say } from '../../words/en/screens';
import { visibleWords } from '../../words/en/visible';
import { useNewOption } from '../layout/useNewOption';
import { AfciGain } from '../parts/AfciGain';
import { StopSign } from '../parts/EffectMark';
import { Figure } from '../parts/Figure';
import parts from '../parts/parts.module.css';
import table from '../parts/table.module.css';
import { figurePath, type OptionView, useJob, useOptions } from '../selected';
import { useActions, useJobState } from '../session';
import { OptionThumb } from './OptionThumb';
import { PriceAxis, PriceRange, priceScale } from './PriceRange';
import css from './price.module.css';

const head = [say.colOption, null, say.colLabor, say.colOutage, say.colSplices, say.colAfci, say.colStops] as const;

/** The first thing that stops an option, in its own words, and how many more there are. */
const Stops = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const stops = plan.findings.map((finding, i) => ({ finding, i })).filter((f) => f.finding.effect === 'stops the job');
  const figure = <Figure path={figurePath(at, 'tally/stops')}>{plan.tally.stops}</Figure>;
  const first = stops[0];
  if (!first)
    return (
      <>
        <span className={parts.hidden}>{figure}</span>
        {say.noConflictShort}
      </>
    );
  return (
    <>
      <StopSign /> <b>{figure}</b>{' '}
      <span className={css.stopSay}>
        <Figure path={figurePath(at, `findings/${first.i}/say`)}>{first.finding.say}</Figure>
      </span>
      {stops.length > 1 && <small>{priceWords.moreStops({ count: stops.length - 1 })}</small>}
    </>
  );
};

const Cells = ({ view, plan }: { readonly view: OptionView; readonly plan: Plan }) => {
  const at = (key: string) => figurePath(view.at, `tally/${key}`);
  const { tally } = plan;
  return (
    <>
      <td className={css.number}>
        <Figure path={at('crewHours')}>{tally.crewHours}</Figure> <small>h</small>
      </td>
      <td className={css.number}>
        <Figure path={at('outageHours')}>{tally.outageHours}</Figure> <small>h</small>
      </td>
      <td className={css.number}>
        <Figure path={at('conductorsSpliced')}>{tally.conductorsSpliced}</Figure> <small>{say.in}</small>{' '}
        <Figure path={at('boxes')}>{tally.boxes}</Figure>
      </td>
      <td className={css.number}>
        <AfciGain plan={plan} at={view.at} /> <small className={css.onlyNarrow}>AFCI</small>
      </td>
      <td className={css.stopsCell}>
        <Stops plan={plan} at={view.at} />
      </td>
    </>
  );
};

/** What stays in sight, under the figures of its option. */
const Visibles = ({ option }: { readonly option: Id }) => {
  const visible = useJobState((s) => s.answer?.result?.advice.visible ?? null);
  const at = visible?.findIndex((v) => v.option === option) ?? -1;
  const things = visible?.[at]?.things ?? [];
  if (things.length === 0) return null;
  return (
    <td className={css.visible}>
      {visibleWords.title}:{' '}
      {things.map((thing, i) => (
        <span key={thing.id}>
          {i > 0 && ', '}
          <Figure path={`advice/visible/${at}/things/${i}/say`}>{thing.say}</Figure>
        </span>
      ))}
    </td>
  );
};

/** Staying where it is is always an answer to look at: offered while nobody has laid it out. */
const InPlaceOffered = () => {
  const job = useJob();
  const start = useNewOption();
  if (!start || job.options.some((o) => o.kind === 'in place')) return null;
  return (
    <tr className={css.optionRow}>
      <th scope="row" className={css.name}>
        {layoutWords.newInPlace}
      </th>
      <td className={css.offered}>
        {layoutWords.inPlaceNotLaid}{' '}
        <button type="button" className={parts.button} onClick={start.inPlace}>
          {layoutWords.firstInPlace}
        </button>
      </td>
    </tr>
  );
};

/** Options side by side on one price axis; the one looked at is marked, and chosen by its name. */
export const OptionsTable = () => {
  const job = useJob();
  const options = useOptions();
  const chosen = useJobState((s) => s.option);
  const { choose } = useActions();
  const scale = priceScale(options.flatMap((o) => (o.plan ? [o.plan.tally] : [])));
  return (
    <table aria-label={say.optionsTitle} className={css.options}>
      <thead>
        <tr className={css.optionsHead}>
          {head.map((text, i) => (
            <th scope="col" key={text ?? 'price'} className={i > 1 && i < 6 ? css.numberHead : undefined}>
              {text ?? (
                <>
                  <span className={parts.hidden}>{say.colPrice}</span>
                  {scale && <PriceAxis scale={scale} />}
                </>
              )}
            </th>
          ))}
          <th scope="col" className={parts.hidden}>
            {visibleWords.title}
          </th>
        </tr>
      </thead>
      <tbody>
        {options.map((view) => {
          const { option, letter, plan } = view;
          const on = option.id === chosen;
          return (
            <tr key={option.id} className={on ? css.optionOn : css.optionRow}>
              <th scope="row" className={css.name}>
                <OptionThumb job={job} option={option} plan={plan} />
                <button type="button" className={table.pick} aria-pressed={on} onClick={() => choose(option.id)}>
                  <b>{letter}</b> <span>{option.title}</span>
                </button>
              </th>
              <td>
                {plan && scale ? (
                  <PriceRange plan={plan} scale={scale} at={view.at} strong={on} />
                ) : (
                  <small>{say.notPlannedYet}</small>
                )}
              </td>
              {plan && <Cells view={view} plan={plan} />}
              <Visibles option={option.id} />
            </tr>
          );
        })}
        <InPlaceOffered />
      </tbody>
    </table>
  );
};
