import { useEffect, useRef, useState } from 'react';
import { roomOutline } from '../../../job/site';
import { screenWords } from '../../../words/en/screens';
import { surveyWords as say } from '../../../words/en/survey';
import parts from '../../parts/parts.module.css';
import { useJob } from '../../selected';
import { ChoiceField } from '../fields/ChoiceField';
import { LOAD_KINDS } from '../fields/oldWork';
import {
  CAN_WIDTH,
  newArea,
  newEnclosure,
  newFraming,
  newOpening,
  OPENING_KINDS,
  type OpeningKind,
  openingWidth,
} from '../placing';
import { freshId, PARTS, part } from '../ref';
import { useSheet } from '../sheetState';
import { ThingGroups } from '../ThingGroups';
import { useAdd } from '../useAdd';
import { useTaken } from '../useTaken';
import { useWide } from '../useWide';
import { CablesPanel } from './CablesPanel';
import { OnWallForm } from './OnWallForm';
import { Palette } from './Palette';
import css from './panels.module.css';
import { RectanglePanel } from './RectanglePanel';
import { TakenPanel } from './TakenPanel';
import { WallsPanel } from './WallsPanel';

const OpeningPanel = () => {
  const job = useJob();
  const { now, set } = useSheet();
  const add = useAdd();
  return (
    <OnWallForm
      what={now.opening}
      width={openingWidth(now.opening)}
      onAdd={(on) => add('/site/openings', newOpening(job, now.opening, on))}
    >
      <ChoiceField
        spec={{ label: say.kind, unknown: false }}
        of={OPENING_KINDS.map((value) => ({ value, say: value }))}
        value={now.opening}
        onSet={(value) => {
          set({ opening: value as OpeningKind });
          return null;
        }}
      />
    </OnWallForm>
  );
};

const PanelPanel = () => {
  const job = useJob();
  const add = useAdd();
  return (
    <OnWallForm
      what={say.one['/enclosures']}
      width={CAN_WIDTH}
      onAdd={(on) => add('/enclosures', newEnclosure(job, on))}
    />
  );
};

const AreaPanel = () => {
  const job = useJob();
  const add = useAdd();
  const { start } = useTaken();
  return (
    <div className={css.buttons}>
      <button
        type="button"
        className={parts.button}
        onClick={() => add('/site/areas', newArea(job, roomOutline(job.site)))}
      >
        {say.wholeRoom}
      </button>
      <button type="button" className={parts.button} onClick={() => start('area')}>
        {say.byCorners}
      </button>
    </div>
  );
};

const FramingPanel = () => {
  const job = useJob();
  const add = useAdd();
  const { start } = useTaken();
  return (
    <div className={css.buttons}>
      <button type="button" className={parts.button} onClick={() => add('/site/framing', newFraming(job, null))}>
        {say.joistsWhole}
      </button>
      <button type="button" className={parts.button} onClick={() => start('framing')}>
        {say.joistsPart}
      </button>
      <button type="button" className={parts.button} onClick={() => start('bay')}>
        {say.addBay}
      </button>
    </div>
  );
};

const PartitionPanel = () => {
  const { start } = useTaken();
  return (
    <button type="button" className={parts.button} onClick={() => start('partition')}>
      {say.drawPartition}
    </button>
  );
};

const LoadForm = () => {
  const job = useJob();
  const add = useAdd();
  const [kind, setKind] = useState<string>(LOAD_KINDS[0]);
  return (
    <div className={css.narrow}>
      <h3 className={css.head}>{say.loadsTitle}</h3>
      <ChoiceField
        spec={{ label: say.kind, unknown: false }}
        of={LOAD_KINDS.map((value) => ({ value, say: value }))}
        value={kind}
        onSet={(value) => {
          setKind(value as string);
          return null;
        }}
      />
      <button
        type="button"
        className={parts.button}
        onClick={() =>
          add('/house/loads', { id: freshId(job, '/house/loads', kind), kind, va: 'unknown', onPanel: 'unknown' })
        }
      >
        {say.addLoad}
      </button>
    </div>
  );
};

const HousePanel = () => (
  <div className={css.parts}>
    <LoadForm />
    {PARTS.map((p) => (
      <ThingGroups key={p} of={part(p)} />
    ))}
  </div>
);

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
const FirstPanel = () => (
  <section className={css.panel} aria-labelledby="survey-first">
    <h2 id="survey-first" className={css.title}>
      {screenWords.measureTitle}
    </h2>
    <ol className={css.first}>
      {screenWords.measureFirst.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ol>
    <p>{say.beginWith}</p>
  </section>
);

/** What the tool in hand offers besides the plan; null where it offers nothing. */
export const ToolPanel = () => {
  const { now } = useSheet();
  const { site, enclosures } = useJob();
  const wide = useWide();
  const ref = useRef<HTMLElement>(null);
  // in one column what the tool offers may lie below what is seen
  useEffect(() => {
    if (!wide && now.tool !== 'select') ref.current?.scrollIntoView({ block: 'nearest' });
  }, [wide, now.tool]);
  if (now.tool === 'select' && !now.taken)
    return enclosures.length + site.obstacles.length + site.openings.length === 0 ? <FirstPanel /> : null;
  const Panel = now.taken || now.tool === 'select' ? TakenPanel : PANELS[now.tool];
  return (
    <section ref={ref} className={css.panel} aria-label={say.tools[now.tool]} data-tool={now.tool}>
      <h2 className={css.title}>{say.tools[now.tool]}</h2>
      <Panel />
    </section>
  );
};
