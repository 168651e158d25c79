import { insideOrOn, strictlyInside } from '../geometry/polygon';
import { STUD_WALL_IN } from '../job/site';
import type { Pt } from '../units/types';
import { addEdge, type Build } from './csr';
import { chainOf, onFace, outOf, thicknessOf } from './faces';
import { bayLines, type newLayers, placeKey } from './layers';
import { snap } from './networkFrame';
import { regionAt } from './networkFraming';
import type { Ground } from './networkGround';
import { EDGE, type EdgeClass } from './types';
import { type Wall, wallNode } from './walls';

/** Faces that meet within 1/32 in share a corner. */
const MEET = 2;
/** A cable may span this from the top of a low partition up to the joists. Common practice, no source. */
const GAP_IN = 12;

/** Where the ends of faces meet other faces: chainages that need a column, by face. */
export const meetings = (ground: Ground): Map<number, number[]> => {
  const found = new Map<number, number[]>();
  ground.faces.forEach((face) => {
    for (const end of [face.from, face.to])
      ground.faces.forEach((other, j) => {
        if (other === face || Math.abs(outOf(other, end)) > MEET) return;
        const chain = chainOf(other, end);
        if (chain < 0 || chain > other.end) return;
        found.set(j, [...(found.get(j) ?? []), chain]);
      });
  });
  return found;
};

const joinLevels = (g: Build, ground: Ground, a: Wall, i: number, b: Wall, j: number, length: number): void => {
  const top = Math.min(a.columns[i]!.top, b.columns[j]!.top);
  // into a stud wall the stud at its end is bored, around a free end nothing; of two ways the dearer, which has the higher number
  const halves = length === 0 && a.face.studs64 + b.face.studs64 > 0 ? 2 : 0;
  const cls = length === 0 ? EDGE.corner : (Math.max(a.face.up, b.face.up) as EdgeClass);
  a.levels.forEach((z, l) => {
    const m = b.levelAt.get(z);
    if (m === undefined || z > top) return;
    addEdge(g, wallNode(g, ground, a, i, l), wallNode(g, ground, b, j, m), length, cls, halves);
  });
};

/** Cable turns from one wall to the next where their faces meet, and around the free end of a partition. */
export const joinWalls = (g: Build, ground: Ground, walls: readonly Wall[]): void => {
  const done = new Set<string>();
  for (const a of walls)
    for (const end of [0, a.face.end])
      for (const b of walls) {
        if (a === b) continue;
        const p = onFace(a.face, end);
        if (Math.abs(outOf(b.face, p)) > MEET) continue;
        const chain = chainOf(b.face, p);
        const i = a.columnAt.get(end);
        const j = b.columnAt.get(chain);
        if (i === undefined || j === undefined) continue;
        const key = a.index < b.index ? `${a.index}/${i}/${b.index}/${j}` : `${b.index}/${j}/${a.index}/${i}`;
        if (done.has(key)) continue;
        done.add(key);
        joinLevels(g, ground, a, i, b, j, 0);
      }
  const bodies = ground.barriers.filter((b) => b.what === 'partition');
  for (const a of walls) {
    if (a.face.face.face !== 'front' || !a.face.face.partition) continue;
    const b = walls.find((w) => w.face.face.wall === a.face.face.wall && w.face.face.face === 'back');
    if (!b) continue;
    for (const [mine, its] of [
      [0, b.face.end],
      [a.face.end, 0],
    ] as const) {
      const [p, q] = [onFace(a.face, mine), onFace(b.face, its)];
      const middle: Pt = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
      if (!strictlyInside(middle, ground.room)) continue;
      const covered = bodies.some(
        (body) =>
          body.id !== a.face.face.wall &&
          insideOrOn(
            middle,
            body.outline.map((o) => snap(ground.frame, o)),
          ),
      );
      if (!covered)
        joinLevels(g, ground, a, a.columnAt.get(mine)!, b, b.columnAt.get(its)!, thicknessOf(a.face, STUD_WALL_IN));
    }
  }
};

/** A sloped wall's terminal and the grid lines through it may round to places this far apart. */
const SAME_PLACE = 2;

/**
 * From the top of a wall, through its plate where it has studs: to the level below the joists anywhere; into the joists
 * anywhere on a wall along them, and on other walls in the middle of a bay or right above a terminal: elsewhere
 * a joist may be in the way.
 */
export const joinCeiling = (
  g: Build,
  ground: Ground,
  wall: Wall,
  layers: ReturnType<typeof newLayers>,
  terminals: readonly number[],
): void => {
  const middles = bayLines(ground);
  wall.columns.forEach((column, i) => {
    if (column.under - column.top > GAP_IN * 64) return;
    const atTerminal = terminals.some((chain) => Math.abs(chain - column.chain) <= SAME_PLACE);
    for (const [x, y] of column.above) {
      const r = regionAt(ground.regions, [x, y]);
      const { across } = ground.regions[r]!;
      const free = across === null || wall.face.fixed === across || atTerminal || middles[r]!.has(across === 0 ? x : y);
      const joist = free ? layers.joist.nodes.get(placeKey(x, y)) : undefined;
      const below = layers.below.nodes.get(placeKey(x, y));
      if (joist === undefined && below === undefined) continue;
      const top = wallNode(g, ground, wall, i, wall.levelAt.get(column.top)!);
      for (const node of [joist, below]) {
        if (node === undefined) continue;
        const rise = Math.abs(g.z[node]! - column.top);
        addEdge(g, top, node, rise, rise === 0 ? EDGE.corner : EDGE.joistSide, wall.face.studs64 > 0 ? 2 : 0);
      }
    }
  });
};
