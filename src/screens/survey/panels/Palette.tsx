import { surveyWords as say } from '../../../words/en/survey';
import { lengthText } from '../../parts/lengthParts';
import parts from '../../parts/parts.module.css';
import { useJob } from '../../selected';
import { obstacleOf, PALETTE, type Thing } from '../palette';
import { freePlace } from '../placing';
import { freshId } from '../ref';
import { useSheet } from '../sheetState';
import { useAdd } from '../useAdd';
import css from './panels.module.css';

/** One scale for all, so that a size is seen before it is picked; what is longer than this is cut off. */
const PX_PER_INCH = 0.62;
const MOST_IN = 96;

const InPlan = ({ thing: { kind, size } }: { readonly thing: Thing }) => {
  const w = Math.max(3, Math.min(MOST_IN, size.width) * PX_PER_INCH);
  const h = Math.max(3, Math.min(MOST_IN, size.depth) * PX_PER_INCH);
  const round = kind === 'water heater' || kind === 'tank' || kind === 'sump';
  const crossed = kind === 'furnace' || kind === 'boiler' || kind === 'flue' || kind === 'chimney';
  return (
    <svg
      width={MOST_IN * PX_PER_INCH + 2}
      height={24}
      viewBox={`${-w / 2 - 1} -12 ${w + 2} 24`}
      aria-hidden="true"
      className={css.symbol}
    >
      <rect x={-w / 2} y={-h / 2} width={w} height={h} className={kind === 'post' ? css.solid : css.thing} />
      {round && <circle r={Math.min(w, h) / 2} className={css.fine} />}
      {kind === 'sink' && <circle r={Math.min(w, h) / 3} className={css.fine} />}
      {crossed && (
        <path d={`M${-w / 2} ${-h / 2}L${w / 2} ${h / 2}M${-w / 2} ${h / 2}L${w / 2} ${-h / 2}`} className={css.fine} />
      )}
      {kind === 'stair' &&
        Array.from({ length: 8 }, (_, k) => -w / 2 + ((k + 1) * w) / 9).map((x) => (
          <path key={x} d={`M${x} ${-h / 2}V${h / 2}`} className={css.fine} />
        ))}
    </svg>
  );
};

/** Things in the way, drawn to one scale; the one picked is put in by a tap in the plan, or at a free place by its button. */
export const Palette = () => {
  const job = useJob();
  const { now, set } = useSheet();
  const add = useAdd();
  const picked = PALETTE.find((t) => t.kind === now.thing);
  return (
    <div className={css.paletteAll}>
      {picked ? (
        <button
          type="button"
          className={parts.button}
          onClick={() =>
            add(
              '/site/obstacles',
              obstacleOf(
                picked,
                freshId(job, '/site/obstacles', picked.kind),
                freePlace(job, picked.size.width, picked.size.depth),
              ),
            )
          }
        >
          {say.putIn({ kind: picked.kind })}
        </button>
      ) : (
        <p className={css.pickOne}>{say.pickOne}</p>
      )}
      <fieldset className={css.palette} aria-label={say.paletteTitle}>
        {PALETTE.map((thing) => (
          <button
            key={thing.kind}
            type="button"
            aria-pressed={thing.kind === now.thing}
            title={say.pick({
              kind: thing.kind,
              size: `${lengthText(thing.size.width)} × ${lengthText(thing.size.depth)} × ${lengthText(thing.size.height)}`,
            })}
            onClick={() => set({ thing: thing.kind })}
          >
            <InPlan thing={thing} />
            <span>{thing.kind}</span>
          </button>
        ))}
      </fieldset>
    </div>
  );
};
