/** Sentences of the price sheet. */
const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

export const priceWords = {
  title: (v: { option: string }) => `Lines behind ${v.option}`,
  kinds: {
    material: 'Material',
    labor: 'Labor, hours by task',
    allowance: 'Allowances',
    fee: 'Fees',
    overhead: 'On top of direct cost',
    profit: 'On top of direct cost',
    tax: 'On top of direct cost',
  },
  rateOf: (v: { percent: string; of: string }) => `${v.percent} % of ${v.of}`,
  each: 'Each',
  hour: 'h',
  openLine: (v: { line: string }) => `What is behind ${v.line}`,
  lineTitle: 'Line selected',
  eachFor: (v: { unit: string }) =>
    ({ h: 'Dollars an hour', ft: 'Dollars a foot', each: 'Dollars each' })[v.unit] ?? `Dollars a ${v.unit}`,
  quantity: 'Quantity',
  used: 'used',
  usedNote:
    'Feet used, at the price of a foot. “Cuts and order” shows the whole lengths bought and what those cost; the rest is stock.',
  behind: (v: { count: number }) => `For ${plural(v.count, 'home run', 'home runs')}`,
  behindWhole: 'For the whole job, no single home run.',
  because: (v: { section: string; say: string }) => (v.section === '' ? v.say : `${v.section}: ${v.say}`),
  becauseTitle: 'Asked for by a rule',
  likely: 'Likely price',
  nearest: 'the sum of these lines',

  missingTitle: 'Not in the price yet',
  missingNote: 'The price is higher than shown by what these come to.',
  driversTitle: 'What drives the range',
  driversNote: (v: { count: number }) =>
    v.count === 0
      ? 'Low and high are the same: nothing drives them apart.'
      : 'How much of the distance from low to high each brings, the largest first.',
  rangeTitle: 'How firm it is',
  rangeNote: 'Low and high are the 10th and 90th percentile of the whole, not the sum of the worst.',
  restsOn: 'Share of the direct cost resting on entries invented for the default book, or remembered',
  walkThrough: 'A walk-through survey, cover on, carries a range only. A full survey may carry a fixed price.',
  open: 'A fixed price stays open until what is not in the price is answered.',
  invented: 'This job uses the default price book: its prices are invented. Enter your own before you quote.',

  alternatesTitle: 'Alternates',
  required: (v: { section: string }) => (v.section === '' ? 'required' : `required, ${v.section}`),
  inPrice: 'in the price',
  mayTake: 'owner may take',
  mayDecline: 'owner may decline',
  ifAsked: (v: { circuits: number }) =>
    `if the inspector asks for it: ${plural(v.circuits, 'circuit', 'circuits')} not counted as gaining AFCI until then`,
  take: (v: { name: string }) => `Take ${v.name}`,
  leave: (v: { name: string }) => `Leave ${v.name}`,
  moreStops: (v: { count: number }) => `and ${v.count} more`,
} as const;

/** The parts of the sheet beside the options themselves. */
export const pricePartWords = {
  parts: { options: 'Options', range: 'Range', compare: 'Compare', day: 'Day', book: 'Price book' },
  notPlanned: 'The option is not planned yet.',
  linesTitle: 'Lines, likely',

  pictureTitle: 'How the price may come out',
  pictureNote:
    'Two thousand jobs drawn at random from the same lines, always the same ones. Low, likely and high are worked out, not drawn.',
  pictureAlt: 'Bars of how often each price comes out, with low, likely and high marked.',
  noPicture: 'Low and high are the same: there is nothing to draw.',
  offeredTitle: 'Offered as',
  offered: { fixed: 'Fixed sum', range: 'Range', 'time and material': 'Time and material' },
  offerEdit: (v: { as: string }) => `Offer as ${v.as}`,
  fixedSum: 'Fixed sum',
  hourly: 'A labor-hour, charged',
  materialOver: 'Material, over its cost',
  risksTitle: 'May turn up: prices by the piece',
  risksNote: 'Not in the price. Agreed on beforehand, so that what is found behind the cover is no quarrel.',
  noRisks: 'The book cannot price any of them whole.',
  each: (v: { unit: string }) => `a ${v.unit}`,
  forgettingTitle: 'What forgetting AFCI would cost',
  forgetting: (v: { count: number }) =>
    v.count === 0
      ? 'No circuit of this option has AFCI in its price because of this job.'
      : `${plural(v.count, 'circuit has', 'circuits have')} AFCI in this price because of this job, or cannot be told not to need it. A price that forgets it is short by`,

  compareTitle: (v: { option: string; against: string }) => `${v.option} beside ${v.against}`,
  alone: 'There is one option: nothing to compare it with.',
  same: 'Every line is the same.',
  difference: 'Difference',
  only: 'Lines that are the same are left out.',
  evensTitle: 'Where the two would cost the same',
  evensNote: 'Everything else as it is.',
  noEvens: 'No one price turns it.',
  now: 'Now',
  even: 'Even at',
  perUnit: (v: { unit: string }) => (v.unit === 'each' ? 'each' : `a ${v.unit}`),

  dayTitle: 'The day',
  people: 'People',
  cutOver: 'Cut over',
  cutOvers: { 'all at once': 'all at once', 'roll-over': 'rolled over, circuit by circuit' },
  startsAt: 'Work starts',
  endsAt: 'Work ends',
  setTerm: (v: { term: string }) => `Change ${v.term}`,
  days: 'Days',
  outageHouse: 'House dark',
  crewsTitle: 'With other crews',
  thisCrew: 'as planned',
  goNoGoTitle: 'Last hour to shut off',
  goNoGo: 'After it, put the cover back and come another day. Nine of ten outages end within the day if begun by then.',
  noGoNoGo: 'No hour of the day is early enough for nine of ten.',
  noOutage: 'Nothing of this option needs an outage.',
  longOutage: 'Nine of ten outages are not longer than',
  holdsTitle: 'Work waits for',
  offTitle: 'Off, by circuit',
  offAll: 'Every circuit is off for',
  circuit: 'Circuit',
  clock: (hour: number): string => {
    const whole = Math.floor(hour);
    const minutes = String(Math.round((hour - whole) * 60)).padStart(2, '0');
    return `${((whole + 11) % 12) + 1}:${minutes} ${whole % 24 < 12 ? 'am' : 'pm'}`;
  },

  packagesTitle: 'As packages',
  packagesNote: 'Good is what the job and its rules need. Taking one sets the alternates below.',
  takePackage: (v: { name: string }) => `Take package ${v.name}`,
  packageTaken: 'taken',
  take: 'Take',
  withAlternates: (v: { names: string }) => (v.names === '' ? 'nothing beyond what is required' : v.names),
  spaces: (v: { spaces: number }) =>
    v.spaces > 0 ? `takes ${plural(v.spaces, 'space', 'spaces')}` : `brings ${plural(-v.spaces, 'space', 'spaces')}`,
  hours: (v: { hours: number }) => `${v.hours > 0 ? '+' : '−'}${Math.abs(v.hours)} h`,
} as const;
