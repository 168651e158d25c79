import type { Kind } from './kinds';
import type { Ink, Skin, Turned, Vec } from './shape';

/**
 * Binary glTF 2.0 (Khronos): meters, y up, front toward +z, the middle of the footprint at the origin. One mesh whose
 * primitives are told apart by the names of their materials: skins in triangles, inks in lines.
 */
const METERS = 0.0254; // exact: international yard and pound agreement, 1959
const GLB = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BINARY_CHUNK = 0x004e4942;
const FLOAT = 5126;
const UNSIGNED_SHORT = 5123;
const VERTICES = 34962;
const INDICES = 34963;
const LINES = 1;
const TRIANGLES = 4;

type MaterialName = Skin | Ink | 'turned';
/** Seen in other viewers only; the 3-D view has tones of its own. */
const TONES: Readonly<Record<MaterialName, number>> = {
  flat: 0.92,
  round: 0.84,
  dark: 0.45,
  outline: 0.1,
  detail: 0.3,
  turned: 0.1,
};

interface Accessor {
  readonly bufferView: number;
  readonly componentType: number;
  readonly count: number;
  readonly type: 'VEC3' | 'SCALAR';
  readonly min?: readonly number[];
  readonly max?: readonly number[];
}

class Buffers {
  readonly views: { buffer: 0; byteOffset: number; byteLength: number; target: number }[] = [];
  readonly accessors: Accessor[] = [];
  readonly #parts: Uint8Array[] = [];
  #bytes = 0;

  #view(data: Float32Array | Uint16Array, target: number): number {
    const bytes = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
    this.views.push({ buffer: 0, byteOffset: this.#bytes, byteLength: bytes.length, target });
    const padded = new Uint8Array(Math.ceil(bytes.length / 4) * 4);
    padded.set(bytes);
    this.#parts.push(padded);
    this.#bytes += padded.length;
    return this.views.length - 1;
  }
  vectors(data: Float32Array, bounded: boolean): number {
    const axis = (k: number) => Array.from({ length: data.length / 3 }, (_, i) => data[i * 3 + k]!);
    const of = (pick: (list: number[]) => number) => [0, 1, 2].map((k) => pick(axis(k)));
    this.accessors.push({
      bufferView: this.#view(data, VERTICES),
      componentType: FLOAT,
      count: data.length / 3,
      type: 'VEC3',
      ...(bounded ? { min: of((l) => Math.min(...l)), max: of((l) => Math.max(...l)) } : {}),
    });
    return this.accessors.length - 1;
  }
  indices(data: readonly number[]): number {
    this.accessors.push({
      bufferView: this.#view(Uint16Array.from(data), INDICES),
      componentType: UNSIGNED_SHORT,
      count: data.length,
      type: 'SCALAR',
    });
    return this.accessors.length - 1;
  }
  binary(): Uint8Array {
    const all = new Uint8Array(this.#bytes);
    let at = 0;
    for (const part of this.#parts) {
      all.set(part, at);
      at += part.length;
    }
    return all;
  }
}

const each = (list: readonly number[], change: (v: Vec) => Vec): Float32Array =>
  Float32Array.from(
    Array.from({ length: list.length / 3 }, (_, i) =>
      change([list[i * 3]!, list[i * 3 + 1]!, list[i * 3 + 2]!]),
    ).flat(),
  );

export interface Built {
  readonly bytes: Uint8Array;
  readonly triangles: number;
  readonly lines: number;
}

export const buildGlb = (kind: Kind): Built => {
  const shape = kind.build();
  const { width, depth } = kind.size;
  const point = ([x, y, z]: Vec): Vec => [(x - width / 2) * METERS, z * METERS, (depth / 2 - y) * METERS];
  const direction = ([x, y, z]: Vec): Vec => [x, z, -y + 0];
  const buffers = new Buffers();
  const primitives: object[] = [];
  const used: MaterialName[] = [];
  const material = (name: MaterialName) => used.push(name) - 1;

  for (const skin of ['flat', 'round', 'dark'] as const) {
    const { points, normals, corners } = shape.skins[skin];
    if (corners.length === 0) continue;
    primitives.push({
      attributes: {
        POSITION: buffers.vectors(each(points, point), true),
        NORMAL: buffers.vectors(each(normals, direction), false),
      },
      indices: buffers.indices(corners),
      material: material(skin),
      mode: TRIANGLES,
    });
  }
  for (const ink of ['outline', 'detail'] as const)
    if (shape.inks[ink].length > 0)
      primitives.push({
        attributes: { POSITION: buffers.vectors(each(shape.inks[ink], point), true) },
        material: material(ink),
        mode: LINES,
      });
  const { turned }: { turned: Turned } = shape;
  if (turned.points.length > 0)
    primitives.push({
      attributes: {
        POSITION: buffers.vectors(each(turned.points, point), true),
        _TOWARD: buffers.vectors(each(turned.toward, direction), false),
        _BUT: buffers.vectors(each(turned.but, direction), false),
      },
      material: material('turned'),
      mode: LINES,
    });

  const binary = buffers.binary();
  const json = {
    asset: { version: '2.0', generator: 'backboard models' },
    extensionsUsed: ['KHR_materials_unlit'],
    scene: 0,
    scenes: [{ nodes: [0] }],
    // the scene fits a model into a place by its nominal size, in inches
    nodes: [{ mesh: 0, name: kind.name, extras: kind.size }],
    meshes: [{ name: kind.name, primitives }],
    materials: used.map((name) => ({
      name,
      pbrMetallicRoughness: {
        baseColorFactor: [TONES[name], TONES[name], TONES[name], 1],
        metallicFactor: 0,
        roughnessFactor: 1,
      },
      extensions: { KHR_materials_unlit: {} },
    })),
    accessors: buffers.accessors,
    bufferViews: buffers.views,
    buffers: [{ byteLength: binary.length }],
  };
  const count = (list: readonly { corners: readonly number[] }[]) => list.reduce((n, s) => n + s.corners.length / 3, 0);
  return {
    bytes: pack(JSON.stringify(json), binary),
    triangles: count(Object.values(shape.skins)),
    lines: (shape.inks.outline.length + shape.inks.detail.length + turned.points.length) / 6,
  };
};

const pack = (json: string, binary: Uint8Array): Uint8Array => {
  const text = new TextEncoder().encode(json.padEnd(Math.ceil(json.length / 4) * 4, ' '));
  const whole = 12 + 8 + text.length + 8 + binary.length;
  const out = new Uint8Array(whole);
  const view = new DataView(out.buffer);
  [GLB, 2, whole, text.length, JSON_CHUNK].forEach((word, i) => {
    view.setUint32(i * 4, word, true);
  });
  out.set(text, 20);
  view.setUint32(20 + text.length, binary.length, true);
  view.setUint32(24 + text.length, BINARY_CHUNK, true);
  out.set(binary, 28 + text.length);
  return out;
};
