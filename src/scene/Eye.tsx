import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect, useImperativeHandle, useLayoutEffect, useMemo, useRef } from 'react';
import { MOUSE, OrthographicCamera, Spherical, TOUCH, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { In, Pt, Pt3 } from '../units/types';
import { METERS_PER_INCH, type Shared } from './shared';
import {
  bearingOf,
  directionOf,
  ELEVATION,
  fitTo,
  frame,
  insideCamera,
  type Margin,
  outsideCamera,
  type SceneCamera,
  standBefore,
  toHouse,
  toScene,
  writeEye,
} from './view';

export type EyeMode = 'outside' | 'inside';
/** What buttons and keys do to the view. */
export interface EyeHandle {
  /** Degrees: to the left of whoever looks, and up. */
  turn(left: number, up: number): void;
  /** Outside: larger by this factor. Inside: a step forward for more than 1, back for less. */
  nearer(factor: number): void;
  fit(): void;
}
interface Props {
  readonly mode: EyeMode;
  /** Where the view starts from; as long as nobody moved it, it follows. */
  readonly start: number;
  /** What must be in the picture. */
  readonly points: readonly Pt3[];
  readonly margin: Margin;
  /** Front of the new panel and the way it looks. */
  readonly panel: { readonly front: Pt3; readonly into: Pt } | null;
  readonly inRoom: (p: Pt) => boolean;
  readonly shared: Shared;
  readonly handle: RefObject<EyeHandle | null>;
  /** The view has come to look from another bearing. */
  readonly onBearing: (bearing: number) => void;
}

const FAR_M = 60;
/** Standing in the room the view turns about a point this close before the eye. */
const NOSE_M = 0.02;
const STEP_IN: In = 15;
const ZOOM = { min: 4, max: 6000 } as const;

/** Cameras and what moves them; one view without perspective from outside, one with it at eye height. */
export const Eye = (props: Props) => {
  const { mode, points, margin, panel, inRoom, shared, handle, onBearing } = props;
  const gl = useThree((s) => s.gl);
  const size = useThree((s) => s.size);
  const set = useThree((s) => s.set);
  const invalidate = useThree((s) => s.invalidate);
  const cameras = useMemo(() => {
    const made = { outside: outsideCamera(), inside: insideCamera() };
    for (const camera of Object.values(made)) Object.assign(camera, { manual: true });
    return made;
  }, []);
  const camera: SceneCamera = cameras[mode];
  const controls = useRef<OrbitControls | null>(null);
  /** As long as nobody moved the view it keeps everything in the picture. */
  const moved = useRef(false);
  const start = useRef(props.start);

  const lay = useMemo(
    () => (bearing: number, elevation: number) => {
      const toward = directionOf(bearing, elevation);
      const { target, scale } = fitTo(points, toward, size, margin);
      const outside = cameras.outside;
      outside.position.copy(toScene(target).add(toScene(toward).setLength(FAR_M)));
      outside.zoom = scale / METERS_PER_INCH;
      outside.lookAt(toScene(target));
      outside.updateProjectionMatrix();
      if (controls.current?.object === outside) {
        controls.current.target.copy(toScene(target));
        controls.current.update();
      }
      invalidate();
      return target;
    },
    [points, size, margin, cameras, invalidate],
  );

  useLayoutEffect(() => {
    frame(camera, size.width, size.height);
    set({ camera });
    invalidate();
  }, [camera, size, set, invalidate]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the controls live as long as their camera does
  useEffect(() => {
    const made = new OrbitControls(camera, gl.domElement);
    controls.current = made;
    made.enableDamping = false;
    made.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.PAN, RIGHT: MOUSE.PAN };
    made.touches = { ONE: TOUCH.ROTATE, TWO: TOUCH.DOLLY_PAN };
    if (mode === 'outside') {
      made.minZoom = ZOOM.min;
      made.maxZoom = ZOOM.max;
      made.zoomToCursor = true;
      moved.current = false;
      lay(start.current, ELEVATION);
    } else {
      const { eye, target } = standBefore(panel?.front ?? [0, 0, 0], panel?.into ?? [0, -1], inRoom);
      made.enableZoom = false;
      made.enablePan = false;
      made.rotateSpeed = -0.35;
      camera.position.copy(toScene(eye));
      const look = toScene(target).sub(camera.position).setLength(NOSE_M);
      made.target.copy(camera.position).add(look);
      made.update();
    }
    const change = () => {
      moved.current = true;
      onBearing(bearingOf(toHouse(camera.position.clone().sub(made.target))));
      invalidate();
    };
    made.addEventListener('change', change);
    invalidate();
    return () => {
      if (mode === 'outside') start.current = bearingOf(toHouse(camera.position.clone().sub(made.target)));
      made.removeEventListener('change', change);
      made.dispose();
      controls.current = null;
    };
  }, [camera, gl]);

  useLayoutEffect(() => {
    if (mode !== 'outside' || moved.current) return;
    start.current = props.start;
    lay(props.start, ELEVATION);
    moved.current = false;
    onBearing(props.start);
  }, [lay, mode, props.start, onBearing]);

  useImperativeHandle(handle, () => {
    const orbit = (left: number, up: number) => {
      const made = controls.current;
      if (!made) return;
      const turn = mode === 'outside' ? 1 : -1;
      const around = new Spherical().setFromVector3(camera.position.clone().sub(made.target));
      around.theta -= (turn * left * Math.PI) / 180;
      around.phi = Math.min(Math.PI - 0.02, Math.max(0.02, around.phi - (turn * up * Math.PI) / 180));
      const arm = new Vector3().setFromSpherical(around);
      // inside the eye stays where it is and what it looks at goes round
      if (mode === 'outside') camera.position.copy(made.target).add(arm);
      else made.target.copy(camera.position).sub(arm);
      camera.lookAt(made.target);
      made.update();
      invalidate();
    };
    const walk = (by: In) => {
      const made = controls.current;
      if (!made) return;
      const look = made.target
        .clone()
        .sub(camera.position)
        .setY(0)
        .setLength(by * METERS_PER_INCH);
      const to = toHouse(camera.position.clone().add(look));
      if (!inRoom([to[0], to[1]])) return;
      camera.position.add(look);
      made.target.add(look);
      made.update();
      invalidate();
    };
    return {
      turn: orbit,
      nearer: (factor) => {
        if (!(camera instanceof OrthographicCamera)) {
          walk(factor > 1 ? STEP_IN : -STEP_IN);
          return;
        }
        camera.zoom = Math.min(ZOOM.max, Math.max(ZOOM.min, camera.zoom * factor));
        camera.updateProjectionMatrix();
        moved.current = true;
        controls.current?.update();
        invalidate();
      },
      fit: () => {
        const made = controls.current;
        if (!made || mode !== 'outside') return;
        const back = toHouse(camera.position.clone().sub(made.target));
        const elevation = (Math.atan2(back[2], Math.hypot(back[0], back[1])) * 180) / Math.PI;
        lay(bearingOf(back), elevation);
        moved.current = false;
      },
    };
  }, [camera, mode, lay, inRoom, invalidate]);

  useFrame(({ gl: renderer, size: page }) => {
    camera.updateMatrixWorld();
    writeEye(camera, shared.uEye.value);
    const ratio = renderer.getPixelRatio();
    shared.uPicture.value.set(page.width * ratio, page.height * ratio);
    shared.uDense.value = ratio;
  });
  return null;
};
