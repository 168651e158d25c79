import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { keyNotes } from '../../drawings/keyNotes';
import { planDrawing } from '../../drawings/planDrawing';
import { settle } from '../../drawings/settle';
import { screenWords as say } from '../../words/en/screens';
import { MarkAt } from '../parts/EffectMark';
import { useJob, useSelected, useStale } from '../selected';
import { useActions, useJobState } from '../session';
import css from './drawing.module.css';
import { Legend } from './Legend';
import { PaintDimension } from './PaintDimension';
import { PaintLabel } from './PaintLabel';
import { PaintArc, PaintLine, PaintSign } from './paint';
import { pathData, projectionOf } from './projection';

/** Room for the dimensions around the plan, px; on a phone they come closer to the border. */
const MARGIN = { wide: 62, narrow: 38 } as const;
const NARROW = 600;
const CLOSER = [1, 1.7, 2.8] as const;

const useSize = () => {
  const ref = useRef<HTMLElement>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return { ref, size };
};

/** The room from above with the selected option's work in it. */
export const PlanView = () => {
  const job = useJob();
  const selected = useSelected();
  const stale = useStale();
  const homeRun = useJobState((s) => s.homeRun);
  const note = useJobState((s) => s.note);
  const { singleOut } = useActions();
  const { ref, size } = useSize();
  const [closer, setCloser] = useState(0);
  const option = selected?.option;
  const narrow = size.width < NARROW;
  // routes of an earlier state would lead to where the panel no longer hangs
  const plan = stale ? null : (selected?.plan ?? null);

  const drawing = useMemo(
    () => (option ? planDrawing(job, option, plan, { homeRun, small: narrow }) : null),
    [job, option, plan, homeRun, narrow],
  );
  const on = useMemo(
    () =>
      drawing && size.width > 0
        ? projectionOf(drawing, size, narrow ? MARGIN.narrow : MARGIN.wide, CLOSER[closer]!)
        : null,
    [drawing, size, narrow, closer],
  );
  const settled = useMemo(() => (drawing && on ? settle(drawing, on) : null), [drawing, on]);
  const panelAt = drawing?.items.find((i) => i.item === 'line' && i.id === option?.enclosure.id);

  useEffect(() => {
    const view = ref.current;
    if (!view || !on || panelAt?.item !== 'line') return;
    const [x, y] = on.to(panelAt.points[0]!);
    view.scrollTo(x - view.clientWidth / 2, y - view.clientHeight / 2);
  }, [ref, on, panelAt]);

  if (!selected || !option) return null;
  const shape = note === null ? null : plan && keyNotes(plan.findings).find((k) => k.number === note)?.findings;
  return (
    <>
      <section
        ref={ref}
        className={closer > 0 ? `${css.view} ${css.closer}` : css.view}
        aria-label={say.planOf({ option: option.title })}
        tabIndex={closer > 0 ? 0 : undefined}
      >
        {drawing && on && settled && (
          <svg width={on.width} height={on.height} role="img" aria-label={say.planAlt({ option: option.title })}>
            {drawing.items.map((item, i) => {
              const key = `${i} ${item.id}`;
              switch (item.item) {
                case 'line':
                  return <PaintLine key={key} line={item} on={on} />;
                case 'arc':
                  return <PaintArc key={key} arc={item} on={on} />;
                case 'sign':
                  return <PaintSign key={key} sign={item} on={on} />;
                case 'dimension':
                  return <PaintDimension key={key} dimension={item} on={on} />;
                default:
                  return null;
              }
            })}
            {shape?.map(({ at, finding }) =>
              finding.shape ? (
                <path
                  key={at}
                  d={`M${finding.shape.map(([x, y]) => on.to([x, y]).join(' ')).join('L')}Z`}
                  className={css.singled}
                />
              ) : null,
            )}
            {[...settled.labels, ...settled.marks].map(({ of, leader }) =>
              leader === null ? null : (
                <path key={`${of.item} ${of.id}`} d={pathData(leader, false)} className={css.leader} />
              ),
            )}
            {settled.labels.map((set) => (
              <PaintLabel key={`${set.of.id} ${set.of.lines[0]?.say}`} set={set} />
            ))}
            {settled.marks.map(({ of: mark, x, y }) => (
              <g key={mark.number} transform={`translate(${x} ${y})`}>
                {note === mark.number && <circle r={15} className={css.singled} />}
                <MarkAt effect={mark.effect} number={mark.number} />
              </g>
            ))}
          </svg>
        )}
      </section>
      <Legend
        closer={closer}
        most={CLOSER.length - 1}
        onCloser={setCloser}
        singled={homeRun}
        onRelease={() => singleOut({})}
      />
    </>
  );
};
