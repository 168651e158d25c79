import type { Price } from '../facts/result';
import type { Work } from '../facts/work';
import type { PriceBook } from '../job/schema';
import { unitWords as say } from '../words/en/unitChanges';
import type { SplicePractice } from './assemblies';
import { charged } from './charged';

const piece = (item: string, quantity = 1): Work => ({ item, quantity, homeRuns: [], rule: null, alternate: null });

/**
 * What may turn up behind the cover and is agreed on beforehand by the piece, and what one of it takes. Common practice,
 * no source; the plain case of each is priced.
 */
const CHANGES: Readonly<Record<keyof typeof say, readonly [unit: string, work: readonly Work[]]>> = {
  'untraced circuit': ['circuit', [piece('trace')]],
  'hidden splice': ['cable', [piece('box:4-11/16 x 2-1/8'), piece('connector:1/2', 2), piece('splice')]],
  'cable too short': [
    'cable',
    [piece('splice'), piece('pull'), piece('pull ft', 8), piece('cable:12/2 NM', 8), piece('connector:1/2', 2)],
  ],
  'circuit gains AFCI': ['circuit', [piece('breaker:1p 20 AFCI'), piece('breaker:1p 20', -1), piece('AFCI trouble')]],
  'hole more': ['hole', [piece('hole')]],
  'drywall strip': ['ft', [piece('patch')]],
  'aluminum branch cable': ['cable', [piece('splice Al')]],
  'circuit more': [
    'circuit',
    [piece('breaker:1p 20'), piece('new home run'), piece('directory'), piece('test circuit')],
  ],
  'failed inspection': ['visit', [piece('re-inspection'), piece('second trip'), piece('inspection')]],
  'plumber called': ['visit', [piece('plumber')]],
};

/** Unit prices for the list of risks; one the book cannot price whole is left out. */
export const unitChanges = (book: PriceBook, practice: SplicePractice): Price['unitChanges'] =>
  (Object.keys(CHANGES) as (keyof typeof say)[]).flatMap((id) => {
    const [unit, work] = CHANGES[id];
    const { cents, complete } = charged(work, book, practice);
    return complete ? [{ id, say: say[id], unit, cents }] : [];
  });
