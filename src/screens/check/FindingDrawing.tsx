import { useMemo } from 'react';
import { inOrder } from '../../drawings/items';
import type { KeyNote } from '../../drawings/keyNotes';
import { runsOf } from '../../drawings/marks';
import { measuresOf } from '../../drawings/measures';
import { drawOneRun } from '../../drawings/newWork';
import { planDrawing } from '../../drawings/planDrawing';
import { checkWords as say } from '../../words/en/check';
import { DrawingPane } from '../layout/DrawingPane';
import { NoteShapes } from '../layout/NoteShapes';
import { noteFrame } from '../layout/noteFrame';
import { type OptionView, useJob, useStale } from '../selected';
import { useActions, useJobState } from '../session';
import css from './check.module.css';

const MARGIN = { x: 44, top: 40, bottom: 40 };

/** The chosen finding in the plan: framed, with what was found and what is asked for as dimensions. */
export const FindingDrawing = ({ selected, note }: { readonly selected: OptionView; readonly note: KeyNote }) => {
  const job = useJob();
  const stale = useStale();
  const homeRun = useJobState((s) => s.homeRun);
  const { singleOut } = useActions();
  const { option } = selected;
  const plan = stale && !selected.live ? null : selected.plan;
  const drawing = useMemo(() => {
    const whole = planDrawing(job, option, plan, { homeRun, small: true });
    if (!plan) return whole;
    const measures = note.findings.flatMap(({ finding }) => measuresOf(finding));
    const runs = new Set(note.findings.flatMap(({ finding }) => runsOf(job, plan, finding.subject)));
    const courses = [...runs].flatMap((run) => drawOneRun(plan, run));
    return { ...whole, items: inOrder([...whole.items, ...courses, ...measures]) };
  }, [job, option, plan, homeRun, note]);
  const frame = useMemo(
    () => (plan ? noteFrame(job, option, plan, note, ([x, y]) => [x, y]) : null),
    [job, option, plan, note],
  );
  return (
    <div className={css.drawing}>
      <DrawingPane
        drawing={drawing}
        number={1}
        title={say.drawingTitle}
        name={say.drawingName({ option: option.title })}
        alt={say.drawingAlt({ option: option.title })}
        fit="whole"
        margin={MARGIN}
        focus={null}
        focusKey={option.id}
        frame={frame}
        note={note.number}
        onMark={(number) => singleOut({ note: number })}
        onThing={() => undefined}
        beside={frame === null ? <small className={css.quiet}>{say.noDrawing}</small> : null}
        over={(on) => <NoteShapes note={note} on={on} />}
      />
    </div>
  );
};
