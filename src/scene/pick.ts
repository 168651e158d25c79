import { type Intersection, type Mesh, Raycaster, type Scene, Vector2, type Vector3 } from 'three';
import type { SolidHouse, SolidKind } from '../drawings/solids';
import { solidFloor, solidWalls } from '../drawings/solidWalls';
import type { Site } from '../job/schema';
import type { Id, Pt, Pt3 } from '../units/types';
import type { Part } from './faceGeometry';
import type { Project } from './lettering';
import type { SceneCamera } from './view';

/** What was pointed at: a thing of the job or of the plan. */
export interface Picked {
  readonly kind: 'home run' | 'feeder' | 'row' | Extract<SolidKind, 'thing' | 'old panel' | 'new panel' | 'box'>;
  readonly id: Id;
}

/** Cables this much farther off than the nearest one run with it, px. */
const TOGETHER_PX = 0.75;

const off = (p: Pt, a: Pt, b: Pt): number => {
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * x + (p[1] - a[1]) * y) / (x * x + y * y || 1)));
  return Math.hypot(p[0] - a[0] - x * t, p[1] - a[1] - y * t);
};
/** The cable nearest to a point; of those that lie over each other the next one after the one that is singled out. */
const nearestCable = (
  { cables }: SolidHouse,
  at: Pt,
  project: Project,
  within: number,
  after: Id | null,
): Picked | null => {
  const close = new Map<Id, { readonly far: number; readonly picked: Picked }>();
  for (const { id, what, laid, course } of cables) {
    if (what === 'sleeve' || what === 'row') continue;
    const points = course.map(project);
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1], points[i]];
      if (!a || !b) continue;
      // where old and new run together the new one is meant
      const far = off(at, a, b) + (laid === 'new' || laid === 'drawn back' ? 0 : 1);
      if (far <= within && far < (close.get(id)?.far ?? Number.POSITIVE_INFINITY))
        close.set(id, { far, picked: { kind: what, id } });
    }
  }
  const nearest = Math.min(...[...close.values()].map((c) => c.far));
  const together = [...close.values()].filter((c) => c.far < nearest + TOGETHER_PX).map((c) => c.picked);
  return together[(together.findIndex((p) => p.id === after) + 1) % together.length] ?? null;
};

/** What hangs over the room is only there while it is looked at from below. */
const isShown = ({ object, faceIndex }: Intersection, look: Vector3): boolean => {
  const toward = (object as Mesh).geometry.getAttribute('toward');
  const i = (faceIndex ?? 0) * 3;
  const [x, y, z] = [toward.getX(i), toward.getY(i), toward.getZ(i)];
  return (x === 0 && y === 0 && z === 0) || x * look.x - y * look.z + z * look.y < 0;
};

const isPart = (part: unknown): part is Part => typeof part === 'object' && part !== null && 'start' in part;

/** The thing under a point of the picture, px of the page: boxes and panels first, then cables close by, then things. */
export const pickAt = (
  at: Pt,
  {
    scene,
    camera,
    house,
    project,
    size,
    within,
    after,
  }: {
    readonly scene: Scene;
    readonly camera: SceneCamera;
    readonly house: SolidHouse;
    readonly project: Project;
    readonly size: { readonly width: number; readonly height: number };
    /** How far a cable may be, px. */
    readonly within: number;
    /** What is selected now. */
    readonly after: Id | null;
  },
): Picked | null => {
  const ray = new Raycaster();
  ray.setFromCamera(new Vector2((at[0] / size.width) * 2 - 1, 1 - (at[1] / size.height) * 2), camera);
  const kinds = new Map(house.solids.map((s) => [s.id, s.kind] as const));
  const hung: Mesh[] = [];
  for (const [id, kind] of kinds)
    if (kind === 'box' || kind === 'new panel' || kind === 'old panel') {
      const mesh = scene.getObjectByName(id);
      if (mesh) hung.push(mesh as Mesh);
    }
  const first = ray.intersectObjects(hung, false)[0];
  const named = first && kinds.get(first.object.name);
  if (first && named) return { kind: named as Picked['kind'], id: first.object.name };
  const cable = nearestCable(house, at, project, within, after);
  if (cable) return cable;
  const things = ['things', 'seen through'].flatMap((name) => scene.getObjectByName(name) ?? []);
  const hit = ray.intersectObjects(things, false).find((h) => isShown(h, ray.ray.direction));
  const corner = (hit?.faceIndex ?? -1) * 3;
  const parts: unknown[] = hit?.object.userData.parts ?? [];
  const part = parts.filter(isPart).find((p) => corner >= p.start && corner < p.start + p.count);
  return part && kinds.get(part.id) === 'thing' ? { kind: 'thing', id: part.id } : null;
};

/** Corners of what should be in the picture. */
export const extentOf = (site: Site): Pt3[] =>
  [solidFloor(site), ...solidWalls(site)].flatMap((s) => s.faces.flatMap((f) => [...f.points]));
