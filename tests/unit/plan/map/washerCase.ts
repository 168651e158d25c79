import type { Job, Obstacle, Option } from '../../../../src/job/schema';
import { defaultBook } from '../../../../src/pricing/defaultBook';
import type { Pt3 } from '../../../../src/units/types';
import { randomJob } from '../../../support/randomJob';
import { homeRun, room } from '../../routing/smallRoom';

/**
 * A straight wall of plywood. Ten cables come down it at x = 60 and run west along it at z = 54 to the old can around the
 * corner. They can only be spliced at three boxes on that run: five of them at x = 50, three at 44, two at 39. The new
 * panel's left side stands at x = 110 + s and is entered at z = 54, so that the new cables are 60 + s, 66 + s and 71 + s.
 * A washer stands before the wall from 91 to 118: no panel left of s = 8 unless it is moved.
 */
const AT_START = 110;
const HEIGHT = 54;
const GROUPS = [
  { x: 50, cables: ['a1', 'a2', 'a3', 'a4', 'a5'] },
  { x: 44, cables: ['b1', 'b2', 'b3'] },
  { x: 39, cables: ['c1', 'c2'] },
] as const;
const RUN: Pt3[] = [
  [0, 74.5, HEIGHT],
  [0, 144, HEIGHT],
  [60, 144, HEIGHT],
  [60, 144, 96.625],
  [60, 100, 96.625],
];
const RUN_LENGTH = 69.5 + 60 + 42.625 + 44;

const at = (option: Option, id: string, s: number, moved: boolean): Option => ({
  ...option,
  id,
  title: id,
  enclosure: {
    ...option.enclosure,
    id: `panel ${id}`,
    doorHinge: 'lift-off',
    on: { ...option.enclosure.on, left: AT_START + s },
    spaces: 24,
  },
  moves: moved ? [{ obstacle: 'washer', to: 'away' }] : [],
});

/** 'far' beside the washer at s = 8 as it stands; 'near' at s = 0 with the washer moved for so many cents. */
export const washerCase = (moveCents: number): Job => {
  const cables = GROUPS.flatMap((g) => g.cables);
  const { job, option } = room({
    homeRuns: cables.map((id) => homeRun(id)),
    group: { path: RUN, reachable: [[0, RUN_LENGTH]], pivot: 0, drawsBack: false, entry: 'right' },
    option: {
      pins: GROUPS.map((g) => ({
        id: `boxes at ${g.x}`,
        pin: 'splice at' as const,
        homeRuns: [...g.cables],
        at: [g.x, 144, HEIGHT] as Pt3,
      })),
    },
  });
  const washer: Obstacle = {
    ...randomJob(1).site.obstacles[0]!,
    id: 'washer',
    kind: 'washer',
    corner: [91, 117] as [number, number],
    turn: 0,
    size: { width: 27, depth: 26, height: 38 },
    sizes: 'measured',
    bottom: 0,
    blocksCable: false,
    blocksSpace: true,
    foreign: false,
    stored: false,
    exists: { now: true, after: true },
    moveCents,
  };
  return {
    ...job,
    house: { ...job.house, yearBuilt: 2015, occupied: false },
    circuits: job.circuits.map((c) => ({
      ...c,
      serves: ['bedroom'],
      protection: 'none',
      addsOutlet: false,
      flags: [],
    })),
    site: { ...job.site, obstacles: [washer] },
    // one box at each place: two hang side by side, and one of them is then nearer to the panel
    priceBook: {
      ...defaultBook,
      materials: defaultBook.materials.map((m) => (/^box:4/.test(m.id) ? { ...m, dollars: 500 } : m)),
    },
    options: [at(option, 'far', 8, false), at(option, 'near', 0, true)],
  };
};

/** The job with one panel at s and the washer out of the way. */
export const shifted = (s: number): { job: Job; option: Option } => {
  const job = washerCase(0);
  const option = at(job.options[0]!, 'far', s, true);
  return { job: { ...job, options: [option] }, option };
};
