import { type ReactNode, useMemo } from 'react';
import { createPortal } from 'react-dom';
import { questionRows } from '../../documents/questionSheet';
import { drawingHeights } from '../../documents/summaryRoom';
import { wallPart } from '../../documents/wallPart';
import { planDrawing } from '../../drawings/planDrawing';
import { wallDrawing } from '../../drawings/wallDrawing';
import type { Plan } from '../../facts/result';
import { closeoutWords as say } from '../../words/en/closeout';
import { screenWords } from '../../words/en/screens';
import { QuestionTable } from '../check/QuestionTable';
import { projectionOf } from '../drawing/projection';
import { PaintDrawing } from '../layout/PaintDrawing';
import { Cautions } from '../parts/Cautions';
import { FeederWay } from '../parts/FeederWay';
import { wallName } from '../parts/names';
import { type OptionView, useJob, useStale } from '../selected';
import { BoxTable } from './BoxTable';
import { CutList } from './CutList';
import { DirectoryTable } from './DirectoryTable';
import { noteTexts } from './noteTexts';
import { OrderTable } from './OrderTable';
import { PaperFindings } from './PaperFindings';
import { PricePaper } from './PricePaper';
import css from './paper.module.css';
import { Records } from './Records';
import { RunsTable } from './RunsTable';
import { Tasks } from './Tasks';
import { TitleBlock } from './TitleBlock';

/** Pixels between the margins of a letter sheet, at 96 to the inch. */
const WIDTH = 726;
const MARGIN = { plan: 50, wall: 44 } as const;

interface Props {
  readonly view: OptionView;
  readonly plan: Plan;
}

/**
 * Everything on letter paper, for the printer only. It hangs outside the app, so that nothing of the screen's frame
 * cuts a page; every paper starts a page, its head stands again on each of its pages, and so does the title block.
 */
export const Papers = ({ view, plan }: Props) => {
  const { at } = view;
  const job = useJob();
  const papers: readonly (readonly [title: string, content: ReactNode])[] = [
    [
      say.summary,
      <>
        <Drawings view={view} plan={plan} />
        <p className={css.cautions}>{screenWords.cautions}</p>
        <PaperFindings plan={plan} at={at} />
      </>,
    ],
    [
      say.crewSheet,
      <>
        <p className={css.lead}>{say.people({ hours: plan.tally.crewHours, outage: plan.tally.outageHours })}</p>
        <Tasks plan={plan} at={at} />
        <div className={css.cautioned}>
          <Cautions at="crew" />
        </div>
        <RunsTable plan={plan} at={at} ticks />
        <p className={css.lead}>
          <FeederWay plan={plan} at={at} />
        </p>
        <Records />
      </>,
    ],
    [
      say.cutSheet,
      <>
        <CutList plan={plan} at={at} />
        <div className={css.two}>
          <OrderTable plan={plan} at={at} />
        </div>
      </>,
    ],
    [say.boxSheet, <BoxTable key="boxes" plan={plan} at={at} />],
    [say.directorySheet, <DirectoryTable key="directory" plan={plan} at={at} />],
    [say.priceSheet, <PricePaper key="price" plan={plan} at={at} />],
    [say.questionSheet, <QuestionTable key="questions" rows={questionRows(job, plan.findings)} />],
  ];
  return createPortal(
    <div className={`${css.papers} print-paper`}>
      <div className={css.border} />
      <div className={css.title}>
        <TitleBlock view={view} plan={plan} />
      </div>
      {papers.map(([title, content], i) => (
        <table key={title} role="presentation" className={css.paper}>
          <thead>
            <tr>
              <td>
                <h2 className={css.head}>
                  {title} <span>{`5.${i + 1}`}</span>
                </h2>
              </td>
            </tr>
          </thead>
          <tbody>
            <tr>
              <td>{content}</td>
            </tr>
          </tbody>
          <tfoot>
            <tr>
              <td className={css.foot} />
            </tr>
          </tfoot>
        </table>
      ))}
    </div>,
    document.body,
  );
};

/** Plan and walls as the screen draws them; not of a plan from before the last edit. */
const Drawings = ({ view, plan }: Props) => {
  const job = useJob();
  const now = useStale() ? null : plan;
  const { option } = view;
  const drawn = useMemo(() => {
    const heights = drawingHeights(noteTexts(job, plan));
    const above = planDrawing(job, option, now, { homeRun: null, small: false });
    const wall = wallPart(wallDrawing(job, option, now, { homeRun: null, small: true }), option.enclosure.on);
    return {
      above: { drawing: above, on: projectionOf(above, { width: WIDTH, height: heights.plan }, MARGIN.plan, 1) },
      wall: { drawing: wall, on: projectionOf(wall, { width: WIDTH, height: heights.wall }, MARGIN.wall, 1) },
    };
  }, [job, option, plan, now]);
  return (
    <>
      <p className={css.viewTitle}>{say.planOf({ option: view.letter })}</p>
      <PaintDrawing {...drawn.above} alt={say.planAlt({ option: option.title })} note={null} />
      <p className={css.viewTitle}>{say.wallOf({ wall: wallName(option.enclosure.on) })}</p>
      <PaintDrawing {...drawn.wall} alt={say.wallAlt({ option: option.title })} note={null} />
    </>
  );
};
