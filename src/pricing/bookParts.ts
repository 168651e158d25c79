import type { PriceBook } from '../job/schema';
import { INVENTED } from './bookCables';

type Material = PriceBook['materials'][number];
type Prices = Readonly<Record<string, number>>;

const PANELS: Prices = {
  8: 62,
  12: 84,
  16: 98,
  20: 118,
  24: 134,
  30: 158,
  32: 164,
  40: 205,
  42: 214,
  54: 268,
  60: 296,
  66: 340,
};
const MAINS: Prices = { 60: 44, 100: 62, 125: 78, 150: 118, 200: 132 };
const DISCONNECTS: Prices = { 60: 96, 100: 148, 125: 176, 150: 245, 200: 268 };

const PLAIN: Prices = {
  '1p 15': 8.5,
  '1p 20': 8.5,
  '1p 25': 10,
  '1p 30': 10,
  '2p 15': 17,
  '2p 20': 17,
  '2p 25': 18.5,
  '2p 30': 18.5,
  '2p 35': 20,
  '2p 40': 20,
  '2p 45': 22,
  '2p 50': 22,
  '2p 60': 24,
  '2p 70': 34,
  '2p 80': 42,
  '2p 90': 52,
  '2p 100': 58,
  '2p 110': 96,
  '2p 125': 108,
  '2p 150': 165,
  '2p 175': 182,
  '2p 200': 196,
};
const PROTECTED: Prices = {
  '1p 15 AFCI': 52,
  '1p 20 AFCI': 52,
  '1p 15 GFCI': 56,
  '1p 20 GFCI': 56,
  '1p 25 GFCI': 60,
  '1p 30 GFCI': 60,
  '1p 15 AFCI+GFCI': 64,
  '1p 20 AFCI+GFCI': 64,
  '2p 15 AFCI': 118,
  '2p 20 AFCI': 118,
  '2p 15 GFCI': 112,
  '2p 20 GFCI': 112,
  '2p 25 GFCI': 118,
  '2p 30 GFCI': 118,
  '2p 35 GFCI': 124,
  '2p 40 GFCI': 124,
  '2p 45 GFCI': 128,
  '2p 50 GFCI': 128,
  '2p 60 GFCI': 136,
  '2p 15 AFCI+GFCI': 148,
  '2p 20 AFCI+GFCI': 148,
};

/** With cover. */
const BOXES: Prices = {
  '4 x 1-1/4': 4.6,
  '4 x 1-1/2': 4.9,
  '4 x 2-1/8': 6.4,
  '4-11/16 x 1-1/4': 8.2,
  '4-11/16 x 1-1/2': 8.8,
  '4-11/16 x 2-1/8': 9.8,
  '6x6x4': 18,
  '8x8x4': 26,
  '10x10x4': 36,
  '12x12x4': 46,
  '12x12x6': 58,
};
const CONNECTORS: Prices = {
  '3/8': 0.7,
  '1/2': 0.75,
  '3/4': 1.4,
  '1': 2.6,
  '1-1/4': 4.2,
  '1-1/2': 5.6,
  '2': 8.4,
  '2-1/2': 14,
};
const SLEEVES: Prices = { '1/2': 1.1, '3/4': 1.6, '1': 2.5, '1-1/4': 3.8, '1-1/2': 4.6, '2': 6.2 };
const NIPPLES: Prices = { '3/4': 6, '1': 8, '1-1/4': 11, '1-1/2': 13, '2': 17, '2-1/2': 28, '3': 36 };
const WIREWAYS: Prices = { '4x4': 16, '6x6': 24, '8x8': 38 };
const SPLICES: Prices = { '14-10 Cu': 0.28, 'Al-Cu': 3.4, '8-2': 11, irreversible: 14 };
const RECEPTACLES: Prices = {
  '5-15': 3.2,
  '5-20': 5.4,
  '5-15 AFCI': 34,
  '5-20 AFCI': 38,
  '5-15 GFCI': 22,
  '5-20 GFCI': 24,
  '6-50': 24,
  '14-30': 22,
  '14-50': 26,
};
const CORDS: Prices = { '14-30': 24, '14-50': 32 };
const FINISHES: Prices = { white: 38, 'paint to match': 55 };
const TRIMS: Prices = { solid: 60, clear: 95 };
/** Over the price of a plain breaker of that many poles. */
const CONNECTED: Prices = { '1p': 58, '2p': 96 };

const EACH: Prices = {
  board: 42,
  standoff: 2.2,
  spd: 96,
  hub: 145,
  'tidy board': 32,
  'ground bar': 14,
  label: 0.6,
  light: 38,
  'handle tie': 4.5,
  'knockout seal': 0.9,
  'filler plate': 1.8,
  'splice can': 34,
  staple: 0.09,
  plate: 0.75,
  'fire stop': 3.5,
  'intersystem terminal': 22,
  'bonding jumper': 18,
};
const PER_FOOT: Prices = { 'running board': 1.4, patch: 3.2 };

const family = (name: string, prices: Prices, unit = 'each'): Material[] =>
  Object.entries(prices).map(([kind, dollars]) => ({ id: `${name}:${kind}`, unit, dollars, source: INVENTED }));
const plain = (prices: Prices, unit: string): Material[] =>
  Object.entries(prices).map(([id, dollars]) => ({ id, unit, dollars, source: INVENTED }));

/** Everything bought but cable. All prices invented. */
export const partMaterials: readonly Material[] = [
  ...family('panel', PANELS),
  ...family('main', MAINS),
  ...family('service disconnect', DISCONNECTS),
  ...family('breaker', { ...PLAIN, ...PROTECTED }),
  ...family('box', BOXES),
  ...family('connector', CONNECTORS),
  ...family('sleeve', SLEEVES, 'ft'),
  ...family('nipple', NIPPLES),
  ...family('wireway', WIREWAYS, 'ft'),
  ...family('splice', SPLICES),
  ...family('receptacle', RECEPTACLES),
  ...family('cord', CORDS),
  ...family('finish', FINISHES),
  ...family('trim', TRIMS),
  ...family('connected', CONNECTED),
  ...plain(EACH, 'each'),
  ...plain(PER_FOOT, 'ft'),
];
