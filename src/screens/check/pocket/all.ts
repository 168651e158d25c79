import type { CalcName } from '../../../calculations/types';
import type { PocketField } from './fields';
import { ELECTRICAL } from './fieldsElectrical';
import { MECHANICAL } from './fieldsMechanical';

/** Every pocket calculation with its fields, in the order of the list. */
export const POCKET: Readonly<Record<CalcName, readonly PocketField[]>> = {
  'box-fill': MECHANICAL['box-fill'],
  'cabinet-fill': MECHANICAL['cabinet-fill'],
  'pull-box': MECHANICAL['pull-box'],
  ampacity: ELECTRICAL.ampacity,
  feeder: ELECTRICAL.feeder,
  'voltage-drop': ELECTRICAL['voltage-drop'],
  load: ELECTRICAL.load,
  afci: ELECTRICAL.afci,
  'working-space': MECHANICAL['working-space'],
  'dedicated-space': MECHANICAL['dedicated-space'],
  boring: MECHANICAL.boring,
  bend: MECHANICAL.bend,
  'raceway-fill': ELECTRICAL['raceway-fill'],
  'terminal-bend': MECHANICAL['terminal-bend'],
  arrangement: MECHANICAL.arrangement,
  cut: MECHANICAL.cut,
};
export const POCKET_NAMES = Object.keys(POCKET) as CalcName[];

/** Inputs the command takes and no answer turns on, the spaces being the same in every code year: given, not asked. */
export const UNASKED: Readonly<Partial<Record<CalcName, Readonly<Record<string, unknown>>>>> = {
  ampacity: { inRaceway: false },
  'working-space': { edition: 2023, size: { depth: 4 } },
  'dedicated-space': { edition: 2023 },
};
