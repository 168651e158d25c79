import { BufferAttribute, BufferGeometry } from 'three';
import type { SolidCable } from '../drawings/solids';
import { isKnown, type Pt3 } from '../units/types';
import { bend } from './bends';
import type { Part } from './faceGeometry';
import { inkNumber } from './tones';

/** Outside of a cable nobody measured. Common practice, no source. */
const SOME_CABLE_IN = 0.4;
/** A cable is bent no tighter than this many of its diameters on the way (334.24: five). */
const BEND_IN_DIAMETERS = 5;

interface Pen {
  readonly ink: number;
  /** Least width on the screen, px. */
  readonly least: number;
  /** Paper in the middle: share of how squarely a place looks at the eye. */
  readonly core: number;
  readonly dashed: boolean;
  readonly radius: number;
}
/** Widths of the drawings: old .9, new 2.1, feeder 4.2 with paper in it. */
const penOf = (cable: SolidCable, singled: boolean): Pen => {
  const diameter = isKnown(cable.diameter) ? cable.diameter : SOME_CABLE_IN;
  const pen = { core: 0, dashed: cable.laid === 'away', radius: diameter / 2 };
  const old = cable.laid === 'stays' || cable.laid === 'away';
  if (singled) return { ...pen, ink: inkNumber('ink'), least: 2.8, radius: pen.radius * 1.05 };
  if (cable.what === 'sleeve') return { ...pen, ink: inkNumber('ink-2'), least: 3, core: 0.55 };
  if (cable.what === 'feeder')
    return old
      ? {
          ...pen,
          ink: inkNumber('old'),
          least: cable.laid === 'away' ? 1 : 2.4,
          core: cable.laid === 'away' ? 0 : 0.75,
        }
      : { ...pen, ink: inkNumber('new'), least: 4.2, core: 0.75 };
  if (cable.what === 'row') return { ...pen, ink: inkNumber('new'), least: 2.6 };
  return { ...pen, ink: inkNumber(old ? 'old' : 'new'), least: old ? 1 : 2.1 };
};

interface Fineness {
  readonly sides: number;
  readonly steps: number;
}
const normal = (p: Pt3): Pt3 => {
  const l = Math.hypot(...p) || 1;
  return [p[0] / l, p[1] / l, p[2] / l];
};
const cross = (a: Pt3, b: Pt3): Pt3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

class TubeBuffer {
  readonly #position: number[] = [];
  readonly #core: number[] = [];
  readonly #lay: number[] = [];
  readonly #along: number[] = [];
  readonly #index: number[] = [];
  readonly parts: Part[] = [];

  /** Straight pieces and arcs strung together; each ring stands square to the way through it. */
  tube(id: string, course: readonly Pt3[], pen: Pen, sides: number): void {
    const start = this.#along.length;
    let far = 0;
    let up: Pt3 | null = null;
    course.forEach((p, i) => {
      const [before, after] = [course[i - 1] ?? p, course[i + 1] ?? p];
      if (i > 0) far += Math.hypot(p[0] - before[0], p[1] - before[1], p[2] - before[2]);
      const way = normal([after[0] - before[0], after[1] - before[1], after[2] - before[2]]);
      // carried on from ring to ring, so that the tube does not twist
      const hint: Pt3 = up ?? (Math.abs(way[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]);
      const side = normal(cross(way, hint));
      up = cross(side, way);
      const ring = this.#along.length;
      for (let k = 0; k < sides; k++) {
        const t = (2 * Math.PI * k) / sides;
        const [c, s] = [Math.cos(t) * pen.radius, Math.sin(t) * pen.radius];
        this.#position.push(
          p[0] + side[0] * c + up[0] * s,
          p[1] + side[1] * c + up[1] * s,
          p[2] + side[2] * c + up[2] * s,
        );
        this.#core.push(...p);
        this.#lay.push(pen.ink, pen.least, pen.core, pen.dashed ? 1 : 0);
        this.#along.push(far);
        if (i === 0) continue;
        const next = (k + 1) % sides;
        const [a, b] = [ring - sides + k, ring - sides + next];
        this.#index.push(a, b, ring + k, b, ring + next, ring + k);
      }
    });
    this.parts.push({ id, start, count: this.#along.length - start });
  }
  build(): BufferGeometry {
    const geometry = new BufferGeometry();
    const set = (name: string, list: readonly number[], size: number) =>
      geometry.setAttribute(name, new BufferAttribute(Float32Array.from(list), size));
    set('position', this.#position, 3);
    set('core', this.#core, 3);
    set('lay', this.#lay, 4);
    set('along', this.#along, 1);
    geometry.setIndex(this.#index);
    return geometry;
  }
}

/** Name of a cable's tube in the scene. */
export const tubeName = (cable: SolidCable): string => `${cable.id} ${cable.laid}`;

/** All cables in one geometry; `parts` say which corners are whose, rings of `sides` corners from one end to the other. */
export const buildTubes = (
  cables: readonly SolidCable[],
  singled: string | null,
  { sides, steps }: Fineness,
): { readonly geometry: BufferGeometry; readonly parts: readonly Part[] } => {
  const buffer = new TubeBuffer();
  for (const cable of cables) {
    const pen = penOf(cable, cable.id === singled);
    buffer.tube(tubeName(cable), bend(cable.course, 2 * pen.radius * BEND_IN_DIAMETERS, steps), pen, sides);
  }
  return { geometry: buffer.build(), parts: buffer.parts };
};
