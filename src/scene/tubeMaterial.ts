import { DoubleSide, ShaderMaterial } from 'three';
import { COMMON, SCALE, type Shared } from './shared';
import { INK_COUNT } from './tones';

const VERTEX = /* glsl */ `
  ${COMMON}
  ${SCALE}
  attribute vec3 core;
  attribute vec4 lay; // ink, least width px, paper core, dashed
  attribute float along;
  varying vec4 vLay;
  varying vec3 vAt;
  varying float vAlong;
  varying vec3 vNormal;
  varying vec3 vView;
  void main() {
    vec4 middle = modelViewMatrix * vec4(core, 1.0);
    float w = (projectionMatrix * middle).w;
    float scale = pixelsPerInch(max(w, 0.01));
    vec3 out_ = position - core;
    float radius = length(out_);
    // true size close up; from farther away a line of its own weight
    float wide = max(radius, lay.y * uDense * 0.5 / scale);
    vec4 at = modelViewMatrix * vec4(core + out_ * (wide / radius), 1.0);
    vNormal = normalize((modelViewMatrix * vec4(out_, 0.0)).xyz);
    vView = isOrthographic ? vec3(0.0, 0.0, 1.0) : normalize(-at.xyz);
    vec4 clip = projectionMatrix * at;
    float shift = wide * METERS * 1.5;
    at.z += isOrthographic ? shift : min(shift, -at.z * 0.02);
    vec4 nearer = projectionMatrix * at;
    gl_Position = vec4(clip.xy, nearer.z / nearer.w * clip.w, clip.w);
    vLay = lay;
    vAt = core;
    vAlong = along * scale / uDense;
  }
`;
const FRAGMENT = /* glsl */ `
  ${COMMON}
  uniform vec3 uInks[${INK_COUNT}];
  varying vec4 vLay;
  varying vec3 vAt;
  varying float vAlong;
  varying vec3 vNormal;
  varying vec3 vView;
  const vec2 AWAY = vec2(5.0, 3.2);
  const int PAPER = 7;
  void main() {
    if (cutAway(vAt)) discard;
    if (vLay.w > 0.5 && mod(vAlong, AWAY.x + AWAY.y) > AWAY.x) discard;
    float faces = abs(dot(normalize(vNormal), vView));
    bool inside = vLay.z > 0.0 && faces > vLay.z;
    gl_FragColor = vec4(inside ? uInks[PAPER] : uInks[int(vLay.x + 0.5)], 1.0);
  }
`;

/** Cables as tubes of their true size that never get thinner on the screen than their line in the drawings. */
export const makeTubeMaterial = (shared: Shared): ShaderMaterial =>
  new ShaderMaterial({ vertexShader: VERTEX, fragmentShader: FRAGMENT, uniforms: { ...shared }, side: DoubleSide });
