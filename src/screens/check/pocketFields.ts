import type { CalcInput } from '../../calculations/types';
import { EDITIONS } from '../../units/types';
import type { pocketWords } from '../../words/en/pocket';

/** How a pocket calculation is asked on screen: its fields in order, each with what stands in it at first. */
export type PocketName = keyof (typeof pocketWords)['names'];
export type LabelOf = keyof (typeof pocketWords)['fields'];

export interface PocketField {
  readonly key: string;
  readonly label: LabelOf;
  /** number and text may be left empty where `empty` is allowed · counts: 4 x 14, 2 x 12 · numbers: 2, 1.5. */
  readonly kind: 'number' | 'text' | 'counts' | 'numbers' | 'choice';
  readonly empty: boolean;
  readonly start: string;
  /** Of a choice, with the value each stands for. */
  readonly choices: readonly (string | number | boolean | null)[];
}

const number = (key: LabelOf, start: string, empty = false): PocketField => ({
  key,
  label: key,
  kind: 'number',
  empty,
  start,
  choices: [],
});
const text = (key: LabelOf, start: string, empty = false): PocketField => ({
  ...number(key, start, empty),
  kind: 'text',
});
const choice = (key: LabelOf, choices: PocketField['choices'], start = choices[0]): PocketField => ({
  ...number(key, String(start)),
  kind: 'choice',
  choices,
});
const counts = (key: string, label: LabelOf, start: string): PocketField => ({
  ...number(label, start, true),
  key,
  kind: 'counts',
});
const edition = choice('edition', EDITIONS, 2023);
const metal = choice('metal', ['Cu', 'Al']);
const awg = text('awg', '12');

export const POCKET: Readonly<Record<PocketName & keyof CalcInput, readonly PocketField[]>> = {
  'box-fill': [
    edition,
    counts('conductors', 'boxConductors', '4 x 14'),
    counts('grounds', 'grounds', '2 x 14'),
    counts('deviceYokes', 'deviceYokes', ''),
    choice('clamps', [false, true]),
    number('fittings', '0'),
    number('boxIn3', '18', true),
  ],
  ampacity: [
    edition,
    metal,
    awg,
    choice('startColumn', [60, 75, 90], 90),
    choice('terminals', [60, 75, 90, 'unknown'], 'unknown'),
    choice('limitColumn', [null, 60, 75], 60),
    number('conductors', '4'),
    number('ambientF', '86'),
    number('togetherIn', '', true),
    choice('inRaceway', [false, true]),
    number('breakerAmps', '20', true),
  ],
  'voltage-drop': [
    number('volts', '120'),
    number('amps', '16'),
    number('feetOneWay', '60'),
    metal,
    awg,
    number('ohmPerKft', '', true),
    choice('raceway', ['PVC', 'aluminum', 'steel']),
    number('powerFactor', '1'),
  ],
  boring: [
    choice('member', ['joist', 'bearing stud', 'other stud']),
    number('depthIn', '9.25'),
    number('holeIn', '1', true),
    number('edgeIn', '2', true),
    number('notchIn', '', true),
  ],
  'pull-box': [choice('pull', ['straight', 'angle', 'splice']), { ...number('racewaysIn', '2, 1.5'), kind: 'numbers' }],
  bend: [text('cable', '12/2 w/G', true), number('diameterIn', '', true)],
  'terminal-bend': [text('awg', '2'), number('wires', '1'), choice('wall', ['side', 'opposite'])],
};
