import type { StoreApi } from 'zustand/vanilla';
import type { Place, Refinement } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { optionById } from '../job/site';
import { placeKey } from '../plan/map/rank';
import type { Id } from '../units/types';
import type { Mapper, Refiner } from '../workers/mapper';
import type { JobState } from './jobState';

/** Where an option's new panel can go, as far as it is known. */
export interface PanelMap {
  /** What was asked: equal for states of the job whose map is the same. */
  readonly key: string;
  readonly option: Id;
  readonly places: readonly Place[];
  readonly done: number;
  readonly of: number;
  readonly phase: 'working' | 'stopped' | 'done' | 'failed';
  /** Why it failed. */
  readonly say: string | null;
  /** The place looked at, by `placeKey`. */
  readonly at: string | null;
}

/** Small changes found for an option in place, for one state of the job. */
export interface Refined {
  readonly option: Id;
  readonly revision: number;
  /** Null while they are looked for, or where that failed: then `say` tells why. */
  readonly found: readonly Refinement[] | null;
  readonly say: string | null;
}

/** Maps that are kept, so that coming back to one does not search it again. */
const MOST_KEPT = 4;

/** Where the panel hangs along the walls, and what things are called, change nothing about where it can go. */
export const mapKey = (job: Job, option: Option): string => {
  const { options: _o, changedOn: _c, notes: _n, photos: _p, people: _w, issued: _i, title: _t, ...rest } = job;
  const { title: _title, kind: _kind, id, enclosure, ...asked } = option;
  return JSON.stringify([id, rest, asked, { ...enclosure, on: enclosure.on.bottom }]);
};

const message = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));

/** The map that is shown: asked for by option, filled place by place, stopped at any time and gone on with from nothing. */
export const makeMapping = (store: StoreApi<JobState>, mapper: Mapper, refiner: Refiner) => {
  const kept = new Map<string, PanelMap>();
  const change = (key: string, by: (map: PanelMap) => PanelMap): void => {
    const { map } = store.getState();
    if (map?.key === key) store.setState({ map: by(map) });
  };
  const keep = (map: PanelMap): void => {
    kept.set(map.key, map);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  };
  const search = async (job: Job, option: Id, key: string): Promise<void> => {
    const places = new Map<string, Place>();
    try {
      const how = await mapper.map(job, option, ({ done, of, changed }) => {
        if (store.getState().map?.key !== key) return mapper.stop(); // another job was opened
        for (const place of changed) places.set(placeKey(place), place);
        change(key, (map) => ({ ...map, done, of, places: [...places.values()] }));
      });
      change(key, (map) => ({ ...map, phase: how }));
      const { map } = store.getState();
      if (map?.key === key && how === 'done') keep(map);
    } catch (reason) {
      change(key, (map) => ({ ...map, phase: 'failed', say: message(reason) }));
    }
  };

  return {
    /** Shows where the option's panel can go; what is known already is not searched again. */
    showMap(id: Id): void {
      const job = store.getState().history?.now;
      const option = job && optionById(job, id);
      if (!job || !option) return;
      const key = mapKey(job, option);
      const { map } = store.getState();
      if (map?.key === key && (map.phase === 'working' || map.phase === 'done')) return;
      mapper.stop();
      const known = kept.get(key);
      if (known) {
        store.setState({ map: { ...known, at: null } });
        return;
      }
      store.setState({
        map: { key, option: id, places: [], done: 0, of: 0, phase: 'working', say: null, at: null },
      });
      void search(job, id, key);
    },
    /** Plans no more places; those planned stay shown. */
    stopMap: (): void => mapper.stop(),
    hideMap(): void {
      mapper.stop();
      store.setState({ map: null });
    },
    /** Looks for small changes to an option in place that spare cables a joint. */
    async refine(id: Id): Promise<void> {
      const { history, revision } = store.getState();
      if (!history) return;
      const mine = (): boolean => store.getState().revision === revision;
      store.setState({ refined: { option: id, revision, found: null, say: null } });
      try {
        const found = await refiner.refine(history.now, id);
        if (mine()) store.setState({ refined: { option: id, revision, found, say: null } });
      } catch (reason) {
        if (mine()) store.setState({ refined: { option: id, revision, found: null, say: message(reason) } });
      }
    },
    lookAtPlace(at: string | null): void {
      const { map } = store.getState();
      if (map && map.at !== at) store.setState({ map: { ...map, at } });
    },
  };
};
