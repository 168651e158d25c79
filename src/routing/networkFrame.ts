import { bounds } from '../geometry/polygon';
import { turnAbout } from '../geometry/vector';
import type { Pt } from '../units/types';

/**
 * The search frame: the job's plan turned so that the joists of the main framing run along y, measured in 1/64 in from
 * the lowest corner of the outline. Quarter turns and whole 1/64 in stay exact, so that a job that is moved or turned
 * by quarters gives the same figures.
 */
export interface Frame {
  readonly turn: number;
  readonly origin: Pt;
  readonly width: number;
  readonly height: number;
}

const CENTER: Pt = [0, 0];

export const makeFrame = (outline: readonly Pt[], joistDirection: number): Frame => {
  const turn = (((90 - joistDirection) % 180) + 180) % 180;
  const box = bounds(outline.map((p) => turnAbout(p, CENTER, turn)));
  return {
    turn,
    origin: [box.minX, box.minY],
    width: Math.round((box.maxX - box.minX) * 64),
    height: Math.round((box.maxY - box.minY) * 64),
  };
};

/** Job inches to frame 1/64 in, not rounded. */
export const toFrame = (frame: Frame, p: Pt): Pt => {
  const [x, y] = turnAbout(p, CENTER, frame.turn);
  return [(x - frame.origin[0]) * 64, (y - frame.origin[1]) * 64];
};
/** Frame 1/64 in to job inches. */
export const toJob = (frame: Frame, x: number, y: number): Pt =>
  turnAbout([frame.origin[0] + x / 64, frame.origin[1] + y / 64], CENTER, -frame.turn);

/** To a whole number; a half goes away from `middle`, so that a mirror image rounds alike. */
export const roundFrom = (value: number, middle: number): number => {
  const low = Math.floor(value);
  const part = value - low;
  if (Math.abs(part - 0.5) < 1e-7) return value > middle ? low + 1 : low;
  return part < 0.5 ? low : low + 1;
};
export const roundX = (frame: Frame, x: number): number => roundFrom(x, frame.width / 2);
export const roundY = (frame: Frame, y: number): number => roundFrom(y, frame.height / 2);
/** Job inches to whole frame units. */
export const snap = (frame: Frame, p: Pt): Pt => {
  const [x, y] = toFrame(frame, p);
  return [roundX(frame, x), roundY(frame, y)];
};
