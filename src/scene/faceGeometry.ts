import { BufferAttribute, BufferGeometry, ShapeUtils, Vector2 } from 'three';
import type { Face, Side, Surface, When } from '../drawings/solids';
import type { Id, Pt3 } from '../units/types';
import { faceTone } from './tones';

/** Which corners of a merged geometry belong to one thing of the job or the plan. */
export interface Part {
  readonly id: Id;
  readonly start: number;
  readonly count: number;
}

const ALWAYS: readonly number[] = [0, 0, 0];

/** Gathers faces into one geometry, drawn in one go. */
export class FaceBuffer {
  readonly #position: number[] = [];
  readonly #tone: number[] = [];
  readonly #toward: number[] = [];
  readonly #but: number[] = [];
  readonly #anchor: number[] = [];
  readonly parts: Part[] = [];

  triangle(corners: readonly Pt3[], surface: Surface, side: Side, when: When | null): void {
    for (const p of corners) {
      this.#position.push(...p);
      this.#tone.push(faceTone(surface, side));
      this.#toward.push(...(when?.toward ?? ALWAYS));
      this.#but.push(...(when?.but ?? ALWAYS));
      this.#anchor.push(...(when?.at ?? ALWAYS));
    }
  }
  face({ points, surface, side, when }: Face): void {
    if (surface === 'floor') {
      const flat = points.map((p) => new Vector2(p[0], p[1]));
      for (const corners of ShapeUtils.triangulateShape(flat, []))
        this.triangle(
          corners.map((i) => points[i]!),
          surface,
          side,
          when,
        );
      return;
    }
    for (let i = 2; i < points.length; i++)
      this.triangle([points[0]!, points[i - 1]!, points[i]!], surface, side, when);
  }
  /** Everything added by `fill` is the part of `id`. */
  part(id: Id, fill: () => void): void {
    const start = this.#tone.length;
    fill();
    if (this.#tone.length > start) this.parts.push({ id, start, count: this.#tone.length - start });
  }
  build(): BufferGeometry {
    const geometry = new BufferGeometry();
    const set = (name: string, list: readonly number[], size: number) =>
      geometry.setAttribute(name, new BufferAttribute(Float32Array.from(list), size));
    set('position', this.#position, 3);
    set('tone', this.#tone, 1);
    set('toward', this.#toward, 3);
    set('but', this.#but, 3);
    set('anchor', this.#anchor, 3);
    return geometry;
  }
}
