/** What may turn up and is not in the price, one sentence each. */
export const unitWords = {
  'untraced circuit': 'a circuit that nobody knows, traced and tagged',
  'hidden splice': 'a splice found hidden, put into a box that can be reached',
  'cable too short': 'a cable that proves too short, spliced with 8 ft of new cable',
  'circuit gains AFCI': 'a circuit that comes to pass 6 ft and gains AFCI',
  'hole more': 'a hole through wood',
  'drywall strip': 'drywall opened and closed',
  'aluminum branch cable': 'a branch cable that proves to be aluminum, added to its splice',
  'circuit more': 'a circuit not on the survey, taken over',
  'failed inspection': 'an inspection repeated for what is not of our making',
  'plumber called': 'the plumber called once',
} as const;
