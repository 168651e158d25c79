import { BufferAttribute, InstancedBufferAttribute, InstancedBufferGeometry } from 'three';
import type { Stroke } from '../drawings/items';
import type { Edge } from '../drawings/solids';
import type { Pt3 } from '../units/types';
import { DASH_NAMES } from './lineMaterial';
import { inkNumber, weightNumber } from './tones';

const ALWAYS: readonly number[] = [0, 0, 0];

/** Gathers edges into one instanced geometry: a quad a line, its width set on the screen. */
export class LineBuffer {
  readonly #from: number[] = [];
  readonly #to: number[] = [];
  readonly #toward: number[] = [];
  readonly #but: number[] = [];
  readonly #anchor: number[] = [];
  readonly #pen: number[] = [];

  get count(): number {
    return this.#pen.length / 4;
  }
  line(from: Pt3, to: Pt3, stroke: Stroke, when: Edge['when'] = null, fine = 0): void {
    this.#from.push(...from);
    this.#to.push(...to);
    this.#toward.push(...(when?.toward ?? ALWAYS));
    this.#but.push(...(when?.but ?? ALWAYS));
    this.#anchor.push(...(when?.at ?? ALWAYS));
    this.#pen.push(inkNumber(stroke.tone), weightNumber(stroke.weight), DASH_NAMES.indexOf(stroke.dash), fine);
  }
  edge({ from, to, stroke, when, fine }: Edge): void {
    this.line(from, to, stroke, when, fine);
  }
  build(): InstancedBufferGeometry {
    const geometry = new InstancedBufferGeometry();
    geometry.setAttribute(
      'position',
      new BufferAttribute(Float32Array.from([0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0]), 3),
    );
    geometry.setIndex([0, 1, 2, 0, 2, 3]);
    const set = (name: string, list: readonly number[], size: number) =>
      geometry.setAttribute(name, new InstancedBufferAttribute(Float32Array.from(list), size));
    set('from', this.#from, 3);
    set('to', this.#to, 3);
    set('toward', this.#toward, 3);
    set('but', this.#but, 3);
    set('anchor', this.#anchor, 3);
    set('pen', this.#pen, 4);
    geometry.instanceCount = this.count;
    return geometry;
  }
}
