import { useEffect, useRef } from 'react';
import { isRoomToBegin } from '../../../job/blankJob';
import { screenWords } from '../../../words/en/screens';
import { surveyWords as say } from '../../../words/en/survey';
import { useJob } from '../../selected';
import { useSheet } from '../sheetState';
import { useWide } from '../useWide';
import { CablesPanel } from './CablesPanel';
import { OpeningPanel, PanelPanel } from './HangPanels';
import { HousePanel } from './HousePanel';
import { Palette } from './Palette';
import css from './panels.module.css';
import { RectanglePanel } from './RectanglePanel';
import { AreaPanel, FramingPanel, PartitionPanel } from './RegionPanels';
import { TakenPanel } from './TakenPanel';
import { WallsPanel } from './WallsPanel';

const PANELS = {
  walls: WallsPanel,
  rectangle: RectanglePanel,
  partition: PartitionPanel,
  opening: OpeningPanel,
  area: AreaPanel,
  framing: FramingPanel,
  thing: Palette,
  panel: PanelPanel,
  cables: CablesPanel,
  house: HousePanel,
} as const;

/** For a job in which nothing has been drawn yet. */
const FirstPanel = ({ noRoom }: { readonly noRoom: boolean }) => (
  <section className={css.panel} aria-labelledby="survey-first">
    <h2 id="survey-first" className={css.title}>
      {screenWords.measureTitle}
    </h2>
    <ol className={css.first}>
      {screenWords.measureFirst.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
    {noRoom && <p>{say.beginWith}</p>}
  </section>
);

/** What the tool in hand offers besides the plan; null where it offers nothing. */
export const ToolPanel = () => {
  const { now } = useSheet();
  const job = useJob();
  const { site, enclosures } = job;
  const wide = useWide();
  const ref = useRef<HTMLElement>(null);
  // in one column what the tool offers may lie below what is seen
  useEffect(() => {
    if (!wide && now.tool !== 'select') ref.current?.scrollIntoView({ block: 'nearest' });
  }, [wide, now.tool]);
  if (now.tool === 'select' && !now.taken)
    return enclosures.length + site.obstacles.length + site.openings.length === 0 ? (
      <FirstPanel noRoom={isRoomToBegin(job)} />
    ) : null;
  const Panel = now.taken || now.tool === 'select' ? TakenPanel : PANELS[now.tool];
  return (
    <section ref={ref} className={css.panel} aria-label={say.tools[now.tool]} data-tool={now.tool}>
      <h2 className={css.title}>{say.tools[now.tool]}</h2>
      <Panel />
    </section>
  );
};
