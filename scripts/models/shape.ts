/** Models are put together here in inches, seen from the front: x right, y to the back, z up, from the lower left front corner. */
export type Vec = readonly [number, number, number];
export type Axis = 'x' | 'y' | 'z';
/** flat: toned by where it looks · round: one tone all round · dark: glass, openings. */
export type Skin = 'flat' | 'round' | 'dark';
export type Ink = 'outline' | 'detail';

export interface Triangles {
  readonly points: number[];
  readonly normals: number[];
  readonly corners: number[];
}
/** Lines shown only where the skin turns away from the eye: two normals each. */
export interface Turned {
  readonly points: number[];
  readonly toward: number[];
  readonly but: number[];
}

const ROUND = 24;

export class Shape {
  readonly skins: Record<Skin, Triangles> = { flat: empty(), round: empty(), dark: empty() };
  readonly inks: Record<Ink, number[]> = { outline: [], detail: [] };
  readonly turned: Turned = { points: [], toward: [], but: [] };

  /** A convex plane polygon, counter-clockwise from outside; with its own normal for each corner where it is bent. */
  polygon(skin: Skin, points: readonly Vec[], normals?: readonly Vec[]): this {
    const to = this.skins[skin];
    const first = to.points.length / 3;
    const plane = normalOf(points);
    points.forEach((p, i) => {
      to.points.push(...p);
      to.normals.push(...(normals?.[i] ?? plane));
    });
    for (let i = 2; i < points.length; i++) to.corners.push(first, first + i - 1, first + i);
    return this;
  }

  line(ink: Ink, ...points: readonly Vec[]): this {
    for (let i = 1; i < points.length; i++) this.inks[ink].push(...points[i - 1]!, ...points[i]!);
    return this;
  }
  ring(ink: Ink, points: readonly Vec[]): this {
    return this.line(ink, ...points, points[0]!);
  }

  box([x0, y0, z0]: Vec, [x1, y1, z1]: Vec, ink: Ink = 'outline'): this {
    const p = (x: number, y: number, z: number): Vec => [x ? x1 : x0, y ? y1 : y0, z ? z1 : z0];
    const low = [p(0, 0, 0), p(1, 0, 0), p(1, 1, 0), p(0, 1, 0)];
    const high = [p(0, 0, 1), p(1, 0, 1), p(1, 1, 1), p(0, 1, 1)];
    this.polygon('flat', high)
      .polygon('flat', [...low].reverse())
      .ring(ink, low)
      .ring(ink, high);
    low.forEach((a, i) => {
      const k = (i + 1) % 4;
      this.polygon('flat', [a, low[k]!, high[k]!, high[i]!]).line(ink, a, high[i]!);
    });
    return this;
  }

  /** A rectangle drawn on a plane that looks to the front, a hair before it. */
  frame(ink: Ink, [x0, z0]: readonly [number, number], [x1, z1]: readonly [number, number], y: number): this {
    return this.ring(ink, onFront(x0, z0, x1, z1, y - 0.05));
  }
  /** Glass or an opening in a plane that looks to the front. */
  pane([x0, z0]: readonly [number, number], [x1, z1]: readonly [number, number], y: number): this {
    return this.polygon('dark', onFront(x0, z0, x1, z1, y - 0.1)).frame('detail', [x0, z0], [x1, z1], y - 0.1);
  }

  circle(ink: Ink, axis: Axis, middle: Vec, radius: number): this {
    return this.ring(ink, around(axis, middle, radius));
  }
  disk(skin: Skin, axis: Axis, middle: Vec, radius: number, looks: 1 | -1): this {
    const ring = around(axis, middle, radius);
    return this.polygon(skin, looks > 0 ? ring : [...ring].reverse());
  }

  /** Something turned about an axis: radius and height pairs from one end to the other. */
  turnedAbout(axis: Axis, middle: Vec, profile: readonly (readonly [radius: number, along: number])[], ink: Ink): this {
    const [first, last] = [profile[0]!, profile.at(-1)!];
    const at = (along: number): Vec => shift(axis, middle, along);
    profile.slice(1).forEach(([r1, h1], i) => {
      const [r0, h0] = profile[i]!;
      this.#skin(around(axis, at(h0), r0), around(axis, at(h1), r1));
    });
    if (first[0] > 0) this.disk('flat', axis, at(first[1]), first[0], -1).circle(ink, axis, at(first[1]), first[0]);
    if (last[0] > 0) this.disk('flat', axis, at(last[1]), last[0], 1).circle(ink, axis, at(last[1]), last[0]);
    return this;
  }
  cylinder(axis: Axis, middle: Vec, radius: number, long: number, ink: Ink = 'outline'): this {
    return this.turnedAbout(
      axis,
      middle,
      [
        [radius, 0],
        [radius, long],
      ],
      ink,
    );
  }

  #skin(a: readonly Vec[], b: readonly Vec[]): void {
    const quads = a.map((p, i): Vec[] => {
      const k = (i + 1) % a.length;
      return [p, a[k]!, b[k]!, b[i]!].filter((q, n, all) => n === 0 || far(q, all[n - 1]!) > 1e-9);
    });
    const normals = quads.map(normalOf);
    quads.forEach((quad, i) => {
      this.polygon('round', quad);
      if (far(a[i]!, b[i]!) < 1e-9) return;
      this.turned.points.push(...a[i]!, ...b[i]!);
      const before = normals[(i + normals.length - 1) % normals.length]!;
      this.turned.toward.push(...normals[i]!, ...normals[i]!);
      this.turned.but.push(...before, ...before);
    });
  }
}

const empty = (): Triangles => ({ points: [], normals: [], corners: [] });
const far = (a: Vec, b: Vec): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const onFront = (x0: number, z0: number, x1: number, z1: number, y: number): Vec[] => [
  [x0, y, z0],
  [x1, y, z0],
  [x1, y, z1],
  [x0, y, z1],
];
const shift = (axis: Axis, [x, y, z]: Vec, by: number): Vec =>
  axis === 'x' ? [x + by, y, z] : axis === 'y' ? [x, y + by, z] : [x, y, z + by];

/** Counter-clockwise for whoever looks against the axis. */
const around = (axis: Axis, [x, y, z]: Vec, radius: number): Vec[] =>
  Array.from({ length: ROUND }, (_, k) => {
    const turn = (2 * Math.PI * (k + 0.5)) / ROUND;
    const [c, s] = [Math.cos(turn) * radius, Math.sin(turn) * radius];
    return axis === 'x' ? [x, y + c, z + s] : axis === 'y' ? [x + s, y, z + c] : [x + c, y + s, z];
  });

const normalOf = (points: readonly Vec[]): Vec => {
  const [a, b, c] = points as [Vec, Vec, Vec];
  const [u, v] = [
    [b[0] - a[0], b[1] - a[1], b[2] - a[2]],
    [c[0] - a[0], c[1] - a[1], c[2] - a[2]],
  ] as const;
  const n = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!] as const;
  const long = Math.hypot(...n) || 1;
  return [n[0] / long, n[1] / long, n[2] / long];
};
