import { useMemo } from 'react';
import type { Plan } from '../../facts/result';
import { rangePicture } from '../../pricing/picture';
import { pricePartWords as say } from '../../words/en/price';
import { Figure } from '../parts/Figure';
import { dollars } from '../parts/money';
import { figurePath } from '../selected';
import beside from './beside.module.css';
import css from './drivers.module.css';

const BARS = 36;
const HEIGHT = 100;

/** The draws as bars; low, likely and high as the tally has them, on one axis. */
export const RangePicture = ({ plan, at }: { readonly plan: Plan; readonly at: number }) => {
  const { bars } = useMemo(() => rangePicture(plan.price, BARS), [plan.price]);
  const { lowCents, likelyCents, highCents } = plan.tally;
  if (bars.length === 0) return <p className={css.note}>{say.noPicture}</p>;
  const [from, to] = [Math.min(bars[0]!.from, lowCents), Math.max(bars.at(-1)!.to, highCents)];
  const x = (cents: number): number => ((cents - from) / (to - from)) * 100;
  const most = Math.max(...bars.map((b) => b.count));
  const ends = [
    ['lowCents', lowCents, beside.endLow],
    ['likelyCents', likelyCents, beside.endLikely],
    ['highCents', highCents, beside.endHigh],
  ] as const;
  return (
    <section className={css.box}>
      <h3>{say.pictureTitle}</h3>
      <div className={beside.picture}>
        <svg viewBox={`0 0 100 ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label={say.pictureAlt}>
          {bars.map((bar) => {
            const within = bar.to > lowCents && bar.from < highCents;
            const tall = (bar.count / most) * (HEIGHT - 6);
            return (
              <rect
                key={bar.from}
                x={x(bar.from) + 0.15}
                width={Math.max(0.1, x(bar.to) - x(bar.from) - 0.3)}
                y={HEIGHT - tall}
                height={tall}
                className={within ? beside.inRange : beside.outRange}
              />
            );
          })}
          {ends.map(([key, cents]) => (
            <line key={key} x1={x(cents)} x2={x(cents)} y1={0} y2={HEIGHT} className={beside.mark} />
          ))}
          <line x1={0} x2={100} y1={HEIGHT} y2={HEIGHT} className={beside.ground} />
        </svg>
        <div className={beside.ends}>
          {ends.map(([key, cents, place]) => (
            <span key={key} className={place} style={{ left: `${x(cents)}%` }}>
              <Figure path={figurePath(at, `tally/${key}`)}>{dollars(cents)}</Figure>
            </span>
          ))}
        </div>
      </div>
      <p className={css.note}>{say.pictureNote}</p>
    </section>
  );
};
