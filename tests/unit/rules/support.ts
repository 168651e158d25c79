import type { Box, FeederPlan, Leg, Row, Run } from '../../../src/facts/result';
import type { RuleFacts, Verdict } from '../../../src/facts/ruling';
import { blankJob } from '../../../src/job/blankJob';
import type { Circuit, Enclosure, HomeRun, Job } from '../../../src/job/schema';
import { panelLoad } from '../../../src/loads/panelLoad';
import { runRules } from '../../../src/rules/run';
import type { Cable } from '../../../src/standards/cable';
import type { Pt3 } from '../../../src/units/types';

/** One small basement for all rule tests: 20 by 12 ft, joists across the short way, the old panel on the north wall. */

export const NM: Cable = {
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
};
const SER: Cable = { ...NM, kind: 'SE-R', size: '1', metal: 'Al', hots: 2 };

const enclosure = (id: string, left: number, bottom: number, height: number): Enclosure => ({
  id,
  on: { wall: 'north', face: 'front', left, bottom },
  size: { width: 14.5, depth: 3.875, height },
  mount: 'surface',
  upright: true,
  mainAt: 'top',
  mainAmps: null,
  role: 'feeder-fed',
  bonded: false,
  electrodeLandsHere: false,
  busAmps: 125,
  spaces: 40,
  knockouts: 40,
  neutralTerminals: 40,
  groundTerminals: 40,
  lugs: 75,
  topHandle: height - 6,
  doorHinge: 'left',
  weatherproof: false,
  finish: 'gray',
  trim: 'solid',
  attached: [],
});

const circuit = (id: string, more: Partial<Circuit> = {}): Circuit => ({
  id,
  number: id,
  label: id,
  poles: 1,
  volts: 120,
  amps: 20,
  partner: null,
  serves: ['bedroom'],
  va: 800,
  continuous: false,
  protection: 'none',
  addsOutlet: false,
  hardWired: false,
  flags: [],
  ...more,
});

const homeRun = (id: string, circuits: string[], cable: Partial<Cable> = {}): HomeRun => ({
  id,
  group: 'g-1',
  circuits,
  cable: { ...NM, ...cable },
  ownPath: null,
  ownPivot: null,
  ownTails: null,
  wholeLength: 'unknown',
  traced: true,
  condition: [],
});

const WALLS = [
  ['west', 0, 0],
  ['north', 0, 144],
  ['east', 240, 144],
  ['south', 240, 0],
] as const;
const OPEN = { build: 'open studs', insulated: false } as const;
const blank = blankJob({ id: 'rules', on: '2026-01-01' });

export const baseJob: Job = {
  ...blank,
  survey: { grade: 'full', by: 'surveyor', on: '2026-01-01' },
  code: { edition: 2023, place: 'Sample City', amendments: {}, saidBy: {} },
  house: {
    yearBuilt: 1995,
    floorAreaFt2: 1800,
    panelAreaFt2: 900,
    occupied: true,
    panelLit: true,
    smallApplianceCircuits: 2,
    laundryCircuits: 1,
    loads: [{ id: 'ld-1', kind: 'dryer', va: 5000, onPanel: true }],
    otherSource: false,
  },
  site: {
    outline: WALLS.map(([id, x, y]) => ({
      id,
      at: [x, y],
      face: { now: OPEN, after: OPEN },
      studSpacing: 16,
      thickness: 8,
    })),
    partitions: [],
    openings: [],
    areas: [
      {
        id: 'room',
        outline: WALLS.map(([, x, y]) => [x, y] as const),
        state: {
          now: { use: 'unfinished storage', cover: 'open joists', ceiling: 92, floorRise: 0 },
          after: { use: 'unfinished storage', cover: 'open joists', ceiling: 92, floorRise: 0 },
        },
      },
    ],
    framing: [
      {
        id: 'floor',
        outline: null,
        direction: 90,
        firstJoist: 8,
        spacing: 16,
        depth: 9.25,
        kind: 'sawn',
        underside: 92,
      },
    ],
    bays: [],
    obstacles: [],
    sleeves: [],
  },
  enclosures: [enclosure('old', 40, 48, 24)],
  feeder: {
    from: { panel: 'service panel', lugs: 75, breakerAmps: 100, spaceFree: true },
    entersAt: [0, 10, 96],
    outside: 120,
    path: [
      [0, 10, 96],
      [47, 144, 96],
      [47, 144, 72],
    ],
    cable: SER,
    raceway: 'none',
    wires: 4,
    wholeDwelling: false,
  },
  cableGroups: [
    {
      id: 'g-1',
      enclosure: 'old',
      path: [
        [47, 144, 72],
        [47, 144, 96.5],
        [47, 20, 96.5],
      ],
      reachable: [[0, 140]],
      pivot: 60,
      drawsBack: true,
      entry: 'top',
      tails: { hot: 20, neutral: 20, ground: 20 },
    },
  ],
  circuits: [
    circuit('c-1'),
    circuit('c-2', { partner: 'c-3', serves: ['kitchen'], protection: 'GFCI' }),
    circuit('c-3', { partner: 'c-2', serves: ['kitchen'] }),
    circuit('c-4', { poles: 2, volts: 240, amps: 30, serves: ['laundry'] }),
    circuit('c-5', { amps: 15, serves: ['bath'] }),
  ],
  homeRuns: [
    homeRun('h-1', ['c-1']),
    homeRun('h-2', ['c-2', 'c-3'], { hots: 2 }),
    homeRun('h-4', ['c-4'], { hots: 2, size: '10' }),
    homeRun('h-5', ['c-5'], { size: '14' }),
  ],
  options: [
    {
      id: 'move',
      title: 'To the right',
      kind: 'relocate',
      enclosure: enclosure('new', 100, 40, 36),
      pins: [],
      moves: [],
      serviceDisconnect: null,
      replaces: [{ enclosure: 'old', becomes: 'removed' }],
    },
  ],
};

const leg = (from: Pt3, to: Pt3, by: Leg['by'], row: string | null = null, cable: Leg['cable'] = 'new'): Leg => ({
  from,
  to,
  by,
  row,
  cable,
});
const run = (homeRunId: string, more: Partial<Run>): Run => ({
  homeRun: homeRunId,
  way: 'cut-in',
  why: '',
  reach: null,
  cutIn: null,
  box: 'box-1',
  newCable: NM,
  legs: [
    leg([47, 120, 96.5], [107, 120, 96.5], 'through joists', 'row-1'),
    leg([107, 120, 96.5], [107, 144, 96.5], 'joist side'),
    leg([107, 144, 96.5], [107, 144, 76], 'wall board'),
  ],
  codeLength: 60,
  codeLengthWithTails: 71,
  cutLength: 144,
  holes: 4,
  supports: 3,
  plates: 0,
  conductorsSpliced: 2,
  blockedBy: [],
  ...more,
});

const HOLES: Row['holes'] = [
  { at: [56, 120, 96.625], diameter: 0.75, homeRuns: ['h-1', 'h-2'] },
  { at: [72, 120, 96.625], diameter: 0.75, homeRuns: ['h-1', 'h-2'] },
];
export const baseRuns: readonly Run[] = [
  run('h-1', {}),
  run('h-2', { newCable: { ...NM, hots: 2 }, codeLength: 90, codeLengthWithTails: 140, conductorsSpliced: 3 }),
  run('h-4', {
    way: 'reuse',
    newCable: null,
    box: null,
    codeLength: 0,
    codeLengthWithTails: 0,
    supports: 1,
    legs: [leg([100, 100, 96.5], [107, 144, 96.5], 'joist side', null, 'old')],
  }),
  run('h-5', { way: 'stays on old panel', newCable: null, box: null, codeLength: 0, codeLengthWithTails: 0, legs: [] }),
];
const BOX: Box = {
  id: 'box-1',
  at: [47, 120, 96.5],
  on: 'joist',
  size: '4-11/16 x 2-1/8',
  material: 'metal',
  volumeIn3: 42,
  fillIn3: 25,
  homeRuns: ['h-1', 'h-2'],
  conductorsSpliced: 5,
};
const ROW: Row = {
  id: 'row-1',
  by: 'bored',
  length: 60,
  path: [
    [47, 120, 96.5],
    [107, 120, 96.5],
  ],
  homeRuns: ['h-1', 'h-2'],
  conductors: 4,
  factor: 0.8,
  limit: '',
  holes: HOLES,
};

export const directory = (legs: Readonly<Record<string, 'A' | 'B'>>) =>
  Object.entries(legs).map(([id, side], i) => ({
    space: i + 1,
    leg: side,
    circuit: id,
    text: id,
    protection: 'none',
  }));

const feederOf = (job: Job): FeederPlan => {
  const amps = job.options[0]!.serviceDisconnect?.amps ?? job.feeder.from.breakerAmps;
  return {
    way: 'kept',
    why: '',
    legs: [],
    cutLength: 0,
    outside: 0,
    holes: [],
    supports: 0,
    plates: 0,
    cable: job.feeder.cable,
    breakerAmps: amps === 'unknown' ? null : amps,
    egc: null,
    worked: [],
  };
};

export type Changes = Readonly<Record<string, unknown>>;

/** A copy of a plain value with other values at some places, given by JSON pointer; '-' adds to a list. */
export const changed = <T>(value: T, changes: Changes): T => {
  const copy = JSON.parse(JSON.stringify(value)) as T; // no two places share a value

  for (const [pointer, put] of Object.entries(changes)) {
    const keys = pointer.split('/').slice(1);
    const last = keys.pop()!;
    let at = copy as Record<string, unknown>;
    for (const key of keys) at = at[key] as Record<string, unknown>;
    if (last === '-') (at as unknown as unknown[]).push(JSON.parse(JSON.stringify(put)));
    else at[last] = JSON.parse(JSON.stringify(put));
  }
  return copy;
};

/** Facts of the only option of a job, with the routes above kept whatever the job says. */
export const factsOf = (job: Job, over: Partial<RuleFacts> = {}): RuleFacts => ({
  job,
  option: job.options[0]!,
  runs: baseRuns,
  boxes: [BOX],
  rows: [ROW],
  feeder: feederOf(job),
  arrangement: {
    directory: directory({ 'c-1': 'A', 'c-2': 'A', 'c-3': 'B', 'c-4': 'A' }),
    spacesNeeded: 8,
    sparesLeft: 32,
    neutralsToLand: 4,
    groundsToLand: 4,
    legA: 0,
    legB: 0,
  },
  load: panelLoad(job),
  knockoutsUsed: 4,
  spds: 0,
  ...over,
});

export const factsFor = (changes: Changes = {}, over: Partial<RuleFacts> = {}): RuleFacts =>
  factsOf(changed(baseJob, changes), over);

/** Runs with one of them changed. */
export const runsWith = (id: string, more: Partial<Run>): readonly Run[] =>
  baseRuns.map((r) => (r.homeRun === id ? { ...r, ...more } : r));
export const boxWith = (more: Partial<Box>): Pick<RuleFacts, 'boxes'> => ({ boxes: [{ ...BOX, ...more }] });
export const rowWith = (more: Partial<Row>): Pick<RuleFacts, 'rows'> => ({ rows: [{ ...ROW, ...more }] });
export { leg };

/** What a rule says of a subject; undefined where it only counted 'does not apply'. */
export const verdictOf = (facts: RuleFacts, rule: string, subject: string): Verdict | undefined =>
  runRules(facts).verdicts.find((v) => v.rule === rule && v.subject === subject);
