import type { Vector4 } from 'three';
import type { In, Pt, Pt3 } from '../units/types';

/** A plane that cuts the view open: along the panel's wall, square to it through the panel, or level. */
export const AXES = ['facing', 'across', 'level'] as const;
export type Axis = (typeof AXES)[number];
export interface Section {
  readonly axis: Axis;
  /** From the wall, from the middle of the panel to its right, over the floor. */
  readonly at: In;
}
/** Middle of the new panel's front, the way it looks, and its right. */
export interface PanelFront {
  readonly front: Pt3;
  readonly into: Pt;
  readonly along: Pt;
}

const dot = (a: Pt, b: readonly [In, In, ...unknown[]]): number => a[0] * b[0] + a[1] * b[1];

/** How far a section can be pushed, with some to spare. */
export const rangeOf = (axis: Axis, panel: PanelFront, points: readonly Pt3[]): readonly [from: In, to: In] => {
  const reach = (n: Pt) => points.map((p) => dot(n, p) - dot(n, panel.front));
  switch (axis) {
    case 'facing':
      return [-12, Math.ceil(Math.max(...reach(panel.into)))];
    case 'across':
      return [Math.floor(Math.min(...reach(panel.along))), Math.ceil(Math.max(...reach(panel.along)))];
    case 'level':
      return [1, Math.ceil(Math.max(...points.map((p) => p[2]))) + 12];
  }
};
export const startOf = (axis: Axis): In => (axis === 'facing' ? 30 : axis === 'across' ? 0 : 48);

/** As the shaders take it: what lies beyond, toward the eye, is cut away. */
export const writeSection = (section: Section | null, panel: PanelFront | null, toEye: Pt3, to: Vector4): void => {
  if (!section || !panel) {
    to.set(0, 0, 0, 1);
    return;
  }
  if (section.axis === 'level') {
    to.set(0, 0, 1, section.at);
    return;
  }
  const n = section.axis === 'facing' ? panel.into : panel.along;
  const toward = section.axis === 'facing' || dot(n, toEye) >= 0 ? 1 : -1;
  to.set(n[0] * toward, n[1] * toward, 0, toward * (dot(n, panel.front) + section.at));
};
