/** Everything the screens say by themselves; sentences of the result come with it. */
const plural = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const percent = (share: number): string => {
  const p = share * 100;
  return p < 10 ? p.toFixed(1) : String(Math.round(p));
};

const standing = {
  'one source': 'one source',
  memory: 'section from memory',
  unverified: 'section unverified',
} as const;

export const screenWords = {
  // the sheet
  jobs: 'Jobs',
  openFile: 'Open a job file',
  saveFile: 'Save job file',
  close: 'Close',
  undo: 'Undo',
  redo: 'Redo',
  toDark: 'Dark',
  toLight: 'Light',
  toField: 'Large controls',
  toDesk: 'Small controls',
  keysOff: 'Single-key shortcuts off',
  keysOn: 'Single-key shortcuts on',
  screenTitle: 'This screen',
  newJob: 'New job',
  jobTitle: 'Title of this job',
  keeping: 'keeping …',
  kept: (v: { time: string }) => `kept here ${v.time}`,
  notKept: 'not kept',
  sheetsTitle: 'Sheets',
  sheets: { survey: 'Survey', layout: 'Lay out', check: 'Check', price: 'Price', closeout: 'Closeout' },
  owed: {
    notPlanned: '–',
    unknown: 'unknown',
    begin: 'begin here',
    options: (v: { count: number }) => (v.count === 0 ? 'no option' : plural(v.count, 'option', 'options')),
    stops: 'stops',
    verify: (v: { count: number }) => `${v.count} to verify`,
    noStops: 'no stops',
    range: 'range',
    noPrice: 'no price',
    issued: (v: { count: number }) => (v.count === 0 ? 'not issued' : `${v.count} issued`),
  },
  noOption: 'No option yet.',
  measureOn: 'Measure and draw on sheet 1:',
  thenOption: 'Then make an option on sheet 2:',
  pageTitle: (v: { number: number; sheet: string; job: string }) => `${v.number} ${v.sheet} · ${v.job}`,
  none: 'none',
  columnTitle: 'Option and what it comes to',
  optionsTitle: 'Options',
  optionStopped: (v: { title: string }) => `${v.title}: something stops it`,
  inPlace: (v: { nth: number | null }) => (v.nth === null ? 'In place' : `In place ${v.nth}`),

  // the way in
  startLead:
    'A basement distribution panel must be renewed: replace it where it hangs, or relocate it, and where to? From a survey of the house, the way of every home run, the rules of the code year, hours, outage and price are worked out for each option.',
  measureTitle: 'What a survey measures first',
  measureFirst: [
    'Is the old panel service equipment or fed by a feeder? Unknown stops the price.',
    'The room: walls, doors, windows, joists and their direction, height to the joists.',
    'Everything solid within 3 ft of where a panel could hang, and overhead.',
    'Where each group of cables leaves the old panel, and the last staple that can stay.',
    'Each cable by its jacket print, and which circuits it carries.',
    'Both ends of the feeder: breaker, terminal marking, cable.',
  ],
  demosTitle: 'Demo jobs',
  keptTitle: 'Kept in this browser',
  keptAt: (v: { day: string; time: string }) => `${v.day} ${v.time}`,
  isOpen: 'open here',
  untitled: 'Untitled job',

  // notices
  notOpened: (v: { name: string }) => `${v.name} was not opened.`,
  notDone: (v: { edit: string }) => `Not done: ${v.edit}.`,
  faultAt: 'At',
  jobKeptOpen: 'The job that is open is unchanged.',
  nothingChanged: 'Nothing was changed.',
  dismiss: 'Close',
  planningFailed: 'The planner stopped on an error of the program.',
  planningFailedDetail: (v: { detail: string }) => `The job is unharmed; no figures can be shown for it. (${v.detail})`,
  planAgain: 'Plan again',
  keepAgain: 'Try again',
  parted:
    'This job was changed in another tab too. What you see here is kept as a job of its own; nothing was overwritten.',
  repaired: (v: { count: number }) => `The file was opened with ${plural(v.count, 'change', 'changes')}:`,
  updateReady: 'A new version of the program is ready.',
  loadUpdate: 'Change over',
  planning: (v: { done: number; of: number }) => `Planning: ${v.done} of ${v.of}`,
  planned: 'Planned.',
  staleFigures: 'The figures shown are from before the last edit.',

  // the drawing
  planTitle: 'Plan',
  planOf: (v: { option: string }) => `Plan, ${v.option}`,
  planAlt: (v: { option: string }) =>
    `The room from above with the work of ${v.option}. Its figures are in the lists beside and below.`,
  linesTitle: 'Lines',
  lines: {
    stays: 'old, stays',
    away: 'old, goes away',
    fresh: 'new, a row of cables',
    feeder: 'feeder',
    zone: 'kept clear',
  },
  whole: 'Whole plan',
  closer: 'Closer',
  release: (v: { homeRun: string }) => `${v.homeRun} singled out: show all`,

  // the panel
  panelTitle: 'New panel',
  panelWall: 'Wall',
  panelOffset: 'From left end',
  panelBottom: 'Bottom AFF',
  notALength: (v: { typed: string }) =>
    `“${v.typed}” is not read as a length. 6'-4", 76, 76 1/2, 1.93 m are. Kept as typed.`,

  // findings
  findingsTitle: 'Findings',
  noConflict: 'No conflict found in the checks made.',
  noConflictShort: 'no conflict found in the checks made',
  notPlannedYet: 'not planned yet',
  effect: {
    'stops the job': 'Stops the job',
    'extra work': 'Extra work',
    'verify in field': 'Verify in field',
    note: 'Note',
  },
  andMore: (v: { count: number }) => `and ${v.count} more`,
  found: 'found',
  ruleFigure: 'rule',
  standing,
  /** A section with how firm it is, where that is less than confirmed. */
  cited: (v: { section: string; standing: 'confirmed' | 'one source' | 'memory' | 'unverified' }): string =>
    v.standing === 'confirmed' || v.section === '' ? v.section : `${v.section} (${standing[v.standing]})`,
  look: (v: { look: string }) => `On site: ${v.look}`,
  amended: (v: { amendment: string }) => `By local answer: ${v.amendment}`,
  split: (v: { sides: string }) => `Practice is split: ${v.sides}`,
  from: (v: { price: string }) => `from ${v.price}`,
  showNotes: (v: { count: number }) => plural(v.count, 'note', 'notes'),
  foldNotes: 'Fold the notes away',

  // tally
  tallyTitle: 'Tally',
  noFigure: '–',
  in: 'in',
  boxes: (v: { count: number }) => (v.count === 1 ? 'box' : 'boxes'),
  notComplete: 'not complete',
  afciOpen: 'cannot be told',
  afciOpenBrief: '?',
  tally: {
    price: 'Price, range',
    labor: 'Labor',
    outage: 'Outage, house',
    splices: 'Conductors spliced',
    afci: 'Circuits gaining AFCI',
    stops: 'Stops the job',
  },
  tallyBrief: {
    price: 'price',
    priceOpen: 'price, open',
    labor: 'labor',
    outage: 'outage',
    splices: 'spliced',
    afci: 'AFCI',
    stops: 'stops',
  },

  // title block
  cellJob: 'Job',
  cellOption: 'Option',
  cellCode: 'Code year',
  codeYear: (v: { edition: number }) => `NEC ${v.edition}`,
  codeUnknown: 'not known',
  cellSurvey: 'Survey',
  cellRevision: 'Revision',
  revision: (v: { issued: number; day: string }) => `${v.issued} · ${v.day}`,
  months: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  grade: { 'walk-through': 'Walk-through', full: 'Full, cover off' },
  aid: 'Planning aid. Local code and the inspector decide.',
  cautions:
    'Planning aid: local code and the inspector decide. Panel work is licensed work under a permit, dead and proved dead. Cover off is energized work. With the main off, line-side conductors stay live until the utility opens the service. Stop and ask at engineered lumber, aluminum or knob-and-tube wiring, brittle insulation, asbestos, lead.',

  // advice
  adviceTitle: 'Advice',
  adviceComing: 'The advice waits for all options.',
  noAdvice: 'No advice yet.',
  why: (v: { count: number }) => `Why, in ${plural(v.count, 'figure', 'figures')}`,
  showOption: (v: { letter: string }) => `Show ${v.letter}`,

  // lists
  colOption: 'Option',
  colPrice: 'Price: low, high, likely',
  colLabor: 'Labor',
  colOutage: 'Outage',
  colSplices: 'Spliced, boxes',
  colAfci: 'Gain AFCI',
  colStops: 'Stops the job',
  colCable: 'Cable',
  colCost: 'Cost',
  cutBest: 'least cost, proved',
  cutAbove: (v: { share: number }) => `within ${percent(v.share)} % of the least`,
  colItem: 'Item',
  colQuantity: 'Qty',
  runsTitle: 'Home runs',
  colTag: 'Tag',
  colServes: 'Serves',
  colWay: 'Way',
  colBox: 'Box',
  colCode: 'Code length',
  colCut: 'Cut length',
  colAfciShort: 'AFCI required',
  oldCan: 'can',
  blockedBy: (v: { things: string }) => `in the way: ${v.things}`,
  linesBehind: 'Lines behind the price',
  colLow: 'Low',
  colLikely: 'Likely',
  colHigh: 'High',
  notCheckedTitle: 'Not checked',
  unknownTitle: 'Not known, and what waits for it',
  nothingUnknown: 'Nothing a check waits for is unknown.',
  blocks: (v: { what: string }) => `waits: ${v.what}`,
  proofTitle: 'How good the search is',
  proofBest: 'the best there is, proved',
  proofAbove: (v: { share: number }) => `at most ${percent(v.share)} % above a proved bound`,
  proofOf: {
    splices: (v: { proof: string }) => `Ways and splice boxes: ${v.proof}.`,
    rows: (v: { proof: string }) => `Rows and holes: ${v.proof}.`,
  },
  holdsTitle: (v: { count: number }) => `Checked and holds: ${v.count}`,

  // crash
  crashTitle: 'The program met an error of its own.',
  crashSay:
    'Your job is not lost: save it as a file here, then reload. What was changed last is also kept in this browser.',
  crashReload: 'Reload',
  crashSayNoJob: 'No job is open. Reload; jobs kept in this browser are still there.',
  crashReport: 'Error report',
  crashReportSay:
    'A file for whoever mends the program: its version, the error, the names of your last edits. Nothing is sent; you decide who gets it.',
  crashWithJob: 'Put the job in too',
  crashSaveReport: 'Save error report',
  crashRead: 'Read it first',
} as const;
