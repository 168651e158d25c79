import { Vector2, Vector4 } from 'three';
import { FACE_TONES, INK_COUNT, WEIGHT_COUNT } from './tones';

/**
 * Uniforms that all materials of the view share: one object each, changed in place. The house is drawn in its own
 * inches; the eye and the section are given there.
 */
export const makeShared = () => ({
  /** Where the eye is (w = 1), or the direction to it for a view without perspective (w = 0). */
  uEye: { value: new Vector4(0, 0, 1, 0) },
  /** What lies beyond this plane, n·p > w, is cut away. */
  uSection: { value: new Vector4(0, 0, 0, 1) },
  /** Size of the picture in its own pixels, and how many of them make one px of the page. */
  uPicture: { value: new Vector2(1, 1) },
  uDense: { value: 1 },
  uFaces: { value: new Float32Array(FACE_TONES * 3) },
  uInks: { value: new Float32Array(INK_COUNT * 3) },
  uWidths: { value: new Float32Array(WEIGHT_COUNT) },
});
export type Shared = ReturnType<typeof makeShared>;

/** Inches of the house to meters of the scene: glTF's unit, so that what is exported has its true size. */
export const METERS_PER_INCH = 0.0254; // exact: international yard and pound agreement, 1959

/** GLSL that every material begins with. */
export const COMMON = /* glsl */ `
  uniform vec4 uEye;
  uniform vec4 uSection;
  uniform vec2 uPicture;
  uniform float uDense;
  const float METERS = ${METERS_PER_INCH};
  bool looksAtEye(vec3 normal, vec3 at) {
    return dot(normal, uEye.xyz - at * uEye.w) > 0.0;
  }
  /** Is a part shown whose first normal, or whose two normals, look this way? */
  bool shown(vec3 toward, vec3 but, vec3 at) {
    if (dot(toward, toward) < 0.25) return true;
    bool a = looksAtEye(toward, at);
    if (dot(but, but) < 0.25) return a;
    return a != looksAtEye(but, at);
  }
  bool cutAway(vec3 p) { return dot(uSection.xyz, p) > uSection.w; }
  const vec4 NOWHERE = vec4(2.0, 2.0, 2.0, 1.0);
`;
/** Picture pixels an inch takes at a depth; needs the projection, so vertex shaders only. */
export const SCALE = /* glsl */ `
  float pixelsPerInch(float clipW) {
    return METERS * projectionMatrix[1][1] * uPicture.y * 0.5 / clipW;
  }
`;
