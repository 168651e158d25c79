import type { Shelf } from '../storage/shelf';
import type { Tabs } from '../storage/tabs';
import type { Mapper, Refiner } from '../workers/mapper';
import type { LivePlanner, Planner } from '../workers/planner';

/** What the state needs from outside; `app` gives it. */
export interface Ports {
  readonly planner: Planner;
  readonly live: LivePlanner;
  readonly mapper: Mapper;
  readonly refiner: Refiner;
  readonly shelf: Shelf;
  readonly tabs: Tabs;
  /** Now, as ISO time. */
  readonly clock: () => string;
  /** A key no other tab or visit makes. */
  readonly newKey: () => string;
  /** Calls back after some milliseconds; answers what calls it off. */
  readonly later: (run: () => void, ms: number) => () => void;
  /** Which entry of the shelf this tab has open, over a reload. */
  readonly remember: (key: string | null) => void;
}
