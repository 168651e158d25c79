import type { Plan } from '../../facts/result';
import type { Tally } from '../../job/schema';
import type { Cents } from '../../units/types';
import { screenWords as say } from '../../words/en/screens';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath } from '../selected';
import css from './price.module.css';

/** A price axis all options share, with round sums as its ticks. */
export interface PriceScale {
  readonly low: Cents;
  readonly high: Cents;
  readonly step: Cents;
}
const STEPS: readonly Cents[] = [5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000].map((hundred) => hundred * 10_000);
const MOST_TICKS = 4;
/** Left free at both ends for the sums written there, as a share of the spread. */
const AIR = 0.32;

export const priceScale = (tallies: readonly Tally[]): PriceScale | null => {
  if (tallies.length === 0) return null;
  const least = Math.min(...tallies.map((t) => t.lowCents));
  const most = Math.max(...tallies.map((t) => t.highCents));
  const spread = Math.max(most - least, least * 0.1, 10_000);
  const step = STEPS.find((s) => spread / s <= MOST_TICKS) ?? STEPS.at(-1)!;
  return { low: least - spread * AIR, high: most + spread * AIR, step };
};

const share = (scale: PriceScale, cents: Cents): number => ((cents - scale.low) / (scale.high - scale.low)) * 100;

export const PriceAxis = ({ scale }: { readonly scale: PriceScale }) => {
  const first = Math.ceil(scale.low / scale.step);
  const last = Math.floor(scale.high / scale.step);
  const ticks = Array.from({ length: last - first + 1 }, (_, k) => (first + k) * scale.step);
  return (
    <span className={css.axis} aria-hidden="true">
      {ticks
        .filter((cents) => share(scale, cents) > 6 && share(scale, cents) < 94)
        .map((cents) => (
          <span key={cents} style={{ left: `${share(scale, cents)}%` }}>
            {dollars(cents)}
          </span>
        ))}
    </span>
  );
};

interface Props {
  readonly plan: Plan;
  readonly scale: PriceScale;
  readonly at: number;
  readonly strong: boolean;
}
/** A dimension line on the axis: ticks at low and high, a triangle at likely, its sum over it. */
export const PriceRange = ({ plan, scale, at, strong }: Props) => {
  const { lowCents, likelyCents, highCents } = plan.tally;
  const path = (key: string) => figurePath(at, `tally/${key}`);
  const [l, m, h] = [lowCents, likelyCents, highCents].map((c) => share(scale, c)) as [number, number, number];
  return (
    <span className={css.range}>
      <span className={css.low} style={{ right: `${100 - l}%` }}>
        <Figure path={path('lowCents')}>{dollars(lowCents)}</Figure>
      </span>
      <b className={css.mid} style={{ left: `${m}%` }}>
        <Figure path={path('likelyCents')}>{dollars(likelyCents)}</Figure>
      </b>
      <span className={css.high} style={{ left: `${h}%` }}>
        <Figure path={path('highCents')}>{dollars(highCents)}</Figure>
      </span>
      {!plan.price.complete && <small className={css.incomplete}>{say.notComplete}</small>}
      <svg className={css.rangeLine} viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
        <line x1={l} y1={7} x2={h} y2={7} className={strong ? css.strong : css.thin} />
      </svg>
      {[l, h].map((x) => (
        <span key={x} className={css.at} style={{ left: `${x}%` }}>
          <svg width="9" height="14" aria-hidden="true">
            <path d="M1 10.5L8 3.5" className={css.tick} />
          </svg>
        </span>
      ))}
      <span className={css.at} style={{ left: `${m}%` }}>
        <svg width="9" height="14" aria-hidden="true">
          <path d="M4.5 7.5L9 14H0Z" className={css.likely} />
        </svg>
      </span>
    </span>
  );
};
