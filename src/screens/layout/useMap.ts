import { useDeferredValue, useEffect, useMemo } from 'react';
import { type MapModel, mapModel } from '../../drawings/mapModel';
import type { Place } from '../../facts/result';
import { optionById } from '../../job/site';
import { placeKey } from '../../plan/map/rank';
import { mapKey, type PanelMap } from '../../state/mapping';
import { useJob } from '../selected';
import { useActions, useJobState } from '../session';

/** The map of the option that is shown; null while nobody asked for one. */
export interface ShownMap {
  readonly map: PanelMap;
  readonly model: MapModel;
  /** The place singled out. */
  readonly at: Place | null;
}

/** Follows the job: a change that the map depends on, and another option, ask for it anew. */
export const useMap = (): ShownMap | null => {
  const job = useJob();
  const id = useJobState((s) => s.option);
  const map = useJobState((s) => s.map);
  const { showMap } = useActions();
  // the option as it is in the job: a panel that is held changes nothing yet
  const option = id === null ? undefined : optionById(job, id);
  const key = useMemo(() => (option ? mapKey(job, option) : null), [job, option]);
  const wanted = map !== null;
  useEffect(() => {
    if (wanted && option && map?.key !== key) showMap(option.id);
  }, [wanted, option, key, map?.key, showMap]);
  const places = useDeferredValue(map?.places);
  const model = useMemo(() => (option && places ? mapModel(option, places) : null), [option, places]);
  if (!map || !model || map.key !== key) return null;
  return { map, model, at: map.places.find((p) => placeKey(p) === map.at) ?? null };
};
