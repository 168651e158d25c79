import { DoubleSide, ShaderMaterial } from 'three';
import { COMMON, type Shared } from './shared';
import { FACE_TONES, SIDE_COUNT, surfaceNumber } from './tones';

const VERTEX = /* glsl */ `
  ${COMMON}
  attribute float tone;
  attribute vec3 toward;
  attribute vec3 but;
  attribute vec3 anchor;
  varying float vTone;
  varying vec3 vAt;
  void main() {
    vTone = tone;
    vec3 world = (modelMatrix * vec4(position, 1.0)).xyz / METERS;
    vAt = vec3(world.x, -world.z, world.y);
    gl_Position = shown(toward, but, anchor) ? projectionMatrix * modelViewMatrix * vec4(position, 1.0) : NOWHERE;
  }
`;
const FRAGMENT = /* glsl */ `
  ${COMMON}
  uniform vec3 uFaces[${FACE_TONES}];
  uniform vec3 uInks[8];
  uniform float uOpacity;
  varying float vTone;
  varying vec3 vAt;
  /** How much of a line of this width lies here, across a family of parallel lines. */
  float ruled(float across, float every, float width) {
    float off = abs(mod(across, every) - every * 0.5);
    return clamp((width * 0.5 - off) + 0.5, 0.0, 1.0);
  }
  void main() {
    if (cutAway(vAt)) discard;
    int tone = int(vTone + 0.5);
    int surface = tone / ${SIDE_COUNT};
    vec3 color = uFaces[tone];
    float alpha = uOpacity;
    vec2 px = gl_FragCoord.xy / uDense;
    if (surface == ${surfaceNumber('zone')}) {
      alpha = ruled((px.x - px.y) * 0.7071, 9.0, 0.9) * 0.8;
      if (alpha < 0.05) discard;
    } else if (surface == ${surfaceNumber('intrusion')}) {
      float ink = max(ruled((px.x - px.y) * 0.7071, 5.0, 1.3), ruled((px.x + px.y) * 0.7071, 5.0, 1.3));
      color = mix(color, uInks[0], ink);
      alpha = 1.0;
    } else if (surface == ${surfaceNumber('not measured')}) {
      vec2 cell = mod(px, 5.0) - 2.5;
      color = mix(color, uInks[2], clamp(1.4 - length(cell), 0.0, 1.0));
    }
    // the inside of a body that is cut open: filled as cut material is
    bool body = surface == ${surfaceNumber('thing')} || surface == ${surfaceNumber('goods')} ||
      surface == ${surfaceNumber('new')} || surface == ${surfaceNumber('old')} || surface == ${surfaceNumber('wood')};
    if (body && !gl_FrontFacing && dot(uSection.xyz, uSection.xyz) > 0.5) color = mix(uFaces[tone], uInks[0], 0.38);
    gl_FragColor = vec4(color, alpha);
  }
`;

/**
 * Faces in flat tones. A part left out by where it looks costs nothing; hatches keep their size on the screen.
 * `behind` > 0 lets what lies in the same plane be seen before it: a flush panel before its wall.
 */
export const makeFaceMaterial = (shared: Shared, opacity = 1, behind = 1): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    uniforms: { ...shared, uOpacity: { value: opacity } },
    side: DoubleSide,
    transparent: opacity < 1,
    depthWrite: opacity === 1,
    polygonOffset: true,
    polygonOffsetFactor: behind,
    polygonOffsetUnits: behind * 2,
  });
