import { also, asker, calc, holds, type Row } from './asking';

const boring = asker('boring', { member: 'joist', depthIn: 7.25, holeIn: null, edgeIn: null, notchIn: null });
const pull = asker('pull-box', { pull: 'straight', racewaysIn: [2] });
const terminal = asker('terminal-bend', { awg: '4/0', wires: 2, wall: 'opposite' });
const bend = asker('bend', { cable: null, diameterIn: 0.5 });

/** Cabinets and pull boxes, joists, bends. */
export const woodExamples: Readonly<Record<string, readonly Row[]>> = {
  'CB-02': [calc('min_in', terminal(), 'minimumIn')],
  'CB-04': [calc('min_length_in', pull({ racewaysIn: [2] }), 'minimumIn')],
  'CB-05': [calc('min_length_in', pull({ racewaysIn: [2.5, 2, 1.5] }), 'minimumIn')],
  'CB-06': [
    calc('min_distance_in', pull({ pull: 'angle', racewaysIn: [3, 2] }), 'minimumIn'),
    calc('same_conductor_entry_spacing_in', pull({ pull: 'angle', racewaysIn: [3, 2] }), 'sameConductorIn'),
    calc('straight_3in_in', pull({ racewaysIn: [3] }), 'minimumIn'),
  ],
  'CB-07': [
    calc('straight_min_in', pull({ racewaysIn: [4] }), 'minimumIn'),
    calc('angle_min_in', pull({ pull: 'angle', racewaysIn: [3] }), 'minimumIn'),
  ],
  'JB-01': [
    calc('max_hole_in', boring(), 'maxHoleIn', 5e-5),
    calc('published_rounded_in', boring(), (a) => Math.floor(Number(a.maxHoleIn) * 8) / 8),
    calc('edge_in', boring(), 'minEdgeIn'),
  ],
  'JB-03': [
    calc('max_hole_in', boring({ depthIn: 9.25, holeIn: 4.5 }), 'maxHoleIn', 5e-5),
    calc('ok', boring({ depthIn: 9.25, holeIn: 4.5 }), holds),
  ],
  'JB-04': [calc('ok', boring({ holeIn: 1, edgeIn: 3, betweenIn: 5 }), holds)],
  // the source bars notches on the pulled side of every joist; the rule does so from 4 in nominal on
  'JB-06': [
    calc(
      'ok',
      [
        boring({ notchIn: 0.5, notchAt: 'middle third' }),
        boring({ notchIn: 0.5, notchBelow: true, nominalIn: 4 }),
        boring({ holeIn: 1, betweenIn: 1.9 }),
      ],
      (...answers) => answers.map(holds),
    ),
    also('below in a 2x8, an outer third', true, boring({ notchIn: 0.5, notchBelow: true }), holds),
  ],
  'BR-01': [calc('min_radius_in', bend(), 'minRadiusIn')],
};
export const woodSkipped: Readonly<Record<string, string>> = {
  'BR-03':
    'bends of nonmetallic underground conduit with conductors, Table 354.24: nothing of a basement panel job, and no such table was published here',
};
