import { useEffect, useState } from 'react';
import type { BufferAttribute, LineSegments, Mesh } from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import type { ModelName } from '../drawings/solids';

/** A model as numbers in shares of its place: x to the right, y to the back, z up, 0 to 1. */
export interface Model {
  /** Three numbers a corner, three corners a triangle. */
  readonly skins: Readonly<
    Record<'flat' | 'round' | 'dark', { readonly points: number[]; readonly normals: number[] }>
  >;
  /** Two points a line. */
  readonly inks: Readonly<Record<'outline' | 'detail', number[]>>;
  readonly turned: { readonly points: number[]; readonly toward: number[]; readonly but: number[] };
}

const METERS = 0.0254;
const isSize = (v: unknown): v is { width: number; depth: number; height: number } =>
  typeof v === 'object' && v !== null && ['width', 'depth', 'height'].every((k) => Number((v as never)[k]) > 0);

/** glTF has meters, y up, front to +z, the middle of the footprint at the origin. */
const readModel = (root: { traverse: (f: (o: unknown) => void) => void }): Model => {
  const model: Model = {
    skins: {
      flat: { points: [], normals: [] },
      round: { points: [], normals: [] },
      dark: { points: [], normals: [] },
    },
    inks: { outline: [], detail: [] },
    turned: { points: [], toward: [], but: [] },
  };
  let size: { width: number; depth: number; height: number } | null = null;
  root.traverse((object) => {
    const extras = (object as Mesh).userData;
    if (isSize(extras)) size = extras;
  });
  if (size === null) throw new Error('A model does not say its size');
  const { width, depth, height } = size as { width: number; depth: number; height: number };
  const corners = (geometry: Mesh['geometry'], name: string, put: (x: number, y: number, z: number) => void) => {
    const list = geometry.getAttribute(name) as BufferAttribute;
    const index = geometry.getIndex();
    for (let i = 0; i < (index?.count ?? list.count); i++) {
      const at = index ? index.getX(i) : i;
      put(list.getX(at), list.getY(at), list.getZ(at));
    }
  };
  const points = (to: number[]) => (x: number, y: number, z: number) =>
    to.push(x / METERS / width + 0.5, 0.5 - z / METERS / depth, y / METERS / height);
  // a normal of the stretched model: divided by what a point is multiplied with
  const directions = (to: number[]) => (x: number, y: number, z: number) => to.push(x * width, -z * depth, y * height);
  root.traverse((object) => {
    const part = object as Mesh | LineSegments;
    const name = (part.material as { name?: string } | undefined)?.name;
    switch (name) {
      case 'flat':
      case 'round':
      case 'dark':
        corners(part.geometry, 'position', points(model.skins[name].points));
        corners(part.geometry, 'normal', directions(model.skins[name].normals));
        break;
      case 'outline':
      case 'detail':
        corners(part.geometry, 'position', points(model.inks[name]));
        break;
      case 'turned':
        corners(part.geometry, 'position', points(model.turned.points));
        corners(part.geometry, '_toward', directions(model.turned.toward));
        corners(part.geometry, '_but', directions(model.turned.but));
    }
  });
  return model;
};

const loading = new Map<ModelName, Promise<Model | null>>();
const load = (name: ModelName): Promise<Model | null> => {
  const known = loading.get(name);
  if (known) return known;
  const asked = new GLTFLoader()
    .loadAsync(new URL(`models/${name}.glb`, document.baseURI).href)
    .then(({ scene }) => readModel(scene))
    .catch((reason: unknown) => {
      console.warn(`The model of a ${name} could not be read; a block stands for it:`, reason);
      loading.delete(name); // asked for again when the view is opened again
      return null;
    });
  loading.set(name, asked);
  return asked;
};

export type Models = ReadonlyMap<ModelName, Model>;
const NONE: Models = new Map();

/** The models asked for, as far as they have come; until then, and where one cannot be read, a block stands for it. */
export const useModels = (names: readonly ModelName[]): Models => {
  const [models, setModels] = useState(NONE);
  const key = [...new Set(names)].sort().join(' ');
  useEffect(() => {
    let here = true;
    const wanted = key === '' ? [] : (key.split(' ') as ModelName[]);
    void Promise.all(wanted.map(async (name) => [name, await load(name)] as const)).then((all) => {
      if (here) setModels(new Map(all.flatMap(([name, model]) => (model ? [[name, model] as const] : []))));
    });
    return () => {
      here = false;
    };
  }, [key]);
  return models;
};
