import { useMemo, useState } from 'react';
import { settle } from '../../../drawings/settle';
import type { Pt } from '../../../units/types';
import { screenWords } from '../../../words/en/screens';
import { surveyWords as say } from '../../../words/en/survey';
import drawing from '../../drawing/drawing.module.css';
import { PaintLabel } from '../../drawing/PaintLabel';
import { PaintLines } from '../../drawing/PaintLines';
import { pathData, projectionOf } from '../../drawing/projection';
import { useJob } from '../../selected';
import { liveDimensions } from '../liveDimensions';
import { useSheet } from '../sheetState';
import { extentWith, surveyDrawing } from '../surveyDrawing';
import { walk } from '../traverse';
import { Draft } from './Draft';
import { Overlay } from './Overlay';
import css from './plan.module.css';
import { usePlace } from './usePlace';
import { usePointer } from './usePointer';
import { useSize } from './useSize';

/** Room for the dimensions around the plan, px; on a phone they come closer to the border. */
const MARGIN = { wide: 62, narrow: 40 } as const;
const NARROW = 600;
const CLOSER = [1, 1.7, 2.8] as const;

/** The room as surveyed, to be drawn in: one projection for what is painted and for the pointer. */
export const SurveyPlan = () => {
  const job = useJob();
  const { now } = useSheet();
  const { ref, size } = useSize();
  const [closer, setCloser] = useState(0);
  const narrow = size.width < NARROW;
  const typing = now.tool === 'walls' && now.legs.length > 0;
  const draft = useMemo((): readonly Pt[] => {
    if (typing) {
      const { corners, end } = walk(now.legs);
      return [...corners, end];
    }
    return now.taken?.points.map(([x, y]): Pt => [x, y]) ?? [];
  }, [typing, now.legs, now.taken]);

  const still = useMemo(() => {
    const { extent } = surveyDrawing(job, { small: narrow, extra: [] });
    return typing ? extentWith({ minX: 0, minY: 0, maxX: 1, maxY: 1 }, draft) : extentWith(extent, draft);
  }, [job, narrow, typing, draft]);
  const fitted = useMemo(
    () =>
      size.width > 0
        ? projectionOf({ extent: still }, size, narrow ? MARGIN.narrow : MARGIN.wide, CLOSER[closer]!)
        : null,
    [still, size, narrow, closer],
  );
  const place = usePlace();
  const { shown, held, handlers } = usePointer(fitted, place);
  const on = held ?? fitted;
  const painted = useMemo(
    () =>
      typing
        ? null
        : surveyDrawing(shown, { small: narrow, extra: now.selected ? liveDimensions(shown, now.selected) : [] }),
    [typing, shown, narrow, now.selected],
  );
  const settled = useMemo(() => (painted && on ? settle(painted, on) : null), [painted, on]);

  return (
    <>
      <section
        ref={ref}
        className={closer > 0 ? `${css.view} ${css.closer}` : css.view}
        aria-label={say.planName}
        tabIndex={closer > 0 ? 0 : undefined}
      >
        {on && (
          <svg
            width={on.width}
            height={on.height}
            role="img"
            aria-label={say.planAlt}
            className={place ? css.placing : undefined}
            {...handlers}
          >
            {painted && <PaintLines drawing={painted} on={on} />}
            {settled?.labels.map(({ of, leader }) =>
              leader === null ? null : (
                <path key={`to ${of.id}`} d={pathData(leader, false)} className={drawing.leader} />
              ),
            )}
            {settled?.labels.map((set) => (
              <PaintLabel key={`${set.of.id} ${set.of.lines[0]?.say}`} set={set} />
            ))}
            {now.selected && !typing && <Overlay job={shown} of={now.selected} on={on} still={place !== null} />}
            <Draft points={draft} missing={typing} on={on} />
          </svg>
        )}
      </section>
      <div className={css.strip}>
        <p>{say.planHint[now.tool]}</p>
        <span className={css.dots}>
          <svg width="20" height="12" aria-hidden="true">
            <rect width="20" height="12" fill="url(#h-verify)" stroke="var(--verify)" />
          </svg>
          {say.dots}
        </span>
        <span className={css.nearer}>
          <button type="button" disabled={closer === 0} onClick={() => setCloser(0)}>
            {screenWords.whole}
          </button>
          <button type="button" disabled={closer === CLOSER.length - 1} onClick={() => setCloser(closer + 1)}>
            {screenWords.closer}
          </button>
        </span>
      </div>
    </>
  );
};
