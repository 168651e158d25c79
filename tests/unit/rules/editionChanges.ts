import type { RuleId } from '../../../src/standards/sections';

export const STEPS = ['2017 → 2020', '2020 → 2023', '2023 → 2026'] as const;
export type Step = (typeof STEPS)[number];

/**
 * What each new edition changes of the rules this program checks, from the published comparison by edition it was
 * written against: the rules that say something else, and why. Section numbers that only moved change no rule.
 */
export const EDITION_CHANGES: Readonly<Record<Step, Partial<Record<RuleId, string>>>> = {
  '2017 → 2020': {
    'AFCI-EXT': '210.12(D): conductor inside boxes and cabinets is left out of the 6 ft by the text',
    'AFCI-AREA': 'it waits for the rooms only where the length asks for them, which the 2017 text measures longer',
    'AFCI-EXT-17': '210.12(D): the 2017 text alone is silent on it',
    'SPD-SVC': '230.67 is new',
    EMDISC: '230.85 is new',
    'GFCI-NEW': '210.8(A): every basement, finished or not',
    'GFCI-RECP': '210.8(A): range and dryer receptacles put in new',
    'SVC-SIX': '230.71(B): one service disconnect an enclosure',
    'DRYER-RANGE': '210.8(A): receptacles up to 250 V, without an ampere limit',
    'BOX-FILL': '314.16(B)(5): grounds beyond the fourth count a quarter each',
  },
  '2020 → 2023': {
    'AFCI-AREA': '210.12: 10 A circuits',
    'AFCI-EXT': '210.12: 10 A circuits',
    'GFCI-NEW': '210.8(A): all kitchen receptacles',
    EMDISC: '230.85(C): replaced service equipment brings it',
    'OLD-3WIRE': '250.140(B): the bare neutral may be covered in the panel',
    'SPD-FDR': '215.18 is new',
    'SPD-SVC': '215.18 asks for the same device: it is priced once',
    'WS-DOOR': '110.26: open doors and the way out, of all equipment',
    'WS-FLOOR': '110.26(A)(6) is new',
  },
  '2023 → 2026': {
    BATH: '240.24(E): a panel lawfully there before may stay',
    LOAD: 'Article 120: 2 VA per square foot for general lighting',
    'SVC-LOC': '230.70(A)(1): the service disconnect is outdoors',
  },
};
