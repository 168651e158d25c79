import { calcAmpacity } from '../../../src/calculations/ampacity';
import { rowLimit } from '../../../src/calculations/cableRows';
import { cookingDemand, dryerDemand } from '../../../src/calculations/loadParts';
import { ampacity } from '../../../src/standards/ampacity';
import type { Cable } from '../../../src/standards/cable';
import { conductorArea } from '../../../src/standards/conductorAreas';
import { FILL_SHARE, fillRow, racewayArea } from '../../../src/standards/conduit';
import { ambientFactor } from '../../../src/standards/correction';
import { countFactor } from '../../../src/standards/countAdjustment';
import { circuitConductors } from '../../../src/standards/currentCarrying';
import { dwellingSize } from '../../../src/standards/dwellingService';
import { gecCap, gecSize } from '../../../src/standards/electrodeConductor';
import { egcSize } from '../../../src/standards/grounding';
import { acResistance, reactance } from '../../../src/standards/impedance';
import { EXISTING_FIRST_VA, MEASURED_FACTOR, OPTIONAL_FIRST_VA } from '../../../src/standards/loadDemand';
import { circularMils, resistance } from '../../../src/standards/resistance';
import { smallConductorMost } from '../../../src/standards/smallConductors';

import type { Value } from './asking';

const F_OF = (celsius: number) => (celsius * 9) / 5 + 32;
const nm12: Cable = {
  kind: 'NM',
  size: '12',
  metal: 'Cu',
  hots: 1,
  neutral: 'insulated',
  ground: true,
  insulation: 90,
};
const bundled = {
  togetherIn: 60,
  spaced: false,
  sealed: false,
  insulated: false,
  bundling: 'strict',
  nextSizeInRows: false,
} as const;

/** What the product answers to each assertion of the electrical tables. */
export const electricalSpots: Readonly<Record<string, () => Value>> = {
  'Al 2 AWG at 75 °C = 90 A': () => ampacity('Al', '2', 75),
  'Al 4/0 AWG at 75 °C = 180 A': () => ampacity('Al', '4/0', 75),
  'Al 300 kcmil at 60 °C = 195 A': () => ampacity('Al', '300', 60),
  'Al 6 AWG at 90 °C = 55 A': () => ampacity('Al', '6', 90),
  'Cu 3 AWG at 90 °C = 115 A': () => ampacity('Cu', '3', 90),
  'Cu 1 AWG at 90 °C = 145 A': () => ampacity('Cu', '1', 90),
  'Cu 2/0 AWG at 75 °C = 175 A': () => ampacity('Cu', '2/0', 75),
  'Cu 6 AWG at 60 °C = 55 A': () => ampacity('Cu', '6', 60),
  'Cu 14 AWG at 60 °C = 15 A': () => ampacity('Cu', '14', 60),
  'Cu 16 AWG at 90 °C = 18 A': () => ampacity('Cu', '16', 90),
  'Ambient 36-40 °C, 75 °C conductor factor = 0.88': () => ambientFactor(75, F_OF(38)),
  'Ambient 41-45 °C, 90 °C conductor factor = 0.87': () => ambientFactor(90, F_OF(43)),
  '7 to 9 conductors = 0.70': () => countFactor(8),
  '10 to 20 conductors = 0.50': () => countFactor(15),
  '10 AWG aluminum capped at 25 A': () => smallConductorMost('Al', '10'),
  '12 AWG copper capped at 20 A': () => smallConductorMost('Cu', '12'),
  'EGC at 100 A = 8 AWG Cu': () => egcSize('Cu', 100),
  'EGC at 200 A = 4 AWG Al': () => egcSize('Al', 200),
  'GEC for 2/0 Cu service = 4 AWG Cu': () => gecSize('Cu', '2/0'),
  'GEC to a rod never needs more than 6 AWG Cu': () => gecCap('rod, pipe or plate', 'Cu'),
  '200 A dwelling feeder = 4/0 Al': () => dwellingSize('Al', 200),
  '100 A dwelling feeder = 4 AWG Cu': () => dwellingSize('Cu', 100),
  '400 A dwelling service = 600 kcmil Al': () => dwellingSize('Al', 400),
  '12 AWG solid Cu DC resistance = 1.93 ohm/kft': () => resistance('Cu', '12', 'solid'),
  '4/0 Al DC resistance = 0.100 ohm/kft': () => resistance('Al', '4/0', 'stranded'),
  '2 AWG area = 66360 cmil': () => circularMils('2'),
  '2 AWG Al AC resistance in PVC = 0.32 ohm/kft': () => acResistance('Al', '2', 'PVC'),
  '4/0 reactance in PVC = 0.041 ohm/kft': () => reactance('4/0', 'PVC'),
  '1/0 Cu in aluminum conduit R = 0.13 ohm/kft': () => acResistance('Cu', '1/0', 'aluminum'),
  '12 AWG THHN area = 0.0133 in2': () => conductorArea('12', 'THHN'),
  '4/0 XHHW area = 0.3197 in2': () => conductorArea('4/0', 'XHHW'),
  '4/0 compact Al XHHW area = 0.2733 in2': () => conductorArea('4/0', 'compact XHHW'),
  'EMT 1 in. total area = 0.864 in2': () => racewayArea('EMT', '1'),
  'PVC schedule 40 2 in. 40 % area = 1.316 in2': () => racewayArea('PVC 40', '2', 'more'),
  'PVC schedule 80 1-1/2 in. total area = 1.711 in2': () => racewayArea('PVC 80', '1-1/2'),
  'Two conductors in conduit: 31 %': () => 100 * FILL_SHARE[fillRow(2, false)],
  'Range column C, one range = 8 kW': () => Number(cookingDemand([12_000])) / 1000,
  'Optional method first block = 10 kVA': () => OPTIONAL_FIRST_VA[2023] / 1000,
  'Existing dwelling first block = 8 kVA': () => EXISTING_FIRST_VA[2023] / 1000,
  'Measured demand factor = 1.25': () => MEASURED_FACTOR,
  'Dryer minimum = 5000 VA': () => dryerDemand([4500]),
  'Multiwire 120/240 V three-wire = 2 current-carrying': () =>
    rowLimit([{ cable: { ...nm12, hots: 2 }, amps: 20 }], bundled, 2023).conductors,
  '208Y/120 two phases + neutral = 3 current-carrying': () =>
    circuitConductors('208Y/120 V: two phases plus neutral').carrying,
  'In a 120 V two-wire circuit the neutral counts': () => circuitConductors('120 V two-wire').neutralCounts,
  'Five 12/2 NM cables bundled -> 15 A': () => {
    const row = rowLimit(
      Array.from({ length: 5 }, () => ({ cable: nm12, amps: 20 })),
      bundled,
      2023,
    );
    const answer = calcAmpacity({
      edition: 2023,
      metal: 'Cu',
      awg: '12',
      startColumn: 90,
      terminals: 75,
      limitColumn: 60,
      conductors: row.conductors,
      ambientF: 86,
      togetherIn: 60,
      inRaceway: false,
      breakerAmps: null,
    });
    return answer.ok && Number(answer.value.figures.usable);
  },
};
