import type { Plan } from '../../facts/result';
import type { Tally } from '../../job/schema';
import type { Cents } from '../../units/types';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath } from '../selected';
import css from './tables.module.css';

/** A price axis all options share, from a round sum below the lowest to one above the highest. */
export interface PriceScale {
  readonly low: Cents;
  readonly high: Cents;
  readonly step: Cents;
}
const STEPS: readonly Cents[] = [5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000].map((hundred) => hundred * 10_000);
const MOST_TICKS = 6;

export const priceScale = (tallies: readonly Tally[]): PriceScale | null => {
  if (tallies.length === 0) return null;
  const least = Math.min(...tallies.map((t) => t.lowCents));
  const most = Math.max(...tallies.map((t) => t.highCents));
  const step = STEPS.find((s) => (most - least) / s <= MOST_TICKS) ?? STEPS.at(-1)!;
  const low = Math.floor(least / step) * step;
  return { low, high: Math.max(Math.ceil(most / step) * step, low + step), step };
};

const share = (scale: PriceScale, cents: Cents): number => ((cents - scale.low) / (scale.high - scale.low)) * 100;

export const PriceAxis = ({ scale }: { readonly scale: PriceScale }) => {
  const ticks = Array.from(
    { length: Math.round((scale.high - scale.low) / scale.step) + 1 },
    (_, k) => scale.low + k * scale.step,
  );
  const shown = ticks.filter((_, k) => k % Math.ceil(ticks.length / 5) === 0);
  return (
    <span className={css.axis} aria-hidden="true">
      {shown.map((cents) => (
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
      <span className={css.rangeText}>
        <Figure path={path('lowCents')}>{dollars(lowCents)}</Figure>–
        <Figure path={path('highCents')}>{dollars(highCents)}</Figure>
        <b>
          <Figure path={path('likelyCents')}>{dollars(likelyCents)}</Figure>
        </b>
      </span>
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
