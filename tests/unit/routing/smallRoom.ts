import type { AfciPenalty, RoutingAsk } from '../../../src/facts/routing';
import type { Circuit, Enclosure, HomeRun, Job, Option } from '../../../src/job/schema';
import { unitMills } from '../../../src/pricing/assemblies';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { boxCatalogue } from '../../../src/standards/boxCatalogue';
import type { Pt, Pt3 } from '../../../src/units/types';
import { randomJob } from '../../support/randomJob';

/**
 * A room of 20 ft by 12 ft with plywood on every wall, open joists along y at 16 in (first at 8), 9-1/4 in deep above
 * 92 in: cables run at 96-5/8 in. The old can hangs on the west wall; one group leaves its top at (0, 67-1/4, 68), goes
 * up into the joists, 112 in across them, then north in the bay at x = 112 to y = 130.
 */
export const OUTLINE: Pt[] = [
  [0, 0],
  [0, 144],
  [240, 144],
  [240, 0],
];
export const RUN: Pt3[] = [
  [0, 67.25, 68],
  [0, 67.25, 96.625],
  [112, 67.25, 96.625],
  [112, 130, 96.625],
];
/** Up 28-5/8, across 112, along 62-3/4. */
export const RUN_LENGTH = 28.625 + 112 + 62.75;

const panel = (id: string, wall: string, left: number, bottom: number, height: number): Enclosure => ({
  ...randomJob(1).enclosures[0]!,
  id,
  on: { wall, face: 'front', left, bottom },
  size: { width: 14.5, depth: 4, height },
});
export const NEW_PANEL = panel('new', 'w1', 104.75, 36, 36); // north wall, middle at x = 112, top at 72

export const homeRun = (id: string, more: Partial<HomeRun> = {}): HomeRun => ({
  id,
  group: 'g',
  circuits: [`c-${id}`],
  cable: { kind: 'NM', size: '12', metal: 'Cu', hots: 1, neutral: 'insulated', ground: true, insulation: 90 },
  ownPath: null,
  ownPivot: null,
  ownTails: null,
  wholeLength: 600,
  traced: true,
  condition: [],
  ...more,
});
const circuit = (id: string): Circuit => ({
  ...randomJob(1).circuits[0]!,
  id,
  number: id,
  amps: 20,
  poles: 1,
  volts: 120,
  partner: null,
});

export interface Room {
  readonly homeRuns?: readonly HomeRun[];
  readonly group?: Partial<Job['cableGroups'][number]>;
  readonly option?: Partial<Option>;
  readonly job?: Partial<Job>;
}
export const room = (r: Room = {}): { job: Job; option: Option } => {
  const base = randomJob(1);
  const homeRuns = r.homeRuns ?? [homeRun('h1')];
  const face = { build: 'plywood board', insulated: false } as const;
  const state = { use: 'laundry', cover: 'open joists', ceiling: 92, floorRise: 0 } as const;
  const option: Option = {
    ...base.options[0]!,
    id: 'move',
    kind: 'relocate',
    enclosure: NEW_PANEL,
    pins: [],
    moves: [],
    replaces: [{ enclosure: 'old', becomes: 'removed' }],
    ...r.option,
  };
  const job: Job = {
    ...base,
    code: { edition: 2023, place: '', amendments: {}, saidBy: {} },
    site: {
      ...base.site,
      outline: OUTLINE.map((at, i) => ({
        id: `w${i}`,
        at,
        face: { now: face, after: face },
        studSpacing: null,
        thickness: 8,
      })),
      areas: [{ id: 'room', outline: OUTLINE, state: { now: state, after: state } }],
      framing: [
        { id: 'f', outline: null, direction: 90, firstJoist: 8, spacing: 16, depth: 9.25, kind: 'sawn', underside: 92 },
      ],
      obstacles: [],
    },
    enclosures: [panel('old', 'w0', 60, 44, 24)],
    cableGroups: [
      {
        id: 'g',
        enclosure: 'old',
        path: RUN,
        reachable: [[0, RUN_LENGTH]],
        pivot: 121.125,
        drawsBack: true,
        entry: 'top',
        tails: { hot: 60, neutral: 60, ground: 60 },
        ...r.group,
      },
    ],
    homeRuns: [...homeRuns],
    circuits: homeRuns.flatMap((h) => h.circuits.map(circuit)),
    options: [option],
    ...r.job,
  };
  return { job, option };
};

export const penaltyFor = (homeRuns: readonly string[], mills = 65_000): AfciPenalty => ({
  id: `p-${homeRuns[0]}`,
  circuits: homeRuns.map((h) => `c-${h}`),
  homeRuns: [...homeRuns],
  limitIn: 72 + 1 / 1024,
  mills,
  atAnyLengthIfNewHomeRun: true,
});

export const askFor = (
  { job, option }: { job: Job; option: Option },
  penalties: readonly AfciPenalty[] = [],
  grade: RoutingAsk['grade'] = 'final',
): RoutingAsk => ({
  job,
  option,
  unit: unitMills(defaultBook, job.practice),
  boxes: boxCatalogue,
  penalties,
  feederCable: job.feeder.cable,
  grade,
});
