import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Scene } from 'three';
import { type PanelFront, type Section, writeSection } from './section';
import type { Shared } from './shared';
import { useTones } from './useTones';
import type { SceneCamera } from './view';

/** What a test sees of the picture. */
export interface SceneHook {
  readonly scene: Scene;
  readonly camera: SceneCamera;
  /** Draw calls of the last picture. */
  readonly calls: () => number;
  /** Pictures drawn so far. */
  readonly frames: () => number;
}
declare global {
  interface Window {
    __scene?: SceneHook | undefined;
  }
}
/** The picture as the page asks about it: what was pointed at. */
export interface Drawn {
  readonly scene: Scene;
  readonly camera: () => SceneCamera;
}
interface Props {
  readonly shared: Shared;
  readonly section: Section | null;
  readonly panel: PanelFront | null;
  readonly exposed: boolean;
  readonly onLost: (lost: boolean) => void;
  readonly onDrawn: (drawn: Drawn) => void;
}

const useTheme = (shared: Shared, invalidate: () => void): void => {
  const tones = useTones();
  useEffect(() => {
    shared.uFaces.value.set(tones.faces);
    shared.uInks.value.set(tones.inks);
    shared.uWidths.value.set(tones.widths);
    invalidate();
  }, [tones, shared, invalidate]);
};

/** A lost graphics context is asked back, and drawn into again when it comes. */
const useContextLoss = (canvas: HTMLCanvasElement, invalidate: () => void, onLost: Props['onLost']): void => {
  useEffect(() => {
    const lost = (event: Event) => {
      event.preventDefault(); // else it is never given back
      onLost(true);
    };
    const back = () => {
      onLost(false);
      invalidate();
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', back);
    return () => {
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', back);
    };
  }, [canvas, invalidate, onLost]);
};

/** What the picture hears from the page: theme, section, a lost and regained graphics context. */
export const Wiring = ({ shared, section, panel, exposed, onLost, onDrawn }: Props) => {
  const { gl, scene, get, invalidate } = useThree();
  const frames = useRef(0);
  useTheme(shared, invalidate);
  useContextLoss(gl.domElement, invalidate, onLost);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another cut needs another picture
  useEffect(() => invalidate(), [section, panel, invalidate]);
  useEffect(() => {
    const camera = () => get().camera as SceneCamera;
    onDrawn({ scene, camera });
    if (!exposed) return;
    window.__scene = {
      scene,
      get camera() {
        return camera();
      },
      calls: () => gl.info.render.calls,
      frames: () => frames.current,
    };
    return () => {
      window.__scene = undefined;
    };
  }, [exposed, gl, scene, get, onDrawn]);
  useFrame(() => {
    frames.current++;
    const { x, y, z, w } = shared.uEye.value;
    const front = panel?.front ?? [0, 0, 0];
    writeSection(section, panel, [x - front[0] * w, y - front[1] * w, z - front[2] * w], shared.uSection.value);
  });
  return null;
};
