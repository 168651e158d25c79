import { strictlyInside } from '../geometry/polygon';
import type { Pt } from '../units/types';
import { addEdge, addNode, type Build } from './csr';
import { readLine, type Stretch } from './layersLine';
import type { Lines } from './lines';
import { roundX, roundY, toJob } from './networkFrame';
import { bayMiddles, regionAt } from './networkFraming';
import type { Ground } from './networkGround';
import { EDGE, LAYER } from './types';

/** Nodes of one horizontal layer by their place. */
export interface Layer {
  readonly layer: typeof LAYER.joist | typeof LAYER.below;
  readonly nodes: Map<number, number>;
}
export const newLayers = (): { readonly joist: Layer; readonly below: Layer } => ({
  joist: { layer: LAYER.joist, nodes: new Map() },
  below: { layer: LAYER.below, nodes: new Map() },
});

const WIDEST = 2 ** 21; // frame coordinates are under 1.5 × 12 000 in × 64
export const placeKey = (x: number, y: number): number => x * WIDEST + y;

/** The node of a layer at a place; made when first asked for. */
export const layerNode = (g: Build, ground: Ground, layer: Layer, x: number, y: number): number => {
  const key = placeKey(x, y);
  const found = layer.nodes.get(key);
  if (found !== undefined) return found;
  const region = ground.regions[ground.regions.length === 1 ? 0 : regionAt(ground.regions, [x, y])]!;
  const z = layer.layer === LAYER.joist ? region.joistZ : region.under;
  const [px, py] = toJob(ground.frame, x, y);
  const node = addNode(g, layer.layer, -1, [x, y, z], [px, py, z / 64]);
  layer.nodes.set(key, node);
  return node;
};

/** Where the line x = at (axis 0) or y = at meets the skew segments, whole units. */
const skewStops = (ground: Ground, lines: Lines, axis: 0 | 1, at: number): number[] => {
  const other = axis === 0 ? 1 : 0;
  const round = axis === 0 ? roundY : roundX;
  const stops: number[] = [];
  for (const [a, b] of lines.skew) {
    if (at < Math.min(a[axis], b[axis]) || at > Math.max(a[axis], b[axis])) continue;
    const t = (at - a[axis]) / (b[axis] - a[axis]);
    stops.push(round(ground.frame, a[other] + (b[other] - a[other]) * t));
  }
  return stops;
};

/** Cable among the joists and just below them, along every line of the grid. */
export const layCeiling = (g: Build, ground: Ground, lines: Lines, layers: ReturnType<typeof newLayers>): void => {
  const edge = (layer: Layer, a: Pt, b: Pt, stretch: Stretch) => {
    const from = layerNode(g, ground, layer, a[0], a[1]);
    const to = layerNode(g, ground, layer, b[0], b[1]);
    const step = Math.abs(g.z[from]! - g.z[to]!);
    const length = Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]) + step;
    addEdge(g, from, to, length, stretch.cls, stretch.halves, stretch.region);
  };
  for (const axis of [0, 1] as const) {
    const [fixed, crossing] = axis === 0 ? [lines.xs, lines.ys] : [lines.ys, lines.xs];
    for (const at of fixed) {
      const extra = lines.skew.length > 0 ? skewStops(ground, lines, axis, at) : [];
      const stops =
        extra.length > 0 ? [...new Set([...crossing, ...extra])].sort((p, q) => p - q) : (crossing as number[]);
      const { joists, below } = readLine(ground, axis, at, stops);
      for (let e = 0; e + 1 < stops.length; e++) {
        const a: Pt = axis === 0 ? [at, stops[e]!] : [stops[e]!, at];
        const b: Pt = axis === 0 ? [at, stops[e + 1]!] : [stops[e + 1]!, at];
        if (joists[e]) edge(layers.joist, a, b, joists[e]!);
        if (below[e]) edge(layers.below, a, b, below[e]!);
      }
    }
  }
};

/** Middles of bays by region, where a cable passes between the joists and what is below them; null where joists run askew. */
export const bayLines = (ground: Ground): (ReadonlySet<number> | null)[] => {
  const whole = [ground.frame.width, ground.frame.height] as const;
  return ground.regions.map((r) => (r.across === null ? null : new Set(bayMiddles(r, -1, whole[r.across] + 1))));
};

/** Between the joists and the level below them a cable passes in the middle of a bay, where no joist is. */
export const linkBays = (g: Build, ground: Ground, layers: ReturnType<typeof newLayers>): void => {
  const middles = bayLines(ground);
  for (const [key, below] of layers.below.nodes) {
    const joist = layers.joist.nodes.get(key);
    if (joist === undefined) continue;
    const p: Pt = [g.x[below]!, g.y[below]!];
    const r = ground.regions.length === 1 ? 0 : regionAt(ground.regions, p);
    const across = ground.regions[r]!.across;
    if (across !== null && !middles[r]!.has(p[across])) continue;
    if (ground.bays.some((bay) => strictlyInside(p, bay.ring))) continue;
    addEdge(g, below, joist, Math.abs(g.z[below]! - g.z[joist]!), EDGE.joistSide);
  }
};
