/** The coverage page: what the rules ask for, in which code years, what is checked and where it was read. */
export const coverageWords = {
  title: 'What is checked, and what is not',
  lead: 'Every rule this program knows, with its section in each code year and how firm that is. Requirements are in our own words; the adopted code book and local amendments always win. No 2026 book was read: all its numbers are unverified. A rule that is not checked is named with the reason, never passed in silence.',
  open: 'What is checked: all rules by code year',
  columns: {
    rule: 'Rule',
    asks: 'What it asks for',
    status: 'Status',
    source: 'Read in',
    standing: 'Standing',
  },
  filter: 'Show',
  filters: {
    all: 'all',
    judged: 'judged',
    reminder: 'reminders',
    'not covered': 'not checked',
    split: 'practice split',
  },
  status: {
    judged: 'judged from the survey and the plan',
    reminder: 'a duty of the day: always said, not judged',
    'not covered': 'not checked',
  },
  statusShort: { judged: 'judged', reminder: 'reminder', 'not covered': 'not checked' },
  none: 'not asked for',
  opening: 'Opening the list of rules…',
  readIn: (v: { source: string }) => `Read in: ${v.source}.`,
  standing: {
    confirmed: 'confirmed by two or more sources',
    'one source': 'one source',
    memory: 'from memory, no source found',
    unverified: 'unverified',
  },
  standingShort: { confirmed: '', 'one source': 'one source', memory: 'from memory', unverified: 'unverified' },
  weakest: (v: { upTo2023: string }) => `${v.upTo2023}; 2026 unverified`,
  question: (v: { names: string }) => `On the question sheet: ${v.names}.`,
  counts: (v: { judged: number; reminder: number; 'not covered': number }) =>
    `${v.judged} judged, ${v.reminder} reminders, ${v['not covered']} not checked, each with its reason.`,
  sourcesTitle: 'Where the facts were read',
  sources: {
    'arc-fault':
      'continuing-education course pages on 210.12 (2014 to 2026), EC&M questions and answers, inspectors’ forums, state amendments',
    'ground-fault': 'EC&M, IAEI Magazine (2021), ELECTRICAL CONTRACTOR (2023), continuing-education course pages',
    surge: 'continuing-education course pages, NFPA Journal preview (2019), a state’s adoption slides',
    service: 'continuing-education course pages, ELECTRICAL CONTRACTOR, inspectors’ forums, state bulletins',
    'working space':
      'ELECTRICAL CONTRACTOR (work spaces), EC&M (ducts), continuing-education course pages, inspectors’ forums',
    location: 'EC&M questions and answers, continuing-education course pages, inspectors’ forums',
    panel: 'continuing-education course pages, EC&M, IAEI Magazine (breakers), inspectors’ forums',
    splices: 'EC&M questions and answers, IAEI Magazine, inspectors’ forums, a public copy of 314.28',
    cable:
      'ELECTRICAL CONTRACTOR (334.15), IAEI Magazine (300.4), a public copy of the 2023 text, building-code forums',
    framing: 'IRC R502.8 and R602.6 in builders’ trade press',
    feeder: 'public copies of the ampacity and grounding tables, EC&M questions and answers, inspectors’ forums',
    load: 'ELECTRICAL CONTRACTOR, continuing-education course pages, EC&M on 2026',
    safety: 'OSHA 1910.333 and its interpretation of 28 July 2006, EPA lead rule pages',
  },
  mattersTitle: 'Other matters that decide a panel job',
  mattersLead:
    'What a master electrician and an inspector ask besides the clauses: each is answered by a rule, or it is said where else it stands, or why it does not.',
  columnsMatters: { matter: 'Matter', rules: 'Rules', where: 'Where it stands' },
} as const;

/** A matter, the rules that answer it, and where else it is answered or why it is not. */
export const MATTERS = [
  [
    'Record of each cable: print, metal, entry, jacket, tails, pivot',
    ['NM-PRINT'],
    'In the survey, by group or by cable.',
  ],
  [
    'What can be drawn back, and what must not be bent',
    ['CABLE-BEND'],
    'Routing reuses a cable only from its pivot and only where it can be drawn back.',
  ],
  [
    'Look-alike cables are traced before a cut',
    ['SAFE'],
    'Hours for each untraced circuit are in the price; the crew sheet says tone and tag first.',
  ],
  [
    'Small shifts in place before a relocation',
    ['KNOCKOUTS'],
    'Not a rule: the place map shows every position along the walls, in place included.',
  ],
  ['Raceway as a way', ['WIREWAY', 'CAB-FILL'], 'Routing and price.'],
  [
    'When to keep the old can',
    ['OLD-CAN'],
    'The inspector’s yes or no is on the question sheet; the owner’s is in the option.',
  ],
  [
    'Places that allow no nonmetallic cable',
    ['NM-USE'],
    'On the question sheet; it changes every new cable and its price.',
  ],
  ['Knockouts and connectors, counted', ['KNOCKOUTS', 'CABLE-SEC'], 'By number; the side of each is not recorded.'],
  ['Neutral and ground terminals', ['NEUTRAL-BAR', 'GND-BOND'], 'An added ground bar is priced.'],
  ['Main breaker or lugs, top or bottom', ['OCPD-PANEL', 'BACKFED', 'ORIENT'], 'In the survey and the option.'],
  ['Fault current and ratings', ['SCCR'], 'A reminder: the utility’s figure is not in the job file.'],
  ['Things hung on the old panel', ['HANG', 'SOURCES'], 'The price waits until each has an answer.'],
  ['Electrode and bonding', ['SVC-GROUND', 'SVC-TO-SUB'], 'Moving the electrode conductor is a price line of its own.'],
  ['Circuits without ground', ['UNGROUNDED'], 'New cable always has one.'],
  ['Aluminum branch circuits', ['AL-CU'], 'Listed joints and their time are priced.'],
  [
    'The dead piece left behind a cut',
    ['OPENINGS'],
    'Drawing it out, or making it safe and tagging it, is a priced task.',
  ],
  [
    'Fire and draft stopping',
    ['FIRE-STOP', 'NM-BUNDLE'],
    'The floor membrane under I-joists (IRC R302.13) is not checked: the survey does not say which ceiling is one.',
  ],
  [
    'Joists, I-joists and trusses',
    ['JOIST-HOLE', 'NM-BORE', 'NM-PAR'],
    'I-joists and trusses wait for the maker’s chart.',
  ],
  [
    'Temporary power during the outage',
    [],
    'No clause asks for it: the outage is told by circuit, and temporary power is an allowance of the price book.',
  ],
  ['All at once or roll-over', [], 'No clause: a matter of time and price.'],
  ['Go or no-go hour, way back', ['SAFE'], 'No clause: the crew sheet has the order of work.'],
  ['Inspection hold points', ['SAFE'], 'The crew sheet keeps boxes open for the rough-in.'],
  [
    'The questions to ask before the bid',
    ['AFCI-LOCAL', 'EMDISC', 'WS-HEIGHT'],
    'The question sheet, printable, each answer with name and date.',
  ],
  ['The wall: damp, anchors, what is behind', ['DAMP', 'FLUSH'], 'What is behind the wall is looked at on site.'],
  ['Room door against the worker', ['WS-WIDTH'], 'Told as a matter for the inspector.'],
  ['Floor area and small-appliance circuits of this panel', ['LOAD'], 'Without them the load cannot be told.'],
  [
    'Equipment known to be defective',
    ['GUTS', 'BREAKER-LIST'],
    'No new interior is planned in an old cabinet; makers are never named.',
  ],
  ['Costs that are forgotten', [], 'No clause: fees, permit, second trip and disposal are lines of the price book.'],
  ['Priced changes', [], 'No clause: unit prices are in the price book.'],
  ['Papers', ['DIR'], 'Closeout sheet; no clause but the directory.'],
  ['Test record', ['TORQUE', 'MWBC', 'GND-BOND'], 'Lines to fill in on the crew sheet.'],
  ['Two old panels merged', ['MWBC', 'GROUP', 'SPACES'], 'Shared neutrals must end in one panel.'],
  [
    'The upstream end of the feeder',
    ['TEMP', 'FDR-SIZE', 'FDR-TAP'],
    'Breaker, terminals and free space at the source are in the survey; working space there is not.',
  ],
  ['Drops on bare walls', ['SURFACE'], 'In a sleeve, on a board or in a stud bay, always.'],
  [
    'Only touched work is judged',
    [],
    'Rules look at what this option moves, lengthens or keeps; old faults elsewhere are not searched for.',
  ],
] as const;
