import { insideParts } from '../geometry/polygon';
import { add, rightOf, scale, subtract, unit } from '../geometry/vector';
import type { Opening, Option, Partition, Site } from '../job/schema';
import { enclosureOnFace, framingAt, roomOutline } from '../job/site';
import { type In, isKnown, knownOr, type Pt, type Pt3 } from '../units/types';
import { type Hatch, stroke } from './items';
import { at, edge, face, joined, prism, ringEdges, type Shape } from './solidShapes';
import type { Edge, Face, Solid, Surface, When } from './solids';
import { changeDash, OUTLINE_WALL_IN, partitionQuad, wallQuads } from './walls';

/** Partitions are cut this low, so that the room is seen over them. Our own line. */
export const CUT_LOW_IN = 26;
/** Underside of the joists where it was not measured: an 8 ft ceiling. Common practice, no source. */
export const UNDERSIDE_IN = 96;
/** A piece of partition this much wider than the panel on each side is left standing to the top. */
const AROUND_PANEL_IN = 9;
const GRID_IN = 24;

/** Tone of a wall where it is cut, by its hatch; the rest are no walls. */
const CUT: Readonly<Partial<Record<Hatch, Surface>>> = {
  concrete: 'concrete',
  block: 'concrete',
  stud: 'wood',
  ply: 'ply',
  'not measured': 'not measured',
};

/** Underside of the framing over a plan point, or what is taken where it was not measured. */
export const undersideAt = (site: Site, p: Pt): In => knownOr(framingAt(site, p)?.underside ?? 'unknown', UNDERSIDE_IN);

/** The floor with a grid of 2 ft. */
export const solidFloor = (site: Site): Solid => {
  const outline = roomOutline(site);
  const [xs, ys] = [outline.map((p) => p[0]), outline.map((p) => p[1])];
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const across = (a: Pt, b: Pt): Edge[] =>
    insideParts(a, b, outline).map(([s, e]) =>
      edge(at(add(a, scale(subtract(b, a), s)), 0), at(add(a, scale(subtract(b, a), e)), 0), stroke('hair', 'hair')),
    );
  const lines: Edge[] = [];
  for (let x = minX + GRID_IN; x < maxX; x += GRID_IN) lines.push(...across([x, minY - 1], [x, maxY + 1]));
  for (let y = minY + GRID_IN; y < maxY; y += GRID_IN) lines.push(...across([minX - 1, y], [maxX + 1, y]));
  const ring = outline.map((p) => at(p, 0));
  return {
    id: 'floor',
    kind: 'floor',
    // the only face that may turn inward; the scene cuts it into triangles as a whole
    faces: [face([...ring].reverse(), 'floor', null, 'up')],
    edges: [...lines, ...ringEdges(ring, stroke('object', 'ink-2'))],
    body: null,
  };
};

interface Hole {
  readonly left: In;
  readonly right: In;
  readonly bottom: In;
  readonly top: In;
}
const holeOf = (o: Opening): Hole => ({
  left: o.on.left,
  right: o.on.left + o.width,
  bottom: o.on.bottom,
  top: o.on.bottom + o.height,
});
/** A wall's elevation without its openings, as upright rectangles. */
const aroundHoles = (long: In, high: In, holes: readonly Hole[]): Hole[] => {
  const stops = [...new Set([0, long, ...holes.flatMap((h) => [h.left, h.right])])]
    .filter((s) => s >= 0 && s <= long)
    .sort((a, b) => a - b);
  return stops.slice(1).flatMap((right, i): Hole[] => {
    const left = stops[i]!;
    let bottom = 0;
    const parts: Hole[] = [];
    const over = holes.filter((h) => h.left < right && h.right > left).sort((a, b) => a.bottom - b.bottom);
    for (const hole of over) {
      if (hole.bottom > bottom) parts.push({ left, right, bottom, top: Math.min(hole.bottom, high) });
      bottom = Math.max(bottom, hole.top);
    }
    return bottom < high ? [...parts, { left, right, bottom, top: high }] : parts;
  });
};

interface Plane {
  readonly from: Pt;
  readonly along: Pt;
  readonly into: Pt;
}
const onPlane = ({ from, along, into }: Plane, s: In, z: In, out = 0): Pt3 =>
  at(add(from, add(scale(along, s), scale(into, out))), z);
const rectangle = (plane: Plane, h: Hole, out = 0): Pt3[] => [
  onPlane(plane, h.left, h.bottom, out),
  onPlane(plane, h.right, h.bottom, out),
  onPlane(plane, h.right, h.top, out),
  onPlane(plane, h.left, h.top, out),
];

/** A door or a window set into the wall: its reveal, and the leaf or pane half way in. */
const inset = (plane: Plane, opening: Opening, thickness: In, when: When): Shape => {
  const hole = holeOf(opening);
  const deep = -thickness / 2;
  const [front, back] = [rectangle(plane, hole), rectangle(plane, hole, deep)];
  const reveal = front.map((p, i) => [p, back[i]!, back[(i + 1) % 4]!, front[(i + 1) % 4]!]);
  const open = opening.kind === 'cased opening';
  const middle = (hole.left + hole.right) / 2;
  const fine = stroke('thin', 'ink-3');
  const knob = opening.hinge === 'left' ? hole.right - 3 : hole.left + 3;
  const leaf =
    opening.kind === 'window'
      ? [edge(onPlane(plane, middle, hole.bottom, deep), onPlane(plane, middle, hole.top, deep), fine, when)]
      : [
          edge(
            onPlane(plane, knob - 1, hole.bottom + 36, deep),
            onPlane(plane, knob + 1, hole.bottom + 36, deep),
            stroke('profile', 'ink-2'),
            when,
          ),
        ];
  return {
    faces: [
      ...reveal.map((quad) => face([...quad].reverse(), 'wall', when)),
      ...(open ? [] : [face(back, 'thing', when)]),
    ],
    edges: [
      ...ringEdges(front, stroke('object', 'ink'), when),
      ...ringEdges(back, fine, when),
      ...front.map((p, i) => edge(p, back[i]!, fine, when)),
      ...(open ? [] : leaf),
    ],
  };
};

/** Walls round the room. Each is left out while it would be seen from behind, so that the room is open to the eye. */
export const solidWalls = (site: Site): Solid[] => {
  const quads = wallQuads(site);
  const normals = quads.map(({ quad }) => rightOf(unit(subtract(quad[1]!, quad[0]!))));
  return quads.map(({ id, quad, hatch }, i): Solid => {
    const [from, to, outerTo, outerFrom] = quad as [Pt, Pt, Pt, Pt];
    const plane: Plane = { from, along: unit(subtract(to, from)), into: normals[i]! };
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const middle = onPlane(plane, long / 2, 0, 1);
    const high = undersideAt(site, [middle[0], middle[1]]);
    const toward: Pt3 = [plane.into[0], plane.into[1], 0];
    const when: When = { at: at(from, 0), toward, but: null };
    const corner = site.outline[i]!;
    const openings = site.openings.filter((o) => o.on.wall === id && o.exists.after);
    const surface: Surface = corner.face.after.build === 'plywood board' ? 'ply' : 'wall';
    const cut = stroke('cut', 'ink', isKnown(corner.thickness) ? null : 'future');
    const top = [from, to, outerTo, outerFrom].map((p) => at(p, high));
    const neighbor = normals[(i + 1) % normals.length]!;
    const bothWays: When = { at: at(to, 0), toward, but: [neighbor[0], neighbor[1], 0] };
    const end = [at(to, 0), at(outerTo, 0), at(outerTo, high), at(to, high)];
    const insets = joined(openings.map((o) => inset(plane, o, knownOr(corner.thickness, OUTLINE_WALL_IN), when)));
    const inner = aroundHoles(long, high, openings.map(holeOf)).map(
      (h): Face => face(rectangle(plane, h), surface, when),
    );
    return {
      id,
      kind: 'wall',
      faces: [
        ...inner,
        face([...top].reverse(), CUT[hatch] ?? 'wall', when, 'up'),
        face(end, CUT[hatch] ?? 'wall', bothWays),
        ...insets.faces,
      ],
      edges: [
        ...ringEdges(top, cut, when),
        ...ringEdges(end, cut, bothWays),
        edge(at(from, 0), at(to, 0), stroke('object', 'ink'), when),
        edge(at(from, 0), at(from, high), stroke('object', 'ink'), when),
        edge(at(to, 0), at(to, high), stroke('object', 'ink'), when),
        ...insets.edges,
      ],
      body: null,
    };
  });
};

type Stretch = readonly [from: In, to: In];
const outside = (all: Stretch, cuts: readonly Stretch[]): Stretch[] =>
  [...cuts]
    .sort((a, b) => a[0] - b[0])
    .reduce<Stretch[]>(
      (parts, [f, t]) =>
        parts.flatMap(([a, b]): Stretch[] =>
          t <= a || f >= b ? [[a, b]] : ([[a, f] as const, [t, b] as const].filter(([s, e]) => e > s) as Stretch[]),
        ),
      [all],
    );

/** Chainage along a partition from its own start, whichever face a thing hangs on. */
const alongWall = (long: In, on: { readonly face: string }, left: In, right: In): Stretch =>
  on.face === 'front' ? [left, right] : [long - right, long - left];

/** Partitions cut low; where the new panel hangs, a piece of the wall is left standing. */
export const solidPartitions = (site: Site, enclosure: Option['enclosure']): Solid[] =>
  site.partitions
    .filter((p) => p.exists.now || p.exists.after)
    .map((p): Solid => ({ id: p.id, kind: 'partition', ...partitionShape(site, p, enclosure), body: null }));

const partitionShape = (site: Site, p: Partition, enclosure: Option['enclosure']): Shape => {
  const long = Math.hypot(p.to[0] - p.from[0], p.to[1] - p.from[1]);
  const along = unit(subtract(p.to, p.from));
  const top = knownOr(p.height, undersideAt(site, p.from));
  const dash = changeDash(p.exists);
  const holes = site.openings
    .filter((o) => o.on.wall === p.id && o.on.bottom < CUT_LOW_IN && (o.exists.after || dash === 'away'))
    .map((o) => alongWall(long, o.on, o.on.left, o.on.left + o.width));
  const on = enclosureOnFace(enclosure);
  const panel = alongWall(long, enclosure.on, on.left - AROUND_PANEL_IN, on.right + AROUND_PANEL_IN);
  const hangs = enclosure.on.wall === p.id && dash !== 'away';
  const piece = ([from, to]: Stretch, toZ: In): Shape => {
    const outline = partitionQuad({
      from: add(p.from, scale(along, from)),
      to: add(p.from, scale(along, to)),
      thickness: p.thickness,
    });
    const made = prism(outline, 0, toZ, {
      surface: 'wall',
      top: isKnown(p.thickness) ? 'wood' : 'not measured',
      stroke: stroke('object', dash === 'away' ? 'old' : 'ink', dash),
      topStroke: stroke(dash === null ? 'cut' : 'profile', dash === 'away' ? 'old' : 'ink', dash),
    });
    return dash === 'away' ? { ...made, faces: [] } : made;
  };
  const low = Math.min(CUT_LOW_IN, top);
  return joined([
    ...outside([0, long], hangs ? [...holes, panel] : holes).map((s) => piece(s, low)),
    ...(hangs ? outside([Math.max(0, panel[0]), Math.min(long, panel[1])], holes).map((s) => piece(s, top)) : []),
  ]);
};
