/** The demo jobs as they are offered. All of them are invented. */
export const demoWords = {
  washer: {
    title: 'Two panels behind a washer',
    about: '24 circuits, NEC 2023; one 40-space panel, in place or along the laundry wall',
  },
  'l-shaped': {
    title: 'L-shaped basement, half finished',
    about: '42 circuits, NEC 2020; a slanted wall, engineered joists, a beam in the way',
  },
  'small-house': {
    title: 'Small house, worn-out panel',
    about: '9 circuits; a service panel in a good spot',
  },
} as const;
