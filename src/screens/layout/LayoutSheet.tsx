import { memo, useState } from 'react';
import type { Place } from '../../facts/result';
import { layoutWords as say } from '../../words/en/layout';
import { mapWords } from '../../words/en/map';
import { screenWords } from '../../words/en/screens';
import { FeederChoices } from '../parts/FeederChoices';
import { FeederWay } from '../parts/FeederWay';
import parts from '../parts/parts.module.css';
import { AfterNotes } from '../SheetFrame';
import { InColumn, InTools, InViews } from '../Slots';
import { type OptionView, useJob, useSelected } from '../selected';
import { useHost, useJobState } from '../session';
import { goToSheet, useSheetPart } from '../sheetHash';
import { DragSays } from './DragSays';
import { PlanPane, WallPane } from './DrawingPanes';
import { FirstOption } from './FirstOption';
import { HomeRuns } from './HomeRuns';
import { InWords } from './InWords';
import css from './layout.module.css';
import { MapBar } from './MapBar';
import { MapList } from './MapList';
import { OptionFields } from './OptionFields';
import { OptionTools } from './OptionTools';
import { type ShownMap, useMap } from './useMap';
import { NARROW, useMedia } from './useMedia';
import { usePlaces } from './usePlaces';

const VIEWS = ['all', 'both', 'plan', 'wall', 'scene'] as const;
type View = (typeof VIEWS)[number];
/** Three drawings stand beside each other from here on. */
const ALL_THREE = '(min-width: 1200px) and (min-height: 640px)';

interface DrawingsProps {
  readonly selected: OptionView;
  readonly view: View;
  readonly shown: ShownMap | null;
  readonly onPlace: (place: Place | null) => void;
}
const Drawings = ({ selected, view, shown, onPlace }: DrawingsProps) => {
  const job = useJob();
  const places = usePlaces(job, selected.option);
  const narrow = useMedia(NARROW);
  const [stop, setStop] = useState<string | null>(null);
  const { Scene } = useHost();
  const homeRun = useJobState((s) => s.homeRun);
  const props = { selected, places, shown, narrow, onStop: setStop, onPlace };
  const shows = (one: View): boolean => view === one || view === 'all' || (view === 'both' && one !== 'scene');
  return (
    <div className={css.drawings} data-view={view}>
      {shows('plan') && <PlanPane {...props} />}
      {shows('scene') && Scene && (
        <div className={css.scene}>
          <Scene job={job} option={selected.option} plan={selected.plan} homeRun={homeRun} map={shown?.model ?? null} />
        </div>
      )}
      {shows('wall') && <WallPane {...props} />}
      <DragSays stop={stop} />
    </div>
  );
};

/** Lists are made again when there is another plan, not at every move of the hand. */
const Lists = memo(
  ({ selected }: { readonly selected: OptionView }) =>
    selected.plan && (
      <>
        <HomeRuns plan={selected.plan} at={selected.at} />
        <p className={css.feeder}>
          <FeederWay plan={selected.plan} at={selected.at} />
        </p>
        <FeederChoices plan={selected.plan} at={selected.at} />
        <InWords selected={selected} />
      </>
    ),
  (before, now) =>
    before.selected.plan === now.selected.plan &&
    before.selected.at === now.selected.at &&
    (now.selected.live || before.selected.option === now.selected.option),
);

/** An option laid out: drawn from above and along its walls, its panel in the hand, its choices in the column. */
export const LayoutSheet = () => {
  const selected = useSelected();
  const none = useJob().options.length === 0;
  const part = useSheetPart();
  const wide = useMedia(ALL_THREE);
  const narrow = useMedia(NARROW);
  const { Scene } = useHost();
  const shown = useMap();
  const mapped = useJobState((s) => s.map !== null);
  const [hover, setHover] = useState<Place | null>(null);
  const views = VIEWS.filter((v) => (v !== 'scene' && v !== 'all') || (Scene && (v === 'scene' || wide)));
  const view = views.find((v) => v === part) ?? 'both';
  return (
    <>
      {none && <FirstOption />}
      {!narrow && selected && (
        <InTools>
          <OptionTools />
        </InTools>
      )}
      {selected && (
        <>
          <InViews>
            <fieldset className={css.views}>
              <legend className={parts.hidden}>{say.views}</legend>
              {views.map((v) => (
                <button
                  key={v}
                  type="button"
                  className={parts.tool}
                  aria-pressed={view === v}
                  onClick={() => goToSheet('layout', v)}
                >
                  {say.view[v]}
                </button>
              ))}
            </fieldset>
          </InViews>
          <InColumn>
            <OptionFields selected={selected} tools={narrow ? <OptionTools /> : null} />
          </InColumn>
          {mapped && <MapBar shown={shown} hover={hover} />}
          <Drawings selected={selected} view={view} shown={shown} onPlace={setHover} />
          {shown && (
            <AfterNotes label={mapWords.listTitle}>
              <MapList shown={shown} />
            </AfterNotes>
          )}
          {selected.plan && (
            <AfterNotes label={screenWords.runsTitle}>
              <Lists selected={selected} />
            </AfterNotes>
          )}
        </>
      )}
    </>
  );
};
