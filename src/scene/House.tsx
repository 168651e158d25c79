import { useEffect, useMemo } from 'react';
import { type BufferGeometry, Matrix4, type ShaderMaterial } from 'three';
import { pointIn } from '../drawings/solidShapes';
import type { Body, Place, Solid, SolidHouse } from '../drawings/solids';
import type { Id } from '../units/types';
import { bodyEdges, bodyFaces } from './bodyGeometry';
import { FaceBuffer, type Part } from './faceGeometry';
import { makeFaceMaterial } from './faceMaterial';
import { LineBuffer } from './lineGeometry';
import { makeLineMaterial } from './lineMaterial';
import { type Models, useModels } from './models';
import { selectedSolid } from './selection';
import { METERS_PER_INCH, type Shared } from './shared';
import { buildTubes } from './tubeGeometry';
import { makeTubeMaterial } from './tubeMaterial';

/** The house in its own inches, z up, set into the scene's meters, y up. */
const HOUSE = new Matrix4()
  .makeScale(METERS_PER_INCH, METERS_PER_INCH, METERS_PER_INCH)
  .multiply(new Matrix4().set(1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 0, 0, 1));
/** A place as a matrix: the unit cube goes to it. */
const matrixOf = ({ corner: c, right: r, size: s }: Place): Matrix4 =>
  new Matrix4().set(
    ...([r[0] * s.width, -r[1] * s.depth, 0, c[0]] as const),
    ...([r[1] * s.width, r[0] * s.depth, 0, c[1]] as const),
    ...([0, 0, s.height, c[2]] as const),
    ...([0, 0, 0, 1] as const),
  );

const HUNG: readonly Solid['kind'][] = ['box', 'new panel', 'old panel'];
const ROOM: readonly Solid['kind'][] = ['floor', 'wall', 'partition', 'joists'];
const THINGS: readonly Solid['kind'][] = ['thing', 'board'];

const useDisposed = <T extends { dispose: () => void }>(made: T): T => {
  useEffect(() => () => made.dispose(), [made]);
  return made;
};

/** Named empties under a merged mesh: who owns which of its corners. */
const Owners = ({ parts }: { readonly parts: readonly Part[] }) =>
  parts.map(({ id, start, count }) => <object3D key={start} name={id} userData={{ start, count }} />);

interface FacesProps {
  readonly name: string;
  readonly solids: readonly Solid[];
  readonly models: Models;
  readonly material: ShaderMaterial;
  readonly order?: number;
}
const Faces = ({ name, solids, models, material, order = 0 }: FacesProps) => {
  const { geometry, parts } = useMemo(() => {
    const buffer = new FaceBuffer();
    for (const { id, faces, body } of solids)
      buffer.part(id, () => {
        for (const face of faces) buffer.face(face);
        if (body) bodyFaces(body, models.get(body.model), buffer, (x, y, z) => pointIn(body.place, x, y, z));
      });
    return { geometry: buffer.build(), parts: buffer.parts };
  }, [solids, models]);
  useDisposed(geometry);
  if (parts.length === 0) return null;
  return (
    <mesh
      name={name}
      geometry={geometry}
      material={material}
      frustumCulled={false}
      renderOrder={order}
      userData={{ parts }}
    >
      <Owners parts={parts} />
    </mesh>
  );
};

/** A panel or a box: a mesh of its own, placed by its matrix. */
const Hung = ({
  id,
  body,
  models,
  material,
}: {
  readonly id: Id;
  readonly body: Body;
  readonly models: Models;
  readonly material: ShaderMaterial;
}) => {
  const model = models.get(body.model);
  const geometry = useMemo(() => {
    const buffer = new FaceBuffer();
    bodyFaces(body, model, buffer, (x, y, z) => [x, y, z]);
    return buffer.build();
  }, [body, model]);
  useDisposed<BufferGeometry>(geometry);
  const matrix = useMemo(() => matrixOf(body.place), [body.place]);
  return (
    <mesh
      name={id}
      geometry={geometry}
      material={material}
      matrix={matrix}
      matrixAutoUpdate={false}
      frustumCulled={false}
    />
  );
};

const Edges = ({ name, solids, models, material, order = 1 }: FacesProps) => {
  const geometry = useMemo(() => {
    const buffer = new LineBuffer();
    for (const { edges, body } of solids) {
      for (const edge of edges) buffer.edge(edge);
      if (body) bodyEdges(body, models.get(body.model), buffer);
    }
    return buffer.build();
  }, [solids, models]);
  useDisposed(geometry);
  if (geometry.instanceCount === 0) return null;
  return <mesh name={name} geometry={geometry} material={material} frustumCulled={false} renderOrder={order} />;
};

const Cables = ({
  house,
  singled,
  coarse,
  material,
}: {
  readonly house: SolidHouse;
  readonly singled: Id | null;
  readonly coarse: boolean;
  readonly material: ShaderMaterial;
}) => {
  const { geometry, parts } = useMemo(
    () => buildTubes(house.cables, singled, coarse ? { sides: 5, steps: 3 } : { sides: 8, steps: 6 }),
    [house.cables, singled, coarse],
  );
  useDisposed(geometry);
  if (parts.length === 0) return null;
  return (
    <mesh name="cables" geometry={geometry} material={material} frustumCulled={false} userData={{ parts }}>
      <Owners parts={parts} />
    </mesh>
  );
};

interface Props {
  readonly house: SolidHouse;
  readonly selected: Id | null;
  readonly coarse: boolean;
  readonly shared: Shared;
}
/** Everything solid. Room and things are one mesh each; what the plan hangs has a mesh of its own, by its id. */
export const House = ({ house, selected, coarse, shared }: Props) => {
  const { solids } = house;
  const models = useModels(solids.flatMap((s) => (s.body ? [s.body.model] : [])));
  const materials = useMemo(
    () => ({
      faces: makeFaceMaterial(shared),
      hung: makeFaceMaterial(shared, 1, -1),
      faint: makeFaceMaterial(shared, 0.42, 0),
      lines: makeLineMaterial(shared),
      halo: makeLineMaterial(shared, 5),
      tubes: makeTubeMaterial(shared),
    }),
    [shared],
  );
  useEffect(
    () => () => {
      for (const material of Object.values(materials)) material.dispose();
    },
    [materials],
  );
  const groups = useMemo(() => {
    const solidOf = (kinds: readonly Solid['kind'][]) => solids.filter((s) => kinds.includes(s.kind));
    const things = solidOf(THINGS);
    return {
      room: solidOf(ROOM),
      things: things.filter((s) => !s.body?.faint),
      faint: things.filter((s) => s.body?.faint),
      spaces: solidOf(['space']),
      intrusions: solidOf(['intrusion']),
      hung: solidOf(HUNG),
      work: solids.filter((s) => !ROOM.includes(s.kind)),
    };
  }, [solids]);
  const single = useMemo(() => selectedSolid(solids, selected), [solids, selected]);
  const { faces, hung, faint, lines, halo, tubes } = materials;
  return (
    <group name="house" matrix={HOUSE} matrixAutoUpdate={false}>
      <Faces name="room" solids={groups.room} models={models} material={faces} />
      <Faces name="things" solids={groups.things} models={models} material={faces} />
      <Faces name="in the way" solids={groups.intrusions} models={models} material={faces} />
      {groups.hung.map((s) =>
        s.body ? (
          <Hung key={s.id} id={s.id} body={s.body} models={models} material={s.body.faint ? faint : hung} />
        ) : null,
      )}
      <Cables house={house} singled={selected} coarse={coarse} material={tubes} />
      <Edges name="room edges" solids={groups.room} models={models} material={lines} />
      <Edges name="edges" solids={groups.work} models={models} material={lines} />
      <Faces name="seen through" solids={groups.faint} models={models} material={faint} order={2} />
      <Faces name="kept clear" solids={groups.spaces} models={models} material={faint} order={3} />
      {single && (
        <>
          <Edges name="selected halo" solids={single.halo} models={models} material={halo} order={4} />
          <Edges name="selected" solids={single.ink} models={models} material={lines} order={5} />
        </>
      )}
    </group>
  );
};
