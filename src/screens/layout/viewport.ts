import type { Drawing } from '../../drawings/items';
import type { Projection } from '../drawing/projection';

/** How a drawing lies in its pane: one point of the paper is one pixel; what does not fit is scrolled to. */
export interface Space {
  readonly width: number;
  readonly height: number;
}
/** Room around what is solid in a drawing for dimensions and lettering, px. */
export interface Margin {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}
/** whole: all of it is seen · height: as high as the pane, however long. */
export type Fit = 'whole' | 'height';

const LEAST = 0.25;
/** Pixels an inch takes at most: an eighth of an inch is then a pixel and a half. */
const MOST = 12;

export const fitScale = ({ extent }: Drawing, space: Space, margin: Margin, fit: Fit): number => {
  const w = Math.max(1, extent.maxX - extent.minX);
  const h = Math.max(1, extent.maxY - extent.minY);
  const high = (space.height - margin.top - margin.bottom) / h;
  return Math.min(MOST, Math.max(LEAST, fit === 'height' ? high : Math.min(high, (space.width - 2 * margin.x) / w)));
};
export const zoomed = (scale: number, by: number): number => Math.min(MOST, Math.max(LEAST, scale * by));

export const paperAt = ({ extent }: Drawing, space: Space, margin: Margin, scale: number): Projection => {
  const w = (extent.maxX - extent.minX) * scale;
  const h = (extent.maxY - extent.minY) * scale;
  const width = Math.max(space.width, w + 2 * margin.x);
  const height = Math.max(space.height, h + margin.top + margin.bottom);
  const left = (width - w) / 2;
  const top = margin.top + (height - h - margin.top - margin.bottom) / 2;
  return {
    scale,
    width,
    height,
    to: ([x, y]) => [left + (x - extent.minX) * scale, top + (extent.maxY - y) * scale],
    from: ([x, y]) => [extent.minX + (x - left) / scale, extent.maxY - (y - top) / scale],
  };
};
