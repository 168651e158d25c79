import { coveredAt, overlapsSpans } from '../geometry/spans';
import { pointOnFace } from '../job/site';
import type { Pt } from '../units/types';
import { addEdge, addNode, type Build } from './csr';
import { chainOf, type NetFace, onFace } from './faces';
import type { Lines } from './lines';
import { roundX, roundY } from './networkFrame';
import { regionAt } from './networkFraming';
import type { Ground } from './networkGround';
import { LAYER } from './types';

/** One upright of a wall's grid: everything at the same chainage. */
export interface Column {
  readonly chain: number;
  /** Places of the ceiling's layers right above it. */
  readonly above: readonly Pt[];
  /** Height of the wall here, 1/64 in: to the joists, or to the top of a lower partition. */
  readonly top: number;
  readonly under: number;
}
export interface Wall {
  readonly face: NetFace;
  readonly index: number;
  readonly columns: readonly Column[];
  readonly columnAt: ReadonlyMap<number, number>;
  readonly levels: readonly number[];
  readonly levelAt: ReadonlyMap<number, number>;
  /** Node by column and level, -1 where none was needed yet. */
  readonly nodes: Int32Array;
}

const BESIDE = 0.25;
/** A stud wall begins and ends with a stud, 1-1/2 in: no cable goes up there. Common practice, no source. */
const END_STUD = 1.5 * 64;
/** Where the first bay of a stud wall begins and the last one ends; the whole of any other wall. */
const baysOf = (face: NetFace): readonly [number, number] =>
  face.studs64 > 0 && face.end > 2 * END_STUD ? [END_STUD, face.end - END_STUD] : [0, face.end];

/** Chainages of a face's grid, each with the places above it: where grid lines meet the face, and `more`. */
const chainages = (ground: Ground, face: NetFace, lines: Lines, more: readonly number[]): Map<number, Pt[]> => {
  const found = new Map<number, Pt[]>();
  const put = (chain: number, above?: Pt) => {
    if (chain < 0 || chain > face.end) return;
    const list = found.get(chain) ?? [];
    if (above && !list.some((p) => p[0] === above[0] && p[1] === above[1])) list.push(above);
    found.set(chain, list);
  };
  for (const chain of [0, face.end, ...baysOf(face), ...more]) put(chain);
  for (const axis of [0, 1] as const) {
    if (face.fixed === axis) continue;
    const other = axis === 0 ? 1 : 0;
    const low = Math.min(face.from[axis], face.to[axis]);
    const high = Math.max(face.from[axis], face.to[axis]);
    for (const c of axis === 0 ? lines.xs : lines.ys) {
      if (c < low || c > high) continue;
      const t = (c - face.from[axis]) / (face.to[axis] - face.from[axis]);
      const met = face.from[other] + (face.to[other] - face.from[other]) * t;
      if (axis === 0) put(chainOf(face, [c, met]), [c, roundY(ground.frame, met)]);
      else put(chainOf(face, [met, c]), [roundX(ground.frame, met), c]);
    }
  }
  return found;
};

/** The grid of one face: chainages of the lines and terminals by all heights that matter anywhere on a wall. */
export const drawWall = (ground: Ground, index: number, lines: Lines, more: readonly number[]): Wall => {
  const face = ground.faces[index]!;
  const found = chainages(ground, face, lines, more);
  const columns = [...found.keys()]
    .sort((a, b) => a - b)
    .map((chain): Column => {
      const { under } = ground.regions[regionAt(ground.regions, onFace(face, chain))]!;
      const top = face.top === null ? under : Math.min(face.top, under);
      return { chain, above: found.get(chain)!, top, under };
    });
  const tops = columns.map((c) => c.top);
  const highest = Math.max(...tops);
  const levels = [...new Set([...lines.zs.filter((z) => z <= highest), ...tops])].sort((a, b) => a - b);
  return {
    face,
    index,
    columns,
    columnAt: new Map(columns.map((c, i) => [c.chain, i])),
    levels,
    levelAt: new Map(levels.map((z, i) => [z, i])),
    nodes: new Int32Array(columns.length * levels.length).fill(-1),
  };
};

/** Exact point of the job at a chainage. A sloped wall's chainages are measured from its middle. */
const pointAt = (face: NetFace, chain: number): Pt =>
  pointOnFace(face.face, face.fixed === null ? (chain - face.end / 2) / 64 + face.face.length / 2 : chain / 64);

/** The node of a wall at a column and level; made when first asked for. */
export const wallNode = (g: Build, ground: Ground, wall: Wall, column: number, level: number): number => {
  const slot = column * wall.levels.length + level;
  const found = wall.nodes[slot]!;
  if (found >= 0) return found;
  const { chain } = wall.columns[column]!;
  const [x, y] = onFace(wall.face, chain);
  const z = wall.levels[level]!;
  const [px, py] = pointAt(wall.face, chain);
  const at = [roundX(ground.frame, x), roundY(ground.frame, y), z] as const;
  const node = addNode(g, LAYER.wall, wall.index, at, [px, py, z / 64]);
  wall.nodes[slot] = node;
  return node;
};

/** Barred only where both sides are: the edge of a window, a panel or a thing may be followed. */
const barredBetween = (a: readonly number[], b: readonly number[], from: number, to: number): boolean =>
  overlapsSpans(a, from, to) && overlapsSpans(b, from, to);

/** Cable up and along a wall, clear of its openings, its panels and what stands in front of it. */
export const layWall = (g: Build, ground: Ground, wall: Wall): void => {
  const { face, columns, levels } = wall;
  const areas = ground.patches[wall.index]!;
  const everywhere = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const [firstBay, lastBay] = baysOf(face);
  columns.forEach((column, i) => {
    if (column.chain < firstBay || column.chain > lastBay) return;
    const before = i > 0 ? coveredAt(areas, 0, column.chain - BESIDE) : everywhere;
    const after = i + 1 < columns.length ? coveredAt(areas, 0, column.chain + BESIDE) : everywhere;
    for (let l = 0; l + 1 < levels.length && levels[l + 1]! <= column.top; l++) {
      if (barredBetween(before, after, levels[l]!, levels[l + 1]!)) continue;
      const from = wallNode(g, ground, wall, i, l);
      addEdge(g, from, wallNode(g, ground, wall, i, l + 1), levels[l + 1]! - levels[l]!, face.up);
    }
  });
  levels.forEach((z, l) => {
    const below = coveredAt(areas, 1, z - BESIDE);
    const above = coveredAt(areas, 1, z + BESIDE);
    for (let i = 0; i + 1 < columns.length; i++) {
      const from = columns[i]!;
      const to = columns[i + 1]!;
      if (z > from.top || z > to.top) continue;
      const atTop = z === Math.min(from.top, to.top);
      if (barredBetween(below, atTop ? everywhere : above, from.chain, to.chain)) continue;
      const a = wallNode(g, ground, wall, i, l);
      addEdge(g, a, wallNode(g, ground, wall, i + 1, l), to.chain - from.chain, face.across);
    }
  });
};
