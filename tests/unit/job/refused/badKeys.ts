import { changed, type Row } from './spoil';

export const KEYS: readonly Row[] = [
  ['a missing key', changed((j) => delete j.survey.grade), 'missing-key', '/survey/grade', /"walk-through" or "full"/],
  ['a key nobody knows', changed((j) => (j.site.color = 1)), 'unknown-key', '/site/color'],
  ['a key with a slash and a tilde', changed((j) => (j.house['a/b~c'] = 1)), 'unknown-key', '/house/a~1b~0c'],
  [
    'a text for a number',
    changed((j) => (j.site.outline[1].at[0] = '12')),
    'wrong-type',
    '/site/outline/1/at/0',
    /a number, found "12"/,
  ],
  ['null for a list', changed((j) => (j.circuits = null)), 'wrong-type', '/circuits', /a list, found null/],
  [
    'null for unknown',
    changed((j) => (j.house.yearBuilt = null)),
    'wrong-type',
    '/house/yearBuilt',
    /a whole number or "unknown"|a number or "unknown"/,
  ],
  ['two coordinates for three', changed((j) => j.feeder.path[0].pop()), 'out-of-range', '/feeder/path/0'],
  ['four coordinates for three', changed((j) => j.feeder.path[0].push(1)), 'out-of-range', '/feeder/path/0'],
  [
    'a code year that is none',
    changed((j) => (j.code.edition = 2021)),
    'wrong-value',
    '/code/edition',
    /2017 or 2020 or 2023 or 2026 or "unknown"/,
  ],
  [
    'a use nobody knows',
    changed((j) => (j.circuits[2].serves = ['kitchen', 'spa'])),
    'wrong-value',
    '/circuits/2/serves/1',
    /found "spa"/,
  ],
  ['three poles', changed((j) => (j.circuits[0].poles = 3)), 'wrong-value', '/circuits/0/poles', /1 or 2/],
  ['an empty id', changed((j) => (j.circuits[3].id = '')), 'out-of-range', '/circuits/3/id', /at least 1/],
  [
    'a length beyond any house',
    changed((j) => (j.site.partitions[0].to[1] = -1e9)),
    'out-of-range',
    '/site/partitions/0/to/1',
  ],
  [
    'a joist spacing of zero',
    changed((j) => (j.site.framing[0].spacing = 0)),
    'out-of-range',
    '/site/framing/0/spacing',
    /above 0/,
  ],
  [
    'a width that rounds to zero',
    changed((j) => (j.site.openings[0].width = 0.001)),
    'out-of-range',
    '/site/openings/0/width',
  ],
  [
    'a splice spot that pays',
    changed((j) => (j.practice.spliceSpotCents = -1)),
    'out-of-range',
    '/practice/spliceSpotCents',
    /at least 0/,
  ],
  [
    'a thing that pays for being moved',
    changed((j) => (j.site.obstacles[0].moveCents = -500)),
    'out-of-range',
    '/site/obstacles/0/moveCents',
  ],
  ['a share beyond reason', changed((j) => (j.practice.slackShare = 1e6)), 'out-of-range', '/practice/slackShare'],
  [
    'a pin of no kind',
    changed((j) => (j.options[1].pins = [{ id: 'p', pin: 'glue' }])),
    'wrong-value',
    '/options/1/pins/0/pin',
    /"way" or "through"/,
  ],
  [
    'a pin without its points',
    changed((j) => (j.options[1].pins = [{ id: 'p', pin: 'through', homeRun: 'h-15' }])),
    'missing-key',
    '/options/1/pins/0/points',
  ],
  ['an amendment that is a list', changed((j) => (j.code.amendments = { a: [1] })), 'wrong-type', '/code/amendments/a'],
  [
    'an outline of two corners',
    changed((j) => (j.site.areas[0].outline.length = 2)),
    'out-of-range',
    '/site/areas/0/outline',
    /at least 3/,
  ],
  ['a price book of another kind', changed((j) => (j.priceBook = 'cheap')), 'wrong-type', '/priceBook'],
  ['a price book half there', changed((j) => (j.priceBook = { id: 'x' })), 'missing-key', '/priceBook/dated'],
  [
    'too many options',
    changed((j) => (j.options = Array.from({ length: 61 }, () => j.options[0]))),
    'out-of-range',
    '/options',
    /at most 60/,
  ],
  [
    'the first of several, in the order of the file',
    changed((j) => {
      j.notes = 3;
      j.title = 4;
      j.circuits[0].amps = 'x';
    }),
    'wrong-type',
    '/title',
  ],
];
