import { useDeferredValue, useMemo } from 'react';
import type { PlacesByFace } from '../../drawings/drawPlaces';
import { seePoint } from '../../drawings/elevation';
import { holdInPlan, holdOnWall } from '../../drawings/hold';
import { keyNotes } from '../../drawings/keyNotes';
import { canOutline } from '../../drawings/oldWork';
import { planDrawing } from '../../drawings/planDrawing';
import { middle } from '../../drawings/things';
import { alongOut, unroll, wallOf } from '../../drawings/unroll';
import { wallDrawing } from '../../drawings/wallDrawing';
import { canOnWall } from '../../drawings/wallWork';
import type { Place } from '../../facts/result';
import type { Option } from '../../job/schema';
import { faceOf, wallFaces } from '../../job/site';
import { placeKey } from '../../plan/map/rank';
import type { Pt } from '../../units/types';
import { layoutWords as say } from '../../words/en/layout';
import { homeRunTag } from '../parts/names';
import { type OptionView, useJob, useStale } from '../selected';
import { useActions, useJobState } from '../session';
import { Detail } from './Detail';
import { DrawingPane } from './DrawingPane';
import { Lines } from './Lines';
import css from './layout.module.css';
import { nearestInPlan, nearestOnWall, orderOf, placeInPlan, placeOnWall } from './mapPoints';
import { NoteShapes } from './NoteShapes';
import { noteFrame } from './noteFrame';
import { type HeldTo, PanelHandle } from './PanelHandle';
import { PlaceCursor } from './PlaceCursor';
import type { ShownMap } from './useMap';

export interface PaneProps {
  readonly selected: OptionView;
  readonly places: PlacesByFace;
  readonly shown: ShownMap | null;
  /** A place of the map under the mouse. */
  readonly onPlace: (place: Place | null) => void;
  readonly narrow: boolean;
  readonly onStop: (stop: string | null) => void;
}

/** The drawing follows the hand one step behind, so that the hand never waits for it. */
const useDrawn = ({ selected }: PaneProps) => {
  const stale = useStale();
  const option = useDeferredValue(selected.option);
  // routes of an earlier state would lead to where the panel no longer hangs
  const plan = useDeferredValue(stale && !selected.live ? null : selected.plan);
  const homeRun = useJobState((s) => s.homeRun);
  const note = useJobState((s) => s.note);
  const job = useJob();
  const { singleOut } = useActions();
  const onMark = (number: number): void => singleOut({ note: note === number ? null : number });
  /** Rows carry the names of their home runs; picked again and again, one after the other is singled out. */
  const onThing = (id: string): void => {
    const runs = id.split(' ').filter((r) => job.homeRuns.some((h) => h.id === r));
    const next = runs[(runs.indexOf(homeRun ?? '') + 1) % runs.length];
    if (next !== undefined) singleOut({ homeRun: next === homeRun ? null : next });
  };
  const keyed = useMemo(() => plan && keyNotes(plan.findings).find((k) => k.number === note), [plan, note]);
  return { job, option, plan, homeRun, note, keyed: keyed ?? null, onMark, onThing };
};

const words = { wallEnd: say.wallEnd, against: say.against };
const placeless = { clear: [], barred: [] };
/** So near to its mark a place is meant, px. */
const NEAR_PX = 22;
const focusKeyOf = (option: Option): string => option.id;

/** The home run singled out, to be released. */
const Release = () => {
  const job = useJob();
  const homeRun = useJobState((s) => s.homeRun);
  const { singleOut } = useActions();
  if (homeRun === null) return null;
  return (
    <button type="button" className={css.release} onClick={() => singleOut({})}>
      {say.showAll({ run: homeRunTag(job, homeRun) })}
    </button>
  );
};

/** Seen from above; the panel is dragged along any wall. */
export const PlanPane = (props: PaneProps) => {
  const { selected, places, shown, narrow, onStop, onPlace } = props;
  const { job, option, plan, homeRun, note, keyed, onMark, onThing } = useDrawn(props);
  const { lookAtPlace } = useActions();
  const map = shown?.model ?? null;
  const drawing = useMemo(
    () => planDrawing(job, option, plan, { homeRun, small: narrow, places, map }),
    [job, option, plan, homeRun, narrow, places, map],
  );
  const order = useMemo(() => (shown ? orderOf(unroll(job), option, shown.map.places) : []), [job, option, shown]);
  const near = (p: Pt, pixel: number) => nearestInPlan(faces, option, order, p, pixel * NEAR_PX);
  const faces = useMemo(() => wallFaces(job.site, 'after'), [job.site]);
  const frame = useMemo(
    () => (plan && keyed ? noteFrame(job, option, plan, keyed, ([x, y]) => [x, y]) : null),
    [job, option, plan, keyed],
  );
  const outline = canOutline(job, selected.option.enclosure);
  const face = faceOf(faces, selected.option.enclosure.on);
  const hold = ({ p, from, step }: HeldTo) => {
    const start = faceOf(faces, from.on);
    const grip = start ? alongOut(start, from.p)[0] - from.on.left : 0;
    const { enclosure } = selected.option;
    return holdInPlan(faces, { enclosure, grip, step, places: (f) => places.get(f.id) ?? placeless, words }, p);
  };
  return (
    <DrawingPane
      drawing={drawing}
      number={1}
      title={say.planTitle}
      name={say.planName({ option: option.title })}
      alt={say.planAlt({ option: option.title })}
      fit="whole"
      margin={narrow ? { x: 40, top: 40, bottom: 40 } : { x: 62, top: 60, bottom: 62 }}
      focus={outline && middle(outline)}
      focusKey={focusKeyOf(option)}
      frame={frame}
      note={note}
      onMark={onMark}
      onThing={onThing}
      {...(shown && {
        onHover: (p: Pt | null, pixel: number) => onPlace(p && near(p, pixel)),
        onTap: (p: Pt, pixel: number) => {
          const place = near(p, pixel);
          if (place) lookAtPlace(placeKey(place));
        },
      })}
      beside={<Release />}
      over={(on) => (
        <>
          {keyed && <NoteShapes note={keyed} on={on} />}
          {plan && <Detail job={job} option={option} plan={plan} drawing={drawing} on={on} />}
          {outline && face && (
            <PanelHandle
              option={selected.option}
              on={on}
              outline={outline}
              length={face.length}
              hold={hold}
              rises={false}
              onStop={onStop}
            />
          )}
          {shown && (
            <PlaceCursor
              shown={shown}
              order={order}
              on={on}
              pointOf={(place) => placeInPlan(faces, option, place)}
              nearest={(p) => nearestInPlan(faces, option, order, p, Number.POSITIVE_INFINITY)}
            />
          )}
        </>
      )}
    />
  );
};

/** The inside walls unrolled; the panel is dragged along them and up and down. */
export const WallPane = (props: PaneProps) => {
  const { selected, places, shown, narrow, onStop, onPlace } = props;
  const { job, option, plan, homeRun, note, keyed, onMark, onThing } = useDrawn(props);
  const { lookAtPlace } = useActions();
  const map = shown?.model ?? null;
  const drawing = useMemo(
    () => wallDrawing(job, option, plan, { homeRun, small: narrow, places, map }),
    [job, option, plan, homeRun, narrow, places, map],
  );
  const walls = useMemo(() => unroll(job), [job]);
  const order = useMemo(() => (shown ? orderOf(walls, option, shown.map.places) : []), [walls, option, shown]);
  const near = (p: Pt, pixel: number) => nearestOnWall(walls, option, order, p, pixel * NEAR_PX);
  const frame = useMemo(
    () => (plan && keyed ? noteFrame(job, option, plan, keyed, (p) => seePoint(job.site, walls, p)) : null),
    [job, option, plan, keyed, walls],
  );
  const { enclosure } = selected.option;
  const outline = canOnWall(walls, enclosure);
  const wall = wallOf(walls, enclosure.on);
  const hold = ({ p, from, step, tremble }: HeldTo) => {
    const start = wallOf(walls, from.on);
    const grip = start ? from.p[0] - start.at - from.on.left : 0;
    const rise = p[1] - from.p[1];
    const bottom = from.on.bottom + (Math.abs(rise) < tremble ? 0 : Math.round(rise / step) * step);
    const holding = { enclosure, grip, step, places: (f: { id: string }) => places.get(f.id) ?? placeless, words };
    return holdOnWall(walls, holding, p[0], bottom);
  };
  return (
    <DrawingPane
      drawing={drawing}
      number={2}
      title={say.wallTitle}
      name={say.wallName({ option: option.title })}
      alt={say.wallAlt({ option: option.title })}
      fit="height"
      margin={{ x: 46, top: 34, bottom: 38 }}
      focus={outline && middle(outline)}
      focusKey={focusKeyOf(option)}
      frame={frame}
      note={note}
      onMark={onMark}
      onThing={onThing}
      {...(shown && {
        onHover: (p: Pt | null, pixel: number) => onPlace(p && near(p, pixel)),
        onTap: (p: Pt, pixel: number) => {
          const place = near(p, pixel);
          if (place) lookAtPlace(placeKey(place));
        },
      })}
      beside={shown ? null : <Lines />}
      over={(on) => (
        <>
          {outline && wall && (
            <PanelHandle
              option={selected.option}
              on={on}
              outline={outline}
              length={wall.face.length}
              hold={hold}
              rises
              onStop={onStop}
            />
          )}
          {shown && (
            <PlaceCursor
              shown={shown}
              order={order}
              on={on}
              pointOf={(place) => placeOnWall(walls, option, place)}
              nearest={(p) => nearestOnWall(walls, option, order, p, Number.POSITIVE_INFINITY)}
            />
          )}
        </>
      )}
    />
  );
};
