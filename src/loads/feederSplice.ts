import { boxFillIn3 } from '../calculations/boxFill';
import { pullBoxMinimum } from '../calculations/pullBox';
import { boxCatalogue } from '../standards/boxCatalogue';
import type { Cable } from '../standards/cable';
import { conductorArea } from '../standards/conductorAreas';
import { RACEWAY_SIZES, racewayArea } from '../standards/conduit';
import { PULL_BOX } from '../standards/pullBox';
import { compareSizes, isSize } from '../standards/sizes';
import { BEYOND } from '../standards/source';
import { type In, isKnown } from '../units/types';

/** Two hots, the neutral and the EGC of a feeder. */
const CONDUCTORS = 4;
/** Trade sizes, small to large: keys that look like whole numbers would come first. */
const tradeSizes = (): string[] => Object.keys(RACEWAY_SIZES.EMT).sort((a, b) => inches(a) - inches(b));
const SIDES = /^(\d+)x(\d+)x(\d+)$/;

const inches = (tradeSize: string): In =>
  tradeSize.split('-').reduce((sum, part) => {
    const [over, under] = part.split('/').map(Number);
    return sum + (under === undefined ? over! : over! / under);
  }, 0);

/** Trade size of the raceway the cable's conductors would need, in: what a cable counts as at a pull box (314.28(A)). The EGC is taken as large as the rest. */
const entryOf = (cable: Cable, size: string): In | null => {
  const one = conductorArea(size, cable.metal === 'Al' ? 'compact XHHW' : 'XHHW');
  if (one === BEYOND) return null;
  const fits = tradeSizes().find((trade) => {
    const area = racewayArea('EMT', trade, 'more');
    return area !== BEYOND && area >= CONDUCTORS * one;
  });
  return fits === undefined ? null : inches(fits);
};

/**
 * The box a feeder is spliced in, by its trade size: of 4 AWG and larger by distance (314.28(A)(2), entries in opposite
 * walls), of smaller ones by volume (314.16(B)); null where no box of the catalogue does or the cable is not known.
 */
export const feederSpliceBox = (cable: Cable): string | null => {
  const { size } = cable;
  if (!isKnown(size) || !isSize(size)) return null;
  if (compareSizes(size, PULL_BOX.appliesFromAwg) >= 0) {
    const entry = entryOf(cable, size);
    if (entry === null) return null;
    const least = pullBoxMinimum('splice', [entry]);
    return boxCatalogue.find((b) => Number(SIDES.exec(b.size)?.[1] ?? 0) >= least)?.size ?? null;
  }
  const ends = 2;
  const need = boxFillIn3('unknown', {
    conductors: [{ awg: size, count: ends * (CONDUCTORS - 1) }],
    grounds: [{ awg: size, count: ends }],
    clamps: false,
    yokes: [],
    fittings: 0,
  });
  return need === null ? null : (boxCatalogue.find((b) => b.volumeIn3 >= need)?.size ?? null);
};
