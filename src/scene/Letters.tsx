import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Settled } from '../drawings/settle';
import type { SolidMark } from '../drawings/solidMarks';
import type { SolidName } from '../drawings/solidNames';
import type { SolidHouse } from '../drawings/solids';
import { letterPicture } from './lettering';
import { project, type SceneCamera } from './view';

/** Lettering as it stands in the picture now, and the picture's size, px of the page. */
export interface Lettered {
  readonly settled: Settled;
  readonly width: number;
  readonly height: number;
}
interface Props {
  readonly names: readonly SolidName[];
  readonly marks: readonly SolidMark[];
  readonly house: SolidHouse;
  readonly hand: 'desk' | 'field';
  readonly onLettered: (lettered: Lettered) => void;
}
/** Finds places for lettering whenever the picture has changed. */
export const Letters = ({ names, marks, house, hand, onLettered }: Props) => {
  const invalidate = useThree((s) => s.invalidate);
  const last = useRef('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever is lettered anew needs a new picture
  useEffect(() => {
    last.current = '';
    invalidate();
  }, [names, marks, house, hand, invalidate]);
  useFrame(({ camera, size }) => {
    const seen = [...camera.matrixWorld.elements, ...camera.projectionMatrix.elements, size.width, size.height].join();
    if (seen === last.current) return;
    last.current = seen;
    const { width, height } = size;
    const settled = letterPicture(names, marks, house, (p) => project(p, camera as SceneCamera, size), size, hand);
    onLettered({ settled, width, height });
  });
  return null;
};
