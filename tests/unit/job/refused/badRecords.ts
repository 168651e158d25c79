import { changed, type Row } from './spoil';

export const RECORDS: readonly Row[] = [
  [
    'an id twice in a list',
    changed((j) => (j.circuits[5].id = 'c-01')),
    'duplicate-id',
    '/circuits/5/id',
    /\/circuits\/0\/id/,
  ],
  [
    'a partition named like a wall',
    changed((j) => (j.site.partitions[0].id = 'west')),
    'duplicate-id',
    '/site/partitions/0/id',
  ],
  [
    'a pin id twice',
    changed(
      (j) => (j.options[0].pins = ['h-15', 'h-16'].map((homeRun) => ({ id: 'p', pin: 'way', homeRun, way: 'cut-in' }))),
    ),
    'duplicate-id',
    '/options/0/pins/1/id',
  ],
  [
    'a home run in no group',
    changed((j) => (j.homeRuns[1].group = 'g-none')),
    'no-such-record',
    '/homeRuns/1/group',
    /cable group/,
  ],
  [
    'a home run of no circuit',
    changed((j) => (j.homeRuns[0].circuits[1] = 'c-99')),
    'no-such-record',
    '/homeRuns/0/circuits/1',
  ],
  [
    'a circuit twice on a cable',
    changed((j) => (j.homeRuns[0].circuits = ['c-01', 'c-01'])),
    'listed-twice',
    '/homeRuns/0/circuits/1',
  ],
  [
    'a group at no panel',
    changed((j) => (j.cableGroups[0].enclosure = 'x')),
    'no-such-record',
    '/cableGroups/0/enclosure',
  ],
  ['a panel on no wall', changed((j) => (j.enclosures[0].on.wall = 'x')), 'no-such-record', '/enclosures/0/on/wall'],
  [
    'a new panel on no wall',
    changed((j) => (j.options[2].enclosure.on.wall = 'x')),
    'no-such-record',
    '/options/2/enclosure/on/wall',
  ],
  [
    'a panel behind the foundation',
    changed((j) => (j.enclosures[1].on.face = 'back')),
    'no-such-face',
    '/enclosures/1/on/face',
  ],
  [
    'an opening in no wall',
    changed((j) => (j.site.openings[1].on.wall = 'x')),
    'no-such-record',
    '/site/openings/1/on/wall',
  ],
  ['a partner that is nobody', changed((j) => (j.circuits[0].partner = 'x')), 'no-such-record', '/circuits/0/partner'],
  [
    'a partner that disagrees',
    changed((j) => (j.circuits[1].partner = null)),
    'partner-not-mutual',
    '/circuits/0/partner',
  ],
  [
    'a circuit that is its own partner',
    changed((j) => (j.circuits[4].partner = 'c-05')),
    'partner-not-mutual',
    '/circuits/4/partner',
  ],
  [
    'an option that replaces nothing',
    changed((j) => (j.options[0].replaces[1].enclosure = 'x')),
    'no-such-record',
    '/options/0/replaces/1/enclosure',
  ],
  [
    'a panel replaced twice',
    changed((j) => (j.options[0].replaces[1].enclosure = j.options[0].replaces[0].enclosure)),
    'listed-twice',
    '/options/0/replaces/1/enclosure',
  ],
  [
    'a thing moved twice',
    changed((j) => j.options[0].moves.push({ obstacle: j.options[0].moves[0].obstacle, to: 'away' })),
    'listed-twice',
    '/options/0/moves/1/obstacle',
  ],
  [
    'a move of nothing',
    changed((j) => (j.options[0].moves[0].obstacle = 'x')),
    'no-such-record',
    '/options/0/moves/0/obstacle',
  ],
  [
    'a pinned cable that is not there',
    changed((j) => (j.options[0].pins = [{ id: 'p', pin: 'row', homeRuns: ['h-15', 'x'] }])),
    'no-such-record',
    '/options/0/pins/0/homeRuns/1',
  ],
  [
    'a disconnect on no wall',
    changed(
      (j) => (j.options[1].serviceDisconnect = { on: { wall: 'x', face: 'back', left: 0, bottom: 0 }, amps: 100 }),
    ),
    'no-such-record',
    '/options/1/serviceDisconnect/on/wall',
  ],
  [
    'an answer with no such photo',
    changed((j) => (j.answers = [{ rule: 'X', subject: 'job', answer: true, by: '', on: '', note: '', photo: 'x' }])),
    'no-such-record',
    '/answers/0/photo',
  ],
];
