import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Settled } from '../drawings/settle';
import type { SolidMark } from '../drawings/solidMarks';
import type { SolidName } from '../drawings/solidNames';
import type { SolidHouse } from '../drawings/solids';
import type { Pt3 } from '../units/types';
import { letterPicture } from './lettering';
import type { Shared } from './shared';
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
  readonly shared: Shared;
  readonly onLettered: (lettered: Lettered) => void;
}
/** Finds places for lettering whenever the picture has changed. */
export const Letters = ({ names, marks, house, hand, shared, onLettered }: Props) => {
  const invalidate = useThree((s) => s.invalidate);
  const last = useRef('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever is lettered anew needs a new picture
  useEffect(() => {
    last.current = '';
    invalidate();
  }, [names, marks, house, hand, invalidate]);
  useFrame(({ camera, size }) => {
    const cut = shared.uSection.value;
    const view = [...camera.matrixWorld.elements, ...camera.projectionMatrix.elements, ...cut.toArray()];
    const seen = [...view, size.width, size.height].join();
    if (seen === last.current) return;
    last.current = seen;
    const { width, height } = size;
    const at = (p: Pt3) =>
      cut.x * p[0] + cut.y * p[1] + cut.z * p[2] > cut.w ? null : project(p, camera as SceneCamera, size);
    const settled = letterPicture(names, marks, house, at, size, hand);
    onLettered({ settled, width, height });
  });
  return null;
};
