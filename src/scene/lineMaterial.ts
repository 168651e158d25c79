import { DoubleSide, ShaderMaterial } from 'three';
import { COMMON, SCALE, type Shared } from './shared';
import { INK_COUNT, WEIGHT_COUNT } from './tones';

/** Dashes of the drawings, px on, off, on, off: none · away · future · overhead · zone · limit. As in the tokens. */
const DASHES = [
  [1, 0, 1, 0],
  [5, 3.2, 5, 3.2],
  [10, 4, 10, 4],
  [9, 3, 2, 3],
  [7, 3, 7, 3],
  [2, 3, 2, 3],
] as const;
export const DASH_NAMES = [null, 'away', 'future', 'overhead', 'zone', 'limit'] as const;

const VERTEX = /* glsl */ `
  ${COMMON}
  ${SCALE}
  uniform float uWidths[${WEIGHT_COUNT}];
  uniform float uWider;
  attribute vec3 from;
  attribute vec3 to;
  attribute vec3 toward;
  attribute vec3 but;
  attribute vec3 anchor;
  attribute vec4 pen; // ink, weight, dash, inches to the next line like it
  varying vec3 vAt;
  varying float vAlong;
  varying vec2 vPen;
  /** Lines closer than this on the screen, px, would run together. */
  const float TOO_CLOSE = 3.6;
  void main() {
    vec4 a = modelViewMatrix * vec4(from, 1.0);
    vec4 b = modelViewMatrix * vec4(to, 1.0);
    if (!isOrthographic) {
      // a line that goes on behind the eye ends just before it
      float near = -0.03; // as far off as the camera's near plane
      if (a.z > near && b.z > near) { gl_Position = NOWHERE; return; }
      if (a.z > near) a = mix(b, a, (b.z - near) / (b.z - a.z));
      if (b.z > near) b = mix(a, b, (a.z - near) / (a.z - b.z));
    }
    vec4 ca = projectionMatrix * a;
    vec4 cb = projectionMatrix * b;
    float scale = pixelsPerInch(position.x < 0.5 ? ca.w : cb.w);
    if (!shown(toward, but, anchor) || (pen.w > 0.0 && pen.w * scale < TOO_CLOSE * uDense)) {
      gl_Position = NOWHERE;
      return;
    }
    vec2 pa = ca.xy / ca.w * uPicture * 0.5;
    vec2 pb = cb.xy / cb.w * uPicture * 0.5;
    float reach = distance(pa, pb);
    vec2 along = reach > 0.001 ? (pb - pa) / reach : vec2(1.0, 0.0);
    float half_ = (uWidths[int(pen.y + 0.5)] + uWider) * uDense * 0.5;
    vec2 off = vec2(-along.y, along.x) * position.y * half_ + along * (position.x < 0.5 ? -half_ : half_) * 0.8;
    vec4 at = position.x < 0.5 ? ca : cb;
    vec4 eyeward = position.x < 0.5 ? a : b;
    // drawn a little before the face it is the edge of; close to the eye that is very little
    float shift = max(0.006, (1.2 * half_ + 0.6) / scale * METERS);
    eyeward.z += isOrthographic ? shift : min(shift, -eyeward.z * 0.006);
    vec4 nearer = projectionMatrix * eyeward;
    gl_Position = vec4(at.xy + off / (uPicture * 0.5) * at.w, nearer.z / nearer.w * at.w, at.w);
    vAt = position.x < 0.5 ? from : to;
    vAlong = (position.x < 0.5 ? 0.0 : reach) / uDense;
    vPen = pen.xz;
  }
`;
const FRAGMENT = /* glsl */ `
  ${COMMON}
  uniform vec3 uInks[${INK_COUNT}];
  varying vec3 vAt;
  varying float vAlong;
  varying vec2 vPen;
  const vec4 DASHES[${DASHES.length}] = vec4[${DASHES.length}](${DASHES.map((d) => `vec4(${d.map((n) => n.toFixed(1)).join(', ')})`).join(', ')});
  void main() {
    if (cutAway(vAt)) discard;
    int dash = int(vPen.y + 0.5);
    if (dash > 0) {
      vec4 d = DASHES[dash];
      float t = mod(vAlong, d.x + d.y + d.z + d.w);
      if ((t > d.x && t < d.x + d.y) || t > d.x + d.y + d.z) discard;
    }
    gl_FragColor = vec4(uInks[int(vPen.x + 0.5)], 1.0);
  }
`;

/** Ink lines of a weight that does not scale with the view. `wider` px are added: the halo under a selected edge. */
export const makeLineMaterial = (shared: Shared, wider = 0): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: { ...shared, uWider: { value: wider } },
    side: DoubleSide,
  });
