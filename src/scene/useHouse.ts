import { useCallback, useMemo } from 'react';
import { keyNotes } from '../drawings/keyNotes';
import type { MapModel } from '../drawings/mapModel';
import { solidHouse } from '../drawings/solidHouse';
import { nameBest, solidMap } from '../drawings/solidMap';
import { solidMarks } from '../drawings/solidMarks';
import { solidNames } from '../drawings/solidNames';
import { canPlace } from '../drawings/solidPanels';
import { pointIn } from '../drawings/solidShapes';
import type { Plan } from '../facts/result';
import { insideOrOn } from '../geometry/polygon';
import { rightOf } from '../geometry/vector';
import type { Job, Option } from '../job/schema';
import { roomOutline } from '../job/site';
import type { Pt } from '../units/types';
import { extentOf } from './pick';
import { sceneList } from './sceneList';
import type { PanelFront } from './section';

/** Everything that is drawn and said of an option, made anew only when it changes. */
export const useHouse = (job: Job, option: Option, plan: Plan | null, map: MapModel | null) => {
  const bare = useMemo(() => solidHouse(job, option, plan), [job, option, plan]);
  const places = useMemo(() => (map ? solidMap(job.site, option, map) : []), [job.site, option, map]);
  const house = useMemo(
    () => (places.length > 0 ? { ...bare, solids: [...bare.solids, ...places] } : bare),
    [bare, places],
  );
  const names = useMemo(
    () => [...solidNames(job, option, plan), ...(map ? nameBest(job.site, option, map) : [])],
    [job, option, plan, map],
  );
  const marks = useMemo(
    () => (plan ? solidMarks(job, option, plan, keyNotes(plan.findings)) : []),
    [job, option, plan],
  );
  const list = useMemo(() => sceneList(job, option, plan), [job, option, plan]);
  const outline = useMemo(() => roomOutline(job.site), [job.site]);
  // the picture keeps its scale while the panel is dragged: only the room decides it
  const points = useMemo(() => extentOf(job.site), [job.site]);
  const panel = useMemo((): PanelFront | null => {
    const place = canPlace(job, option.enclosure);
    return place && { front: pointIn(place, 0.5, 0, 0.5), into: rightOf(place.right), along: place.right };
  }, [job, option.enclosure]);
  const inRoom = useCallback((p: Pt) => insideOrOn(p, outline), [outline]);
  return { house, names, marks, list, points, panel, inRoom };
};
