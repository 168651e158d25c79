/** Sentences about what a person has settled against the program's own answer. */
export const pinWords = {
  dearer: (v: { dollars: string }) => `The plan costs ${v.dollars} more than without it.`,
  cheaper: (v: { dollars: string }) => `The plan costs ${v.dollars} less than without it.`,
  same: () => 'The plan costs the same without it.',
  cannotHold: (v: { why: string }) => `It cannot hold. ${v.why}`,

  // placing one
  add: 'Pin something',
  kind: 'What to pin',
  kinds: {
    through: 'lead a home run through a place',
    'splice at': 'splice at a place',
    'keep out': 'keep cable out of a region',
    row: 'run cables as one row',
  },
  homeRun: 'Home run',
  homeRuns: 'Home runs',
  noRuns: 'Pick the home runs first.',
  oneRow: 'A row takes two home runs or more.',
  x: 'From left',
  y: 'From below',
  z: 'Height',
  width: 'Width',
  depth: 'Depth',
  fromZ: 'From',
  toZ: 'Up to',
  place: 'Pin it',
  morePoints: 'A further place of the same home run is added to its way.',
} as const;
