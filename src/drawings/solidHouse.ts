import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { holeEdges, solidBoards } from './solidBoards';
import { solidCables, solidRows } from './solidCables';
import { solidJoists } from './solidJoists';
import { solidBoxes, solidNewPanel, solidOldPanels } from './solidPanels';
import { intrusions, solidSpaces } from './solidSpaces';
import type { Solid, SolidHouse } from './solids';
import { solidThings } from './solidThings';
import { solidFloor, solidPartitions, solidWalls } from './solidWalls';

/** The room after the finishing, the old work, and an option's new work as far as it is planned, as solids in inches. */
export const solidHouse = (job: Job, option: Option, plan: Plan | null): SolidHouse => {
  const { site } = job;
  const faint = new Set(plan ? intrusions(job, option, plan).map((i) => i.thing) : []);
  const holes: Solid[] = plan ? [{ id: 'holes', kind: 'board', faces: [], edges: holeEdges(plan), body: null }] : [];
  return {
    solids: [
      solidFloor(site),
      ...solidWalls(site),
      ...solidPartitions(site, option.enclosure),
      ...solidJoists(site),
      ...solidThings(site, option.moves, faint),
      ...solidOldPanels(job, option, plan),
      ...solidNewPanel(job, option),
      ...(plan ? [...solidBoxes(job, plan), ...solidBoards(plan), ...solidSpaces(job, option, plan), ...holes] : []),
    ],
    cables: [...solidCables(job, plan), ...(plan ? solidRows(plan) : [])],
  };
};
