import { SAME_PLACE_IN, strictlyInside } from '../geometry/polygon';
import type { Enclosure, Site } from '../job/schema';
import { enclosureOnFace, faceOf, pointOnFace, wallFaces } from '../job/site';
import type { In, Pt3 } from '../units/types';
import { addEdge, addNode, type Build } from './csr';
import { layerNode, type newLayers, placeKey } from './layers';
import type { Ground } from './networkGround';
import type { Spot } from './networkLocate';
import { EDGE, type EdgeClass, LAYER, type Network, type PanelEntry, pointKey } from './types';
import { type Wall, wallNode } from './walls';

/** Center of the knockout nearest a corner, from that corner. Common practice, no source: enclosures differ. */
const KNOCKOUT_FROM_CORNER: In = 2;

/** Both ends and the middle of a side; the middle alone where the side is too short for three. */
const alongSide = (from: In, to: In): In[] => {
  const middle = (from + to) / 2;
  const [first, last] = [from + KNOCKOUT_FROM_CORNER, to - KNOCKOUT_FROM_CORNER];
  return first < middle ? [first, middle, last] : [middle];
};

/** Where cables may enter a panel: knockouts at the ends and the middle of its sides; a recessed one sits in its stud bay, so top and bottom only. */
export const entryPoints = (site: Site, e: Enclosure): { readonly side: PanelEntry['side']; readonly point: Pt3 }[] => {
  const face = faceOf([...wallFaces(site, 'now'), ...wallFaces(site, 'after')], e.on);
  if (!face) return [];
  const { left, right, bottom, top } = enclosureOnFace(e);
  const at = (chainage: In, z: In): Pt3 => [...pointOnFace(face, chainage), z];
  const across = alongSide(left, right);
  const up = alongSide(bottom, top);
  return [
    ...across.flatMap((x) => [
      { side: 'top' as const, point: at(x, top) },
      { side: 'bottom' as const, point: at(x, bottom) },
    ]),
    ...(e.mount === 'recessed'
      ? []
      : up.flatMap((z) => [
          { side: 'left' as const, point: at(left, z) },
          { side: 'right' as const, point: at(right, z) },
        ])),
  ];
};

/** A panel's entries in the network, to start a sweep from. Empty where the network was made without this place. */
export const panelEntries = (network: Network, enclosure: Enclosure): PanelEntry[] =>
  entryPoints(network.made.job.site, enclosure).flatMap(({ side, point }) => {
    const node = network.at.get(pointKey(point));
    return node === undefined ? [] : [{ side, node, cost: 0, point }];
  });

/** Do barriers leave the upright from a loose point to the joists open? */
const clearAbove = (ground: Ground, spot: Spot, under: number): boolean =>
  !ground.barriers.some(
    (b) => b.fromZ < under / 64 && b.toZ > spot.point[2] && strictlyInside([spot.point[0], spot.point[1]], b.outline),
  );

/**
 * The node of a spot: the one of its surface where it lies on it, else one of its own with a short edge to the surface.
 * `exact`: a terminal, whose node keeps the very point of the job.
 */
export const attach = (
  g: Build,
  ground: Ground,
  walls: readonly Wall[],
  layers: ReturnType<typeof newLayers>,
  spot: Spot,
  exact: boolean,
): number => {
  const [x, y] = spot.surface;
  const key = placeKey(x, y);
  const own = (to: number | undefined, cls: EdgeClass): number => {
    if (to !== undefined && g.x[to] === spot.at[0] && g.y[to] === spot.at[1] && g.z[to] === spot.at[2]) {
      const off = Math.hypot(g.px[to]! - spot.point[0], g.py[to]! - spot.point[1]);
      if (exact && off > SAME_PLACE_IN) [g.px[to], g.py[to], g.pz[to]] = spot.point;
      return to;
    }
    const node = addNode(g, LAYER.loose, -1, spot.at, spot.point);
    if (to !== undefined) {
      const flat = Math.hypot(g.x[to]! - spot.at[0], g.y[to]! - spot.at[1]);
      addEdge(g, node, to, Math.round(flat) + Math.abs(g.z[to]! - spot.at[2]), cls);
    }
    return node;
  };
  if (spot.layer === LAYER.wall) {
    const wall = walls[spot.face]!;
    const column = wall.columnAt.get(spot.chain);
    const level = wall.levelAt.get(spot.at[2]);
    if (column === undefined || level === undefined) return own(undefined, EDGE.joistSide);
    return own(wallNode(g, ground, wall, column, level), wall.face.up);
  }
  const joist = layers.joist.nodes.get(key);
  const below = layers.below.nodes.get(key);
  if (spot.layer === LAYER.joist) return own(joist ?? layerNode(g, ground, layers.joist, x, y), EDGE.joistSide);
  if (spot.layer === LAYER.below) {
    if (below === undefined) return own(joist, EDGE.joistSide);
    if (exact && joist !== undefined) addEdge(g, below, joist, Math.abs(g.z[joist]! - g.z[below]!), EDGE.joistSide);
    return own(below, EDGE.under);
  }
  const ceiling = below ?? joist;
  const free = ceiling !== undefined && clearAbove(ground, spot, g.z[ceiling]!);
  const node = own(free ? ceiling : undefined, EDGE.sleeve);
  if (free && below !== undefined && joist !== undefined)
    addEdge(g, node, joist, Math.abs(g.z[joist]! - spot.at[2]), EDGE.sleeve);
  return node;
};
