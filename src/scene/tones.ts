import type { Tone, Weight } from '../drawings/items';
import type { Side, Surface } from '../drawings/solids';

/** The look of the 3-D view as numbers for the shaders: read from the page's own tokens, so both themes need no second set. */

export type Rgb = readonly [number, number, number];

const SIDES: readonly Side[] = ['up', 'x', 'y', 'down', 'round'];
const SURFACES: readonly Surface[] = [
  'floor',
  'wall',
  'concrete',
  'wood',
  'ply',
  'not measured',
  'thing',
  'goods',
  'old',
  'new',
  'zone',
  'intrusion',
];
export const faceTone = (surface: Surface, side: Side): number =>
  SURFACES.indexOf(surface) * SIDES.length + SIDES.indexOf(side);
export const FACE_TONES = SURFACES.length * SIDES.length;
export const surfaceNumber = (surface: Surface): number => SURFACES.indexOf(surface);
export const SIDE_COUNT = SIDES.length;

const INKS: readonly Tone[] = ['ink', 'ink-2', 'ink-3', 'old', 'new', 'on-new', 'hair', 'paper'];
export const inkNumber = (tone: Tone): number => INKS.indexOf(tone);
export const INK_COUNT = INKS.length;

const WEIGHTS: readonly Weight[] = ['cut', 'profile', 'object', 'thin', 'hair', 'old', 'new', 'feeder'];
export const weightNumber = (weight: Weight): number => WEIGHTS.indexOf(weight);
export const WEIGHT_COUNT = WEIGHTS.length;

type Shades = readonly [up: number, x: number, y: number, down: number, round: number];
interface Paint {
  readonly token: string;
  /** Share of ink each tone takes on light paper. */
  readonly day: Shades;
  /** On dark paper what looks up is the lightest: share of light ink. */
  readonly night: Shades;
}
const paint = (token: string, day: Shades, night: Shades): Paint => ({ token, day, night });
const PAINT: Readonly<Record<Surface, Paint>> = {
  floor: paint('--paper', [0.035, 0.035, 0.035, 0.1, 0.035], [0.03, 0.03, 0.03, 0, 0.03]),
  wall: paint('--paper', [0.02, 0.075, 0.025, 0.1, 0.06], [0.09, 0.045, 0.075, 0, 0.06]),
  concrete: paint('--m-concrete', [0, 0.06, 0.06, 0.1, 0.06], [0.14, 0.06, 0.08, 0, 0.08]),
  wood: paint('--m-wood', [0, 0.07, 0.03, 0.12, 0.06], [0.12, 0.04, 0.08, 0, 0.08]),
  ply: paint('--m-ply', [0, 0.05, 0.02, 0.08, 0.05], [0.1, 0.02, 0.05, 0, 0.05]),
  'not measured': paint('--verify-wash', [0, 0.05, 0.02, 0.08, 0.05], [0.08, 0.02, 0.04, 0, 0.04]),
  thing: paint('--m-appliance', [0, 0.12, 0.055, 0.3, 0.075], [0.13, 0.05, 0.09, -0.4, 0.09]),
  goods: paint('--paper-2', [0, 0.09, 0.04, 0.2, 0.06], [0.1, 0.03, 0.06, -0.3, 0.06]),
  old: paint('--m-steel', [0, 0.1, 0.04, 0.2, 0.06], [0.06, -0.1, 0, -0.3, 0]),
  new: paint('--new', [0.06, 0.14, 0.05, 0.3, 0.1], [0, -0.16, -0.06, -0.4, -0.1]),
  zone: paint('--new', [0, 0, 0, 0, 0], [0, 0, 0, 0, 0]),
  intrusion: paint('--paper', [0, 0, 0, 0, 0], [0, 0, 0, 0, 0]),
};

export interface Tones {
  /** Three numbers a tone, 0 to 1, as on the screen. */
  readonly faces: Float32Array;
  readonly inks: Float32Array;
  /** Line weights, px. */
  readonly widths: Float32Array;
}

const read = (hex: string): Rgb => {
  const text = hex.trim().replace('#', '');
  const full = text.length === 3 ? [...text].map((c) => c + c).join('') : text;
  const n = Number.parseInt(full, 16);
  if (full.length !== 6 || Number.isNaN(n)) throw new Error(`The color "${hex}" is not written as hex`);
  return [((n >> 16) & 255) / 255, ((n >> 8) & 255) / 255, (n & 255) / 255];
};
const mix = (a: Rgb, b: Rgb, t: number): Rgb => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];

/** `token` gives the text of a custom property of the page. */
export const readTones = (token: (name: string) => string): Tones => {
  const [ink, desk, paper] = [read(token('--ink')), read(token('--desk')), read(token('--paper'))];
  const dark = paper[0] + paper[1] + paper[2] < 1.5;
  const faces = SURFACES.flatMap((surface) => {
    const { token: name, day, night } = PAINT[surface];
    const base = read(token(name));
    return (dark ? night : day).flatMap((share) => [...(share < 0 ? mix(base, desk, -share) : mix(base, ink, share))]);
  });
  return {
    faces: Float32Array.from(faces),
    inks: Float32Array.from(INKS.flatMap((tone) => [...read(token(`--${tone}`))])),
    widths: Float32Array.from(WEIGHTS.map((w) => Number.parseFloat(token(`--w-${w}`)))),
  };
};
