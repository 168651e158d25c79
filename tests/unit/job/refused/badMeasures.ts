import { defaultBook } from '../../../../src/pricing/defaultBook';
import { changed, type Row } from './spoil';

export const MEASURES: readonly Row[] = [
  ['a room drawn the wrong way round', changed((j) => j.site.outline.reverse()), 'not-clockwise', '/site/outline'],
  ['a wall without length', changed((j) => (j.site.outline[1].at = [0, 0.001])), 'zero-length', '/site/outline/0/at'],
  [
    'a room that crosses itself',
    changed((j) => ([j.site.outline[0].at, j.site.outline[1].at] = [j.site.outline[1].at, j.site.outline[0].at])),
    'crosses-itself',
    '/site/outline',
  ],
  [
    'a room that folds back on itself',
    changed((j) => (j.site.outline[2].at = [-40, 168])),
    'crosses-itself',
    '/site/outline',
  ],
  [
    'a room that touches itself',
    changed((j) => (j.site.outline[5].at = [132, 168])),
    'crosses-itself',
    '/site/outline',
  ],
  [
    'an area with two corners in one place',
    changed((j) => (j.site.areas[1].outline[2] = j.site.areas[1].outline[1])),
    'zero-length',
    '/site/areas/1/outline/1',
  ],
  [
    'an area of no size',
    changed(
      (j) =>
        (j.site.areas[0].outline = [
          [0, 0],
          [10, 0],
          [20, 0],
        ]),
    ),
    'crosses-itself',
    '/site/areas/0/outline',
  ],
  [
    'a framing outline that crosses itself',
    changed(
      (j) =>
        (j.site.framing[0].outline = [
          [0, 0],
          [9, 9],
          [9, 0],
          [0, 9],
        ]),
    ),
    'crosses-itself',
    '/site/framing/0/outline',
  ],
  [
    'a bay that crosses itself',
    changed(
      (j) =>
        (j.site.bays = [
          {
            id: 'b',
            state: 'blocked',
            outline: [
              [0, 0],
              [9, 9],
              [9, 0],
              [0, 9],
            ],
          },
        ]),
    ),
    'crosses-itself',
    '/site/bays/0/outline',
  ],
  [
    'a partition without length',
    changed((j) => (j.site.partitions[0].to = j.site.partitions[0].from)),
    'zero-length',
    '/site/partitions/0/to',
  ],
  [
    'an existing run of one place',
    changed(
      (j) =>
        (j.cableGroups[2].path = [
          [1, 2, 3],
          [1, 2, 3],
        ]),
    ),
    'zero-length',
    '/cableGroups/2/path',
  ],
  [
    'a cable’s own run of one place',
    changed(
      (j) =>
        (j.homeRuns[4].ownPath = [
          [1, 2, 3],
          [1, 2, 3.001],
        ]),
    ),
    'zero-length',
    '/homeRuns/4/ownPath',
  ],
  [
    'an existing run of one point',
    changed((j) => (j.cableGroups[2].path.length = 1)),
    'out-of-range',
    '/cableGroups/2/path',
  ],
  [
    'a reachable part that runs backward',
    changed(
      (j) =>
        (j.cableGroups[0].reachable = [
          [0, 9],
          [20, 10],
        ]),
    ),
    'backward-interval',
    '/cableGroups/0/reachable/1',
  ],
  [
    'a door beyond its wall',
    changed((j) => (j.site.openings[0].on.left = 150)),
    'beyond-wall',
    '/site/openings/0/on/left',
    /150 in to 182 in .* 168 in long/,
  ],
  [
    'a window before its wall',
    changed((j) => (j.site.openings[1].on.left = -1)),
    'beyond-wall',
    '/site/openings/1/on/left',
  ],
  [
    'a new panel beyond its wall',
    changed((j) => (j.options[1].enclosure.on.left = 170)),
    'beyond-wall',
    '/options/1/enclosure/on/left',
  ],
  [
    'a sleeve without length',
    changed((j) => (j.site.sleeves = [{ id: 's', from: [1, 1, 1], to: [1, 1, 1], diameter: 1, metal: true }])),
    'zero-length',
    '/site/sleeves/0/to',
  ],
  [
    'hours that run backward',
    changed((j) => {
      j.priceBook = structuredClone(defaultBook);
      Object.assign(j.priceBook.tasks[3], { low: 2, likely: 1, high: 3 });
    }),
    'backward-range',
    '/priceBook/tasks/3',
    /found 2, 1, 3/,
  ],
  [
    'an allowance that runs backward',
    changed((j) => {
      j.priceBook = structuredClone(defaultBook);
      Object.assign(j.priceBook.allowances[0], { low: 1, likely: 9, high: 3 });
    }),
    'backward-range',
    '/priceBook/allowances/0',
  ],
  [
    'a keep-out that crosses itself',
    changed(
      (j) =>
        (j.options[0].pins = [
          {
            id: 'p',
            pin: 'keep out',
            outline: [
              [0, 0],
              [9, 9],
              [9, 0],
              [0, 9],
            ],
            fromZ: 0,
            toZ: 9,
          },
        ]),
    ),
    'crosses-itself',
    '/options/0/pins/0/outline',
  ],
];
