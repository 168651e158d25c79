import type { EdgeClass } from './types';

/** Nodes and edges while a network is being built. */
export interface Build {
  readonly x: number[];
  readonly y: number[];
  readonly z: number[];
  readonly px: number[];
  readonly py: number[];
  readonly pz: number[];
  readonly layer: number[];
  readonly face: number[];
  readonly from: number[];
  readonly to: number[];
  readonly len: number[];
  readonly cls: number[];
  readonly halves: number[];
  readonly region: number[];
}
export const emptyBuild = (): Build => ({
  x: [],
  y: [],
  z: [],
  px: [],
  py: [],
  pz: [],
  layer: [],
  face: [],
  from: [],
  to: [],
  len: [],
  cls: [],
  halves: [],
  region: [],
});

export const addNode = (
  g: Build,
  layer: number,
  face: number,
  at: readonly [x: number, y: number, z: number],
  point: readonly [x: number, y: number, z: number],
): number => {
  g.layer.push(layer);
  g.face.push(face);
  g.x.push(at[0]);
  g.y.push(at[1]);
  g.z.push(at[2]);
  g.px.push(point[0]);
  g.py.push(point[1]);
  return g.pz.push(point[2]) - 1;
};

/** An edge both ways. */
export const addEdge = (g: Build, a: number, b: number, len: number, cls: EdgeClass, halves = 0, region = -1): void => {
  g.from.push(a);
  g.to.push(b);
  g.len.push(len);
  g.cls.push(cls);
  g.halves.push(halves);
  g.region.push(region);
};

/** Edges in compressed rows, each in both directions, in the order they were added. */
export const compress = (g: Build) => {
  const nodes = g.x.length;
  const edges = g.from.length;
  const off = new Int32Array(nodes + 1);
  for (let e = 0; e < edges; e++) {
    off[g.from[e]! + 1]!++;
    off[g.to[e]! + 1]!++;
  }
  for (let n = 0; n < nodes; n++) off[n + 1]! += off[n]!;
  const next = off.slice(0, nodes);
  const to = new Int32Array(2 * edges);
  const len = new Int32Array(2 * edges);
  const cls = new Uint8Array(2 * edges);
  const halves = new Int32Array(2 * edges);
  const region = new Int16Array(2 * edges);
  for (let e = 0; e < edges; e++) {
    const a = g.from[e]!;
    const b = g.to[e]!;
    for (const [u, v] of [
      [a, b],
      [b, a],
    ] as const) {
      const slot = next[u]!++;
      to[slot] = v;
      len[slot] = g.len[e]!;
      cls[slot] = g.cls[e]!;
      halves[slot] = g.halves[e]!;
      region[slot] = g.region[e]!;
    }
  }
  return {
    nodeCount: nodes,
    x: Int32Array.from(g.x),
    y: Int32Array.from(g.y),
    z: Int32Array.from(g.z),
    px: Float64Array.from(g.px),
    py: Float64Array.from(g.py),
    pz: Float64Array.from(g.pz),
    layer: Uint8Array.from(g.layer),
    face: Int16Array.from(g.face),
    off,
    to,
    len,
    cls,
    halves,
    region,
  };
};
