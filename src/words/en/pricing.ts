/** Sentences about money, hours and cutting. */
export const pricingWords = {
  bookTitle: 'Price book',
  bookIntro:
    'Every item of work the program can count, and what the price book is asked for when it is done once. A job carries its own price book; `"priceBook": "default"` is the one shown here. Its prices are invented and its hours are common practice without a source: put your own in before you quote. Where an id is missing the price is incomplete and says which.',
  bookRates: (v: {
    rate: string;
    overhead: string;
    profit: string;
    profitAs: 'margin' | 'markup';
    tax: string;
    taxed: string;
  }) =>
    `A labor-hour of one electrician is $${v.rate} at cost. Overhead ${v.overhead} of direct cost; profit ${v.profit} as ${v.profitAs === 'margin' ? 'a margin (share of the price before tax)' : 'a markup (share of the cost)'}; tax ${v.tax} on ${v.taxed}.`,
  bookRest: (v: { least: string; step: number }) =>
    `The least that is charged before tax is $${v.least}; a price is shown ${v.step === 0 ? 'to the cent' : `to the nearest $${v.step}`}. Both stand as lines of their own. A material for nothing or less, a task of no hours and a labor-hour of $0 are no prices: what needs them is incomplete.`,
  bookSpread: (v: { low: string; high: string; walk: string; labor: string; metal: string; parts: string }) =>
    `Low and high are the 10th and 90th percentile of the whole, not the sum of the worst: a task spreads from its low to its high hours, a material from ${v.low} to ${v.high} of its price, and lines that move together are tied (correlation of labor ${v.labor}, of one metal's cable ${v.metal}, of other parts ${v.parts}). After a walk-through survey every distance from likely is ${v.walk} times as long. All of these are common practice without a source.`,
  bookMove:
    '`move:<obstacle id>` (each, an allowance) takes its price from the obstacle in the job file. The price of a splice spot is the job’s own `practice.spliceSpotCents`.',
  bookItems: 'Items of work',
  bookKinds: 'Kinds',
  bookMaterials: 'Materials',
  bookTasks: 'Hours by task',
  bookLead: 'Lead time, invented; what is not listed is on the shelf',
  bookAllowances: 'Allowances and fees',
  bookCoils: 'A coil is bought under its own id: `cable:12/2 NM@250` is 250 ft of it.',
  cutNotPositive: 'Expected a length above zero, in inches.',
  cutNotCount: 'Expected a whole number, zero or more.',
  cutNotDollars: 'Expected a price of zero or more, in dollars.',
  cutNotShare: 'Expected a share from 0 to 1.',
  cutNotKeep: 'Expected null, or a length above zero, in inches.',
  cutNotList: 'Expected a list.',
  cutTooMany: (v: { most: number }) => `Expected at most ${v.most} pieces.`,
  cutTooLong: (v: { longest: string }) =>
    `A piece is longer than every length there is to cut it from (the longest is ${v.longest} in).`,
  cutTooLittle: 'What there is does not hold all the pieces.',
  cutUndecided: 'No way to cut all the pieces was found before the search was stopped, and none was ruled out.',
} as const;
