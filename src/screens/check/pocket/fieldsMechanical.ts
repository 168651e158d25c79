import type { CalcName } from '../../../calculations/types';
import { awg, choice, edition, maybe, number, type PocketField, several, text, YES_NO } from './fields';

const inner = (key: string) => ({ key });

/** Boxes, cabinets, wood, space, the panel's own places, coils. */
export const MECHANICAL = {
  'box-fill': [
    edition,
    several('counts', 'boxConductors', '4 x 14', inner('conductors')),
    several('counts', 'grounds', '2 x 14'),
    several('counts', 'deviceYokes', ''),
    choice('clamps', YES_NO),
    number('fittings', '0'),
    maybe('boxIn3', '18'),
  ],
  'cabinet-fill': [
    number('sectionIn2', '52'),
    several('insulated', 'conductorsOf', '24 x 12 THHN, 12 x 14 THHN', inner('conductors')),
    number('splicesIn2', '6'),
  ],
  'pull-box': [choice('pull', ['straight', 'angle', 'splice'], 'angle'), several('numbers', 'racewaysIn', '2, 1.5')],
  'terminal-bend': [awg('2'), number('wires', '1'), choice('wall', ['side', 'opposite'])],
  bend: [text('cableName', '12/2 w/G', { key: 'cable', empty: true }), maybe('diameterIn')],
  boring: [
    choice('member', ['joist', 'bearing stud', 'other stud']),
    number('depthIn', '9.25'),
    maybe('holeIn', '1'),
    maybe('edgeIn', '2'),
    maybe('betweenIn'),
    maybe('notchIn'),
    choice('notchAt', ['outer third', 'middle third', 'end']),
    choice('notchBelow', YES_NO),
    number('nominalIn', '2'),
  ],
  'working-space': [
    number('panelWidth', '14.5', inner('size.width')),
    number('panelHeight', '30', inner('size.height')),
    number('bottom', '42'),
    number('topHandle', '68'),
    number('freeLeft', '6', inner('free.left')),
    number('freeRight', '20', inner('free.right')),
    number('freeDepth', '38', inner('free.depth')),
    number('freeHeight', '84', inner('free.height')),
    choice('existingDwelling', YES_NO, true),
    number('panelAmps', '200', inner('amps')),
    number('voltsToGround', '120'),
  ],
  'dedicated-space': [
    number('panelWidth', '14.5', inner('size.width')),
    number('panelDepth', '4', inner('size.depth')),
    number('panelHeight', '30', inner('size.height')),
    number('bottom', '42'),
    number('structure', '91.5'),
    number('thingLeft', '-20', inner('thing.left')),
    number('thingRight', '10', inner('thing.right')),
    number('thingOut', '3', inner('thing.out')),
    number('thingOutTo', '11', inner('thing.outTo')),
    number('thingFrom', '80', inner('thing.from')),
    number('thingTo', '88', inner('thing.to')),
  ],
  arrangement: [
    number('spaces', '12'),
    several(
      'circuits',
      'panelCircuits',
      'kitchen 1500\nrefrigerator 1200\nhall 600 with bath\nbath 900 with hall\nrange 8000 2-pole',
      inner('circuits'),
    ),
  ],
  cut: [
    several('coils', 'coils', "250' at 128.50\n100' at 64"),
    several('pieces', 'pieces', "3 x 42' 6\"\n5 x 28'"),
    maybe('keepFrom', '180'),
    number('remnantShare', '0.5'),
  ],
} as const satisfies Partial<Record<CalcName, readonly PocketField[]>>;
