import type { Circuit, HomeRun, Job, Obstacle } from '../src/job/schema';
import type { Pt, Pt3 } from '../src/units/types';
import { random } from '../tests/support/random';
import { randomJob } from '../tests/support/randomJob';

/** The reference basement: 40 × 28 ft, joists at 16 in, things in the way, circuits of seven kinds of cable in six groups. */

const UNDERSIDE = 92;
const KINDS: readonly (readonly [size: string, hots: 1 | 2, amps: number])[] = [
  ['14', 1, 15],
  ['12', 1, 20],
  ['14', 2, 15],
  ['12', 2, 20],
  ['10', 1, 30],
  ['10', 2, 30],
  ['8', 2, 40],
];
const GROUPS = 6;

export const basement = (circuits = 42, things = 12, area = 1): Job => {
  const base = randomJob(1);
  const r = random(77);
  const side = Math.sqrt(area);
  const [w, d] = [Math.round(480 * side), Math.round(336 * side)];
  const corners: Pt[] = [
    [0, 0],
    [0, d],
    [w, d],
    [w, 0],
  ];
  const groups = Array.from({ length: GROUPS }, (_, g) => {
    const y = 48 + g * 2;
    const out = 60 + 40 * g;
    const z = UNDERSIDE + 3;
    const path: Pt3[] = [
      [0, y, 68],
      [0, y, z],
      [out, y, z],
      [out, y + 90, z],
    ];
    return { ...base.cableGroups[0]!, id: `g${g}`, path, reachable: [[0, 27 + out + 90]] as [number, number][] };
  });
  const list: Circuit[] = [];
  const homeRuns: HomeRun[] = [];
  for (let i = 0; i < circuits; i++) {
    const [size, hots, amps] = KINDS[i % KINDS.length]!;
    const id = `c${String(i).padStart(2, '0')}`;
    list.push({
      ...base.circuits[0]!,
      id,
      number: String(i + 1),
      label: `Circuit ${i + 1}`,
      poles: hots,
      volts: hots === 2 ? 240 : 120,
      amps,
      partner: null,
      serves: [r.pick(['bedroom', 'kitchen', 'living', 'bath', 'laundry'] as const)],
      protection: 'none',
    });
    homeRuns.push({
      ...base.homeRuns[0]!,
      id: `h${String(i).padStart(2, '0')}`,
      group: groups[i % GROUPS]!.id,
      circuits: [id],
      cable: { kind: 'NM', size, metal: 'Cu', hots, neutral: 'insulated', ground: true, insulation: 90 },
      wholeLength: 600,
    });
  }
  const obstacles: Obstacle[] = Array.from({ length: things }, (_, i) => {
    const overhead = i % 2 === 0;
    const size = { width: r.int(6, 48), depth: r.int(6, 30), height: overhead ? 8 : 60 };
    return {
      id: `o${i}`,
      kind: overhead ? 'duct' : 'shelf',
      corner: [r.int(40, w - 100), r.int(40, d - 90)] as Pt,
      turn: 0,
      size,
      sizes: 'measured',
      bottom: overhead ? UNDERSIDE - 4 : 0,
      blocksCable: true,
      blocksSpace: true,
      foreign: overhead,
      clearance: 1,
      exists: { now: true, after: true },
      stored: false,
      moveCents: null,
    };
  });
  const face = { build: 'plywood board' as const, insulated: false };
  const state = { use: 'unfinished storage' as const, cover: 'open joists' as const, ceiling: UNDERSIDE, floorRise: 0 };
  const options = base.options
    .filter((o) => o.kind === 'relocate')
    .map((o) => ({
      ...o,
      enclosure: { ...o.enclosure, on: { wall: 'w1', face: 'front' as const, left: 160, bottom: 36 }, spaces: 60 },
    }));
  return {
    ...base,
    id: 'basement',
    title: `Reference basement, ${circuits} circuits, ${things} things`,
    code: { ...base.code, edition: 2023 },
    site: {
      ...base.site,
      outline: corners.map((at, i) => ({
        id: `w${i}`,
        at,
        face: { now: face, after: face },
        studSpacing: 16,
        thickness: 8,
      })),
      areas: [{ id: 'room', outline: corners, state: { now: state, after: state } }],
      framing: [
        {
          ...base.site.framing[0]!,
          outline: null,
          direction: 90,
          firstJoist: 8,
          spacing: 16,
          depth: 9.25,
          kind: 'sawn',
          underside: UNDERSIDE,
        },
      ],
      obstacles,
    },
    enclosures: base.enclosures.map((e) => ({ ...e, spaces: 42 })),
    cableGroups: groups,
    circuits: list,
    homeRuns,
    options,
  };
};
