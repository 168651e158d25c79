import { OrthographicCamera, PerspectiveCamera, Vector3, type Vector4 } from 'three';
import type { In, Pt, Pt3 } from '../units/types';
import { METERS_PER_INCH } from './shared';

/** Where the eye is and what it sees; house coordinates in inches, the scene's own in meters with y up. */

export type SceneCamera = OrthographicCamera | PerspectiveCamera;

export const toScene = ([x, y, z]: Pt3): Vector3 => new Vector3(x, z, -y).multiplyScalar(METERS_PER_INCH);
export const toHouse = (v: Vector3): Pt3 => [v.x / METERS_PER_INCH, -v.z / METERS_PER_INCH, v.y / METERS_PER_INCH];

/** Height of the eye above level when the room is looked at from outside: that of an isometric drawing, degrees. */
export const ELEVATION = 35.264; // arctan(1/√2)
/** Eye of a standing person, in. Common practice, no source. */
export const EYE_HEIGHT_IN = 64;
const NEAR_WALL_IN = 14;
const FARTHEST_IN = 132;
/** Half the depth of what a view without perspective can hold, m: more than the largest job. */
const DEEP_M = 700;

const rad = (degrees: number): number => (degrees * Math.PI) / 180;

/** Unit direction to the eye: bearing clockwise from the top of the sheet, elevation above level, degrees. */
export const directionOf = (bearing: number, elevation: number): Pt3 => [
  Math.sin(rad(bearing)) * Math.cos(rad(elevation)),
  Math.cos(rad(bearing)) * Math.cos(rad(elevation)),
  Math.sin(rad(elevation)),
];
export const bearingOf = ([x, y]: readonly [In, In, ...unknown[]]): number =>
  ((Math.atan2(x, y) * 180) / Math.PI + 360) % 360;

/** Corner from which the front of the new panel is seen best; from the south-west where two are as good. */
export const startBearing = (into: Pt | null): number => {
  const corners = [225, 135, 315, 45];
  if (!into) return corners[0]!;
  const seen = (b: number) => Math.sin(rad(b)) * into[0] + Math.cos(rad(b)) * into[1];
  return corners.reduce((best, b) => (seen(b) > seen(best) + 1e-6 ? b : best));
};

export interface Margin {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}
export interface Fit {
  readonly target: Pt3;
  /** px of the page an inch takes. */
  readonly scale: number;
}

/** Everything in the picture, as large as the margins allow. */
export const fitTo = (
  points: readonly Pt3[],
  toward: Pt3,
  size: { readonly width: number; readonly height: number },
  margin: Margin,
): Fit => {
  const level = Math.hypot(toward[0], toward[1]) || 1;
  const right: Pt3 = [-toward[1] / level, toward[0] / level, 0];
  const up: Pt3 = [-(toward[0] * toward[2]) / level, -(toward[1] * toward[2]) / level, level];
  const dot = (a: Pt3, b: Pt3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const us = points.map((p) => dot(p, right));
  const vs = points.map((p) => dot(p, up));
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const [wide, high] = [
    Math.max(40, size.width - margin.left - margin.right),
    Math.max(40, size.height - margin.top - margin.bottom),
  ];
  const scale = Math.min(wide / Math.max(1, u1 - u0), high / Math.max(1, v1 - v0));
  const u = (u0 + u1) / 2 + (margin.right - margin.left) / 2 / scale;
  const v = (v0 + v1) / 2 + (margin.top - margin.bottom) / 2 / scale;
  return {
    target: [right[0] * u + up[0] * v, right[1] * u + up[1] * v, right[2] * u + up[2] * v],
    scale,
  };
};

export const outsideCamera = (): OrthographicCamera => new OrthographicCamera(-1, 1, 1, -1, -DEEP_M, DEEP_M);
export const insideCamera = (): PerspectiveCamera => new PerspectiveCamera(68, 1, 0.03, DEEP_M);

export const frame = (camera: SceneCamera, width: number, height: number): void => {
  if (camera instanceof OrthographicCamera) {
    camera.left = -width / 2;
    camera.right = width / 2;
    camera.top = height / 2;
    camera.bottom = -height / 2;
  } else camera.aspect = width / height;
  camera.updateProjectionMatrix();
};

/** The eye as the shaders take it: a place, or a direction for a view without perspective. */
export const writeEye = (camera: SceneCamera, to: Vector4): void => {
  if (camera instanceof OrthographicCamera) {
    const back = new Vector3().setFromMatrixColumn(camera.matrixWorld, 2);
    to.set(back.x, -back.z, back.y, 0);
  } else to.set(...toHouse(new Vector3().setFromMatrixPosition(camera.matrixWorld)), 1);
};

/** Where somebody stands who looks at the panel: in front of it, as far off as the room allows. */
export const standBefore = (
  front: Pt3,
  into: Pt,
  clear: (p: Pt) => boolean,
): { readonly eye: Pt3; readonly target: Pt3 } => {
  let out = 30;
  while (
    out < FARTHEST_IN &&
    clear([front[0] + into[0] * (out + NEAR_WALL_IN), front[1] + into[1] * (out + NEAR_WALL_IN)])
  )
    out += 3;
  return { eye: [front[0] + into[0] * out, front[1] + into[1] * out, EYE_HEIGHT_IN], target: front };
};

/** Page px of a house point; null behind the eye. */
export const project = (
  p: Pt3,
  camera: SceneCamera,
  size: { readonly width: number; readonly height: number },
): readonly [x: number, y: number] | null => {
  const v = toScene(p).project(camera);
  if (v.z > 1 || v.z < -1) return null;
  return [((v.x + 1) / 2) * size.width, ((1 - v.y) / 2) * size.height];
};
