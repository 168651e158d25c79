import { boringLimits } from '../calculations/boring';
import { rowLimit, rowNeed } from '../calculations/cableRows';
import { holeDiameter } from '../calculations/holes';
import type { Box, Leg, Row, Run } from '../facts/result';
import type { Work } from '../facts/work';
import type { Cable } from '../standards/cable';
import { compareText } from '../units/order';
import { type Id, type In, knownOr, type Pt3 } from '../units/types';
import type { Candidate } from './candidate';
import type { Problem } from './choice';
import { type Hole, joistHoles, makeHolePacker } from './holes';
import { rowCableOf } from './homeRunFacts';
import type { Hung } from './hung';
import type { Posed } from './problem';
import { type Member, rowsOf, withHoles } from './rows';
import { ON_BOARD } from './share';
import { lieOf, piecesOf, usersOf } from './sharing';
import { spreadHoles } from './spreadHoles';

/** The strictest edition for adjustment where the code year is not known; the factors are the same in all of them. */
const EDITION_WHEN_UNKNOWN = 2023;
/** Wood left above and below a hole, 300.4(A)(1), inches. */
const EDGE_IN = 1.25;

export interface Chosen {
  readonly runs: readonly Run[];
  readonly boxes: readonly Box[];
  readonly rows: readonly Row[];
  readonly work: readonly Work[];
  readonly spliceCans: readonly Id[];
  /** Holes, boards, patches and tiles, each counted once for all who use it. */
  readonly shared: readonly Work[];
}

const work = (name: string, quantity: number, homeRuns: readonly Id[]): Work => ({
  item: name,
  quantity,
  homeRuns: [...homeRuns].sort(compareText),
  rule: null,
  alternate: null,
});

/** The boxes as they hang and the old cans with splices in them, with what they cost besides the boxes. */
const boxesOf = (
  posed: Posed,
  problem: Problem,
  picks: readonly number[],
  chosen: readonly Candidate[],
  hung: readonly Hung[],
) => {
  const boxes: Box[] = [];
  const items: Work[] = [];
  const byRun = new Map(posed.facts.map((f, r) => [f.id, { f, c: chosen[r]! }]));
  problem.spots.forEach((spot, j) => {
    const here = posed.facts.flatMap((f, r) => (problem.runs[r]![picks[r]!]!.spot === j ? [{ f, c: chosen[r]! }] : []));
    if (here.length === 0) return;
    items.push(
      work(
        'splice spot',
        1,
        here.map((x) => x.f.id),
      ),
    );
    if (!spot.boxes) boxes.push(canBox(posed, spot.key.slice('can '.length), here));
  });
  for (const { site, packed, homeRuns } of hung) {
    const inside = homeRuns.map((id) => byRun.get(id)!);
    boxes.push({
      id: `box-${homeRuns[0]}`,
      at: site.point,
      on: site.on,
      size: packed.kind.size,
      material: packed.kind.material,
      volumeIn3: packed.kind.volumeIn3,
      fillIn3: packed.fillIn3,
      homeRuns,
      conductorsSpliced: inside.reduce((n, x) => n + x.c.conductorsSpliced, 0),
    });
    items.push(work(`box:${packed.kind.size}`, 1, homeRuns));
    if (!packed.kind.clamps)
      for (const x of inside)
        for (const size of x.f.load.connectors) items.push(work(`connector:${size}`, 1, [x.f.id]));
  }
  return { boxes: boxes.sort((a, b) => compareText(a.id, b.id)), items };
};

const canBox = (posed: Posed, id: Id, here: readonly { f: Posed['facts'][number]; c: Candidate }[]): Box => {
  const can = posed.ask.job.enclosures.find((e) => e.id === id)!;
  const { width, height, depth } = can.size;
  const contents = {
    conductors: here.flatMap((x) => x.f.load.conductors),
    grounds: here.flatMap((x) => x.f.load.grounds),
    clamps: false,
  };
  const start = here[0]!.c.legs[0]?.from ?? [0, 0, 0];
  return {
    id: `can-${id}`,
    at: start,
    on: 'splice can',
    size: `${width}x${height}x${depth}`,
    material: 'metal',
    volumeIn3: width * height * depth,
    fillIn3: posed.fill(contents) ?? 0,
    homeRuns: here.map((x) => x.f.id).sort(compareText),
    conductorsSpliced: here.reduce((n, x) => n + x.c.conductorsSpliced, 0),
  };
};

/** Holes of every joist on every stretch: cables of one row share them, others have their own. */
const holesOf = (posed: Posed, legs: ReadonlyMap<Id, readonly Leg[]>): { row: Id | null; hole: Hole }[] => {
  const facts = new Map(posed.facts.map((f) => [f.id, f]));
  const shallowest = Math.min(...posed.routes.network.framing.map((r) => r.depth)) / 64;
  const most = boringLimits('joist', shallowest)?.maxHoleIn ?? 0;
  const pack = makeHolePacker((cables) => {
    const diameter = holeDiameter(cables);
    return diameter === undefined || (cables.length > 1 && diameter > most) ? null : diameter;
  });
  const pieces = piecesOf([...legs].map(([homeRun, list]) => ({ homeRun, legs: list })));
  const places = new Map<string, { at: Pt3; row: Id | null; inside: { homeRun: Id; cable: Cable }[] }>();
  for (const [homeRun, list] of pieces) {
    for (const { at, of } of joistHoles(posed.routes.network, list)) {
      const p = list[of]!;
      const row = legs.get(homeRun)![p.leg]!.row;
      const key = `${row ?? homeRun}|${at.map((x) => Math.round(x * 1000)).join()}`;
      const place = places.get(key) ?? { at, row, inside: [] };
      place.inside.push({ homeRun, cable: rowCableOf(facts.get(homeRun)!)(p.cable).cable });
      places.set(key, place);
    }
  }
  const packed = [...places]
    .sort(([a], [b]) => compareText(a, b))
    .flatMap(([, { at, row, inside }]) => pack(at, inside).map((hole) => ({ row, hole })));
  const outline = posed.ask.job.site.outline.map((corner) => corner.at);
  return spreadHoles(posed.routes.network, outline, packed);
};

/** Board, opened drywall and lifted tiles: once for all cables that share a stretch. */
const sharedStretches = (legs: ReadonlyMap<Id, readonly Leg[]>): Work[] => {
  const pieces = piecesOf([...legs].map(([homeRun, list]) => ({ homeRun, legs: list })));
  const users = usersOf(pieces);
  const ITEM: Readonly<Record<string, string>> = {
    'running board': 'running board',
    'opened drywall': 'patch',
    'above lay-in': 'lift tile',
  };
  const sum = new Map<string, { length: In; homeRuns: Set<Id> }>();
  const seen = new Set<string>();
  for (const list of pieces.values())
    for (const p of list) {
      const name = ITEM[p.by];
      if (name === undefined || seen.has(p.key)) continue;
      seen.add(p.key);
      const there = users.get(p.key)!;
      const times = lieOf(p.by) === 'board' ? Math.ceil(there.length / ON_BOARD) : 1;
      const entry = sum.get(name) ?? { length: 0, homeRuns: new Set<Id>() };
      entry.length += p.length * times;
      for (const id of there) entry.homeRuns.add(id);
      sum.set(name, entry);
    }
  return [...sum].map(([name, { length, homeRuns }]) => work(name, length / 12, [...homeRuns]));
};

/** Nail plates: a hole that leaves less than 1-1/4 in of wood to the edge of its joist. */
const platesFor = (posed: Posed, hole: Hole): number => {
  const { framing } = posed.routes.network;
  const depth = Math.min(...framing.map((r) => r.depth)) / 64;
  return depth / 2 - hole.diameter / 2 < EDGE_IN ? 1 : 0;
};

const rulesFor = (posed: Posed): Parameters<typeof rowsOf>[1] => {
  const { job } = posed.ask;
  const edition = knownOr(job.code.edition, EDITION_WHEN_UNKNOWN);
  const { bundling, nextSizeInRows } = job.practice;
  return {
    limit: (cables, policy) =>
      rowLimit(cables, { sealed: false, insulated: false, bundling, nextSizeInRows, ...policy }, edition),
    bears: (cable) => rowNeed(cable, { insulated: false, nextSizeInRows }, edition).mostConductors,
    pinned: posed.pins.rows,
  };
};

/** Boxes, rows, holes and work of a choice, everything re-measured and re-counted from the chosen ways. */
export const answerFor = (
  posed: Posed,
  problem: Problem,
  picks: readonly number[],
  chosen: readonly Candidate[],
  hung: readonly Hung[],
): Chosen => {
  const { boxes, items } = boxesOf(posed, problem, picks, chosen, hung);
  const members = posed.facts.map((f, r): Member => ({ homeRun: f.id, legs: chosen[r]!.legs, cable: rowCableOf(f) }));
  const { rows, legs } = rowsOf(members, rulesFor(posed));
  const holes = holesOf(posed, legs);
  const plates = new Map<Id, number>();
  for (const { hole } of holes)
    for (const id of hole.homeRuns) plates.set(id, (plates.get(id) ?? 0) + platesFor(posed, hole));

  const runs = posed.facts.map((f, r): Run => {
    const c = chosen[r]!;
    return {
      homeRun: f.id,
      way: c.way,
      why: c.why,
      reach: c.reach,
      cutIn: c.cutIn,
      box: boxes.find((b) => b.homeRuns.includes(f.id))?.id ?? null,
      newCable: c.newCable,
      legs: legs.get(f.id)!,
      codeLength: c.codeLength,
      codeLengthWithTails: c.codeLengthWithTails,
      cutLength: c.cutLength,
      holes: c.holes,
      supports: c.supports,
      plates: plates.get(f.id) ?? 0,
      conductorsSpliced: c.conductorsSpliced,
      blockedBy: c.blockedBy,
    };
  });
  const shared: Work[] = [
    ...chosen.flatMap((c, r) => (c.plateHoles > 0 ? [work('hole', c.plateHoles, [posed.facts[r]!.id])] : [])),
    ...holes.map(({ hole }) => work('hole', 1, hole.homeRuns)),
    ...sharedStretches(legs),
  ];
  const list: Work[] = [
    ...chosen.flatMap((c, r) => c.own.map((w) => work(w.item, w.quantity, [posed.facts[r]!.id]))),
    ...shared,
    ...holes.flatMap(({ hole }) => (platesFor(posed, hole) > 0 ? [work('plate', 1, hole.homeRuns)] : [])),
    ...items,
  ];
  const used = problem.runs.flatMap((choices, r) => {
    const spot = choices[picks[r]!]!.spot;
    return spot === null || problem.spots[spot]!.boxes ? [] : [problem.spots[spot]!.key.slice('can '.length)];
  });
  return {
    runs,
    boxes,
    rows: rows.map((row) =>
      withHoles(
        row,
        holes.filter((h) => h.row === row.id).map((h) => h.hole),
      ),
    ),
    work: mergeWork(list),
    shared,
    spliceCans: [...new Set([...posed.cans.kept, ...used])].sort(compareText),
  };
};

/** One entry for the same item done for the same home runs, sorted. */
const mergeWork = (list: readonly Work[]): Work[] => {
  const merged = new Map<string, Work>();
  for (const w of list) {
    if (w.quantity === 0) continue;
    const key = `${w.item}|${w.homeRuns.join()}`;
    const before = merged.get(key);
    merged.set(key, before ? { ...before, quantity: before.quantity + w.quantity } : w);
  }
  return [...merged].sort(([a], [b]) => compareText(a, b)).map(([, w]) => w);
};
