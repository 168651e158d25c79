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
