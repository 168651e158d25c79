/* Job file *.job.json and `plan --json`, schema 1. Lengths in, angles degrees counter-clockwise, areas ft2, volumes in3, loads VA, currents A, times h.
   Money: every …Cents is whole US cents; unit prices are dollars with at most 4 decimals. x right, y up the sheet, z up from the finished floor.
   Site lengths are whole 1/64 in. Outline corners run CLOCKWISE seen from above; the wall with a corner's id starts at that corner. Face 'front' lies right
   of from→to (outline: the room side), 'back' left. On a face, `left` is the thing's left edge from the face's left end, as a person facing it sees it.
   An obstacle's `corner` is its lowest x,y before `turn`; it turns about that corner. No optional key in a job: absent = schema error; what the surveyor
   does not know is 'unknown'; what does not exist is null or []. Ids are stable texts made by the caller, never list positions.
   Cable size and awg are texts of the ungrounded conductors: '14' … '1', '1/0' … '4/0', then kcmil '250' …; a cable's trade name ('12/2 w/G', '2-2-2-4 Al SER') is derived.
   Shares and rates are fractions (0.05 = 5 %). Partitions are given by their centerline. A result holds no clock, timing or random id; lists are sorted by id (legs in order along the cable, from the house to the new panel). */
export type Id = string;
export type In = number;
export type Cents = number;
export type U<T> = T | 'unknown';
export type Edition = 2017 | 2020 | 2023 | 2026;
export type Pt = readonly [x: In, y: In];
export type Pt3 = readonly [x: In, y: In, z: In];
export type Use =
  | 'unfinished storage'
  | 'mechanical'
  | 'laundry'
  | 'bath'
  | 'clothes closet'
  | 'other closet'
  | 'stair'
  | 'recreation'
  | 'bedroom'
  | 'hall'
  | 'kitchen'
  | 'living'
  | 'dining'
  | 'family'
  | 'den'
  | 'library'
  | 'sunroom'
  | 'garage'
  | 'outdoors'
  | 'attic'
  | 'crawl space'
  | 'other';
export type Build = 'poured' | 'block' | 'furred' | 'open studs' | 'finished studs' | 'plywood board';
export interface Face {
  build: U<Build>;
  insulated: U<boolean>;
}
export interface TwoStates<T> {
  now: T;
  after: T;
} // today, and after the finishing
export interface OnWall {
  wall: Id;
  face: 'front' | 'back';
  left: In;
  bottom: In;
}
export interface Size {
  width: In;
  depth: In;
  height: In;
}
export interface Cable {
  kind: U<
    'NM' | 'NM without ground' | 'AC' | 'MC' | 'SE-R' | 'SE-U' | 'UF' | 'knob-and-tube' | 'conductors in raceway'
  >;
  size: U<string>;
  metal: U<'Cu' | 'Al'>;
  hots: U<1 | 2>;
  neutral: U<'insulated' | 'bare' | 'none'>;
  ground: U<boolean>;
  insulation: U<60 | 75 | 90>;
} // as printed on the jacket; unknown counts as 60
export interface Tails {
  hot: In;
  neutral: In;
  ground: In;
} // free conductor inside the old panel
export interface Enclosure {
  id: Id;
  on: OnWall;
  size: Size;
  mount: 'surface' | 'recessed';
  upright: boolean;
  mainAt: 'top' | 'bottom';
  mainAmps: U<number | null>;
  role: U<'service' | 'feeder-fed'>;
  bonded: U<boolean>;
  electrodeLandsHere: U<boolean>;
  busAmps: U<number>;
  spaces: U<number>;
  knockouts: U<number>;
  neutralTerminals: U<number>;
  groundTerminals: U<number>;
  lugs: U<60 | 75>;
  topHandle: U<In>;
  doorHinge: U<'left' | 'right' | 'lift-off'>;
  weatherproof: U<boolean>;
  finish: string;
  trim: string;
  attached: { kind: string; becomes: U<'moves' | 'ends'>; answer: U<string> }[];
} // topHandle = center of the highest handle, in its highest position, above the can's bottom
export interface CableGroup {
  id: Id;
  enclosure: Id;
  path: Pt3[];
  reachable: [from: In, to: In][];
  pivot: U<In>;
  drawsBack: U<boolean>;
  entry: 'top' | 'bottom' | 'left' | 'right' | 'back';
  tails: U<Tails>;
} // path, reachable, pivot measured from the old panel
export interface HomeRun {
  id: Id;
  group: Id;
  circuits: Id[];
  cable: Cable;
  ownPath: Pt3[] | null;
  ownPivot: U<In> | null;
  ownTails: U<Tails> | null;
  wholeLength: U<In>;
  traced: boolean;
  condition: string[];
} // ONE physical cable; two circuits = shared neutral
export interface Circuit {
  id: Id;
  number: string;
  label: string;
  poles: 1 | 2;
  volts: 120 | 240;
  amps: U<number>;
  partner: Id | null;
  serves: U<Use[]>;
  va: U<number>;
  continuous: U<boolean>;
  protection: U<'none' | 'AFCI' | 'GFCI' | 'AFCI and GFCI'>;
  addsOutlet: boolean;
  hardWired: U<boolean>;
  flags: string[];
} // partner = the circuit on the other leg of a shared neutral
export interface FeederEnd {
  panel: string;
  lugs: U<60 | 75>;
  breakerAmps: U<number | null>;
  spaceFree: U<boolean>;
} // a service panel: panel 'utility', breakerAmps null
export interface Feeder {
  from: FeederEnd;
  entersAt: Pt3;
  outside: U<In>; // along its way, from its source to where it comes into the room
  path: Pt3[];
  cable: Cable;
  raceway: U<'none' | 'metal' | 'PVC'>;
  wires: U<3 | 4>;
  wholeDwelling: U<boolean>;
} // path runs from entersAt to the old panel
export type Way =
  | 'stays'
  | 'reuse'
  | 'cut-in'
  | 'splice can'
  | 'splice in new panel'
  | 'through raceway'
  | 'new home run'
  | 'stays on old panel';
export type Pin = { id: Id } & (
  | { pin: 'way'; homeRun: Id; way: Way }
  | { pin: 'through'; homeRun: Id; points: Pt3[] }
  | { pin: 'splice at'; homeRuns: Id[]; at: Pt3 }
  | { pin: 'keep out'; outline: Pt[]; fromZ: In; toZ: In }
  | { pin: 'row'; homeRuns: Id[] }
);
export interface Option {
  id: Id;
  title: string;
  kind: 'in place' | 'relocate';
  enclosure: Enclosure;
  pins: Pin[];
  moves: { obstacle: Id; to: Pt | 'away' }[];
  serviceDisconnect: { on: OnWall | 'outdoors'; amps: number } | null;
  replaces: { enclosure: Id; becomes: 'removed' | 'splice can' | 'subpanel' | 'program chooses' }[];
}
export interface PriceBook {
  id: Id;
  dated: string;
  materials: { id: Id; unit: string; dollars: number; source: string }[];
  tasks: { id: Id; unit: string; low: number; likely: number; high: number; source: string }[]; // hours
  dollarsPerCrewHour: number;
  overheadRate: number;
  profit: { as: 'margin' | 'markup'; rate: number };
  tax: { rate: number; on: string[] };
  allowances: { id: Id; low: number; likely: number; high: number }[];
  wage: { dollarsPerHour: number; burden: number } | null;
  minimumDollars: number;
  roundToDollars: number;
  lead: { id: Id; days: number }[];
}
export interface Job {
  format: 'backboard-job';
  schema: 1;
  id: Id;
  title: string;
  changedOn: string;
  survey: { grade: 'walk-through' | 'full'; by: string; on: string };
  code: {
    edition: U<Edition>;
    place: string;
    amendments: Record<string, string | number | boolean>;
    saidBy: Record<string, { by: string; on: string; note: string }>; // who answered a question of the sheet, by its key
  };
  house: {
    yearBuilt: U<number>;
    floorAreaFt2: U<number>;
    panelAreaFt2: U<number>;
    occupied: U<boolean>;
    panelLit: U<boolean>;
    smallApplianceCircuits: U<number>;
    laundryCircuits: U<number>;
    loads: { id: Id; kind: string; va: U<number>; onPanel: U<boolean> }[];
    otherSource: U<boolean>;
  };
  site: {
    outline: { id: Id; at: Pt; face: TwoStates<Face>; studSpacing: U<In | null>; thickness: U<In> }[];
    partitions: {
      id: Id;
      from: Pt;
      to: Pt;
      thickness: U<In>;
      height: U<In>;
      exists: TwoStates<boolean>;
      front: TwoStates<Face>;
      back: TwoStates<Face>;
      studSpacing: U<In | null>;
    }[];
    openings: {
      id: Id;
      kind: 'door' | 'window' | 'cased opening';
      exists: TwoStates<boolean>;
      on: OnWall;
      width: In;
      height: In;
      sizes: U<'measured'>;
      hinge: U<'left' | 'right' | null>;
      swings: U<'front' | 'back' | null>;
    }[];
    areas: {
      id: Id;
      outline: Pt[];
      state: TwoStates<{ use: U<Use>; cover: U<'open joists' | 'drywall' | 'lay-in'>; ceiling: U<In>; floorRise: In }>;
    }[]; // floorRise = platform or ledge above the floor
    framing: {
      id: Id;
      outline: Pt[] | null;
      direction: U<number>;
      firstJoist: U<In>;
      spacing: U<In>;
      depth: U<In>;
      kind: U<'sawn' | 'I-joist' | 'open-web truss' | 'LVL'>;
      underside: U<In>;
    }[]; // null = whole room; firstJoist = its distance from the origin, across
    bays: { id: Id; outline: Pt[]; state: 'panned return' | 'blocked' | 'insulated' }[];
    obstacles: {
      id: Id;
      kind: string;
      corner: Pt;
      turn: number;
      size: Size;
      sizes: U<'measured'>; // 'unknown' = those of an ordinary one
      bottom: In;
      blocksCable: boolean;
      blocksSpace: boolean;
      foreign: boolean;
      clearance: In;
      exists: TwoStates<boolean>;
      stored: boolean;
      moveCents: Cents | null;
    }[]; // stored = goods anyone can carry away; moveCents null = fixed
    sleeves: { id: Id; from: Pt3; to: Pt3; diameter: In; metal: boolean }[]; // raceways already there
  };
  enclosures: Enclosure[];
  feeder: Feeder;
  cableGroups: CableGroup[];
  homeRuns: HomeRun[];
  circuits: Circuit[];
  options: Option[];
  practice: {
    slackShare: number;
    slackMinimum: In;
    freeInBox: In;
    tailInPanel: In;
    tailOfFeeder: In;
    cutStep: In;
    shortestPiece: In;
    bundling: 'strict' | 'over 24 in only';
    nextSizeInRows: boolean;
    tenPercentException: boolean;
    spareSpaces: number;
    maxSpliceSpots: number;
    spliceSpotCents: Cents;
  };
  priceBook: PriceBook | 'default';
  terms: {
    quote: 'fixed' | 'range' | 'time and material';
    people: 1 | 2 | 3;
    cutOver: 'all at once' | 'roll-over';
    startsAt: number;
    endsAt: number;
  };
  stock: { cable: string; lengths: In[] }[];
  alternates: { id: Id; taken: boolean }[];
  answers: {
    rule: string;
    subject: Id;
    answer: string | number | boolean;
    by: string;
    on: string;
    note: string;
    photo: Id | null;
  }[];
  photos: {
    id: Id;
    pinnedTo: Id;
    takenOn: string;
    type: 'image/jpeg';
    widthPx: number;
    heightPx: number;
    data: string | null;
  }[];
  people: { contractor: Record<string, string>; customer: Record<string, string> };
  issued: { on: string; paper: string; option: Id; engine: string; figures: Tally }[];
  notes: string;
}
export interface Tally {
  stops: number;
  lowCents: Cents;
  likelyCents: Cents;
  highCents: Cents;
  crewHours: number;
  outageHours: number;
  conductorsSpliced: number;
  boxes: number;
  afciAdded: number;
} // afciAdded = circuits
export interface Leg {
  from: Pt3;
  to: Pt3;
  cable: 'old' | 'new';
  row: Id | null;
  by:
    | 'joist side'
    | 'through joists'
    | 'joist underside'
    | 'running board'
    | 'above lay-in'
    | 'opened drywall'
    | 'wall board'
    | 'stud bay'
    | 'sleeve'
    | 'raceway'
    | 'inside box'
    | 'inside panel';
}
export interface Reach {
  jacket: In;
  hot: In;
  neutral: In;
  ground: In;
} // spare length of each; negative = short
export interface Run {
  homeRun: Id;
  way: Way;
  why: string;
  reach: Reach | null;
  cutIn: Pt3 | null;
  box: Id | null;
  newCable: Cable | null;
  legs: Leg[];
  codeLength: In;
  codeLengthWithTails: In;
  cutLength: In; // the three lengths: new cable only
  holes: number;
  supports: number;
  plates: number;
  conductorsSpliced: number;
  blockedBy: Id[];
}
export interface Box {
  id: Id;
  at: Pt3;
  on: 'joist' | 'wall' | 'splice can' | 'new panel' | 'wireway';
  size: string;
  material: 'metal' | 'nonmetallic';
  volumeIn3: number;
  fillIn3: number;
  homeRuns: Id[];
  conductorsSpliced: number;
}
export interface Row {
  id: Id;
  by: 'bored' | 'board' | 'raceway' | 'wireway' | 'sealed hole' | 'loose';
  length: In;
  path: Pt3[];
  homeRuns: Id[];
  conductors: number;
  factor: number;
  limit: string;
  holes: { at: Pt3; diameter: In; homeRuns: Id[] }[];
} // conductors = current-carrying
export interface Worked {
  id: Id;
  value: number;
  unit: string;
  steps: { say: string; value: number | string; unit: string; section: string }[];
}
export interface Finding {
  rule: string;
  subject: Id;
  outcome: 'holds' | 'fails' | 'cannot be told';
  effect: 'stops the job' | 'extra work' | 'verify in field' | 'note' | null; // subject 'job' = the whole
  measured: number | null;
  required: number | null;
  unit: string;
  section: string;
  standing: 'confirmed' | 'one source' | 'memory' | 'unverified';
  amendment: string | null;
  split: string | null; // what the two sides say where practice is split and nobody has answered
  say: string;
  look: string | null;
  remedies: { say: string; cents: Cents | null }[];
  shape: Pt3[] | null;
}
export interface Line {
  id: Id;
  kind: 'material' | 'labor' | 'allowance' | 'fee' | 'overhead' | 'profit' | 'tax';
  item: Id;
  say: string; // item in plain words
  quantity: number;
  unit: string;
  dollarsEach: number;
  lowCents: Cents;
  likelyCents: Cents;
  highCents: Cents;
  homeRuns: Id[];
  rule: string | null;
  alternate: Id | null;
}
export type Proof = { best: true } | { best: false; atMostAbove: number }; // share above the bound: 0.012 = 1.2 %
export interface Plan {
  option: Id;
  grade: 'live' | 'final' | 'proven';
  tally: Tally;
  electrode: { size: string; length: In } | null;
  spds: number;
  connectors: { size: string; count: number }[];
  knockoutsUsed: number;
  loadMethod: string;
  runs: Run[];
  boxes: Box[];
  rows: Row[];
  feeder: {
    way: 'kept' | 'extended' | 'replaced';
    why: string;
    legs: Leg[];
    cutLength: In; // new cable; 0 = kept
    outside: U<In>; // the part of the new cable's way outside the room; 'unknown' = not in cutLength
    holes: { at: Pt3; diameter: In | null }[]; // joists bored for it alone; diameter null = its outside is not known
    supports: number;
    plates: number;
    cable: Cable;
    breakerAmps: number | null;
    egc: { size: string; metal: 'Cu' | 'Al' } | null;
    worked: Worked[];
    choices: {
      way: 'kept' | 'extended' | 'replaced';
      possible: boolean;
      outcome: 'holds' | 'fails' | 'cannot be told';
      cents: Cents | null;
      say: string;
    }[]; // keep, extend, replace, compared; empty in a live plan and where there is no feeder
  };
  afci: {
    circuit: Id;
    required: 'yes' | 'no' | 'inspector decides' | 'cannot be told';
    codeLength: In;
    tapeIt: boolean;
    section: string;
    remedy: string | null;
  }[]; // one entry a circuit, every circuit
  afciOpen: number; // entries of `afci` left to the inspector or not told
  findings: Finding[];
  doesNotApply: Record<string, number>;
  load: Worked[]; // doesNotApply: rule → number of subjects
  directory: { space: number; leg: 'A' | 'B'; circuit: Id | null; text: string; protection: string }[];
  price: {
    complete: boolean;
    missing: string[];
    assumed: { id: string; say: string }[]; // in the price though nobody told it: JSON pointer, and how it was taken
    missingSay: string[]; // missing: price book ids and JSON pointers; missingSay: one sentence for each, in its order
    unverifiedShare: number;
    lines: Line[];
    alternates: {
      id: Id;
      say: string;
      required: boolean;
      taken: boolean;
      cents: Cents;
      rule: string | null;
      spaces: number;
      hours: number;
    }[];
    packages: {
      id: 'good' | 'better' | 'best';
      say: string;
      alternates: Id[];
      lowCents: Cents;
      likelyCents: Cents;
      highCents: Cents;
      hours: number;
      taken: boolean;
    }[];
    drivers: { id: Id; say: string; cents: Cents }[];
    unitChanges: { id: Id; say: string; unit: string; cents: Cents }[];
    forgettingAfci: { circuits: number; cents: Cents };
    quote: {
      asked: 'fixed' | 'range' | 'time and material';
      as: 'fixed' | 'range' | 'time and material';
      fixedCents: Cents | null;
      hourCents: Cents;
      materialShare: number;
      say: string;
    };
  };
  time: {
    days: number;
    byTask: { id: Id; say: string; hours: number; when: 'before outage' | 'outage' | 'after' }[];
    outage: { circuit: Id; hours: number }[];
    people: 1 | 2 | 3;
    cutOver: 'all at once' | 'roll-over';
    crews: { people: 1 | 2 | 3; cutOver: 'all at once' | 'roll-over'; days: number; outageHours: number }[];
    longOutageHours: number;
    goNoGo: number | null; // hour of the clock
    holds: { id: Id; when: 'before outage' | 'outage' | 'after'; say: string }[];
    remarks: { id: Id; say: string }[];
  };
  cuts: {
    cable: string;
    coils: { length: In; bought: boolean; pieces: { homeRun: Id; length: In }[]; left: In; kept: boolean }[];
    cents: Cents;
    proof: Proof;
  }[];
  order: { item: Id; say: string; quantity: number; unit: string; leadDays: number | null }[];
  proof: { splices: Proof; rows: Proof };
  pins: { pin: Id; cents: Cents | null; say: string }[];
}
export interface Advice {
  option: Id | null;
  say: string;
  reasons: { say: string; figure: string; value: number }[];
  flips: { say: string; change: { path: string; value: unknown }; option: Id | null; cents: Cents }[];
  visible: { option: Id; things: { id: 'panel' | 'boxes' | 'cans' | 'cable'; say: string }[] }[];
  confidence: {
    say: string;
    unknowns: { path: string; value: unknown; say: string; turns: boolean; option: Id | null; cents: Cents }[];
  } | null;
}
export interface Place {
  on: OnWall;
  upright: boolean;
  clear: boolean;
  rules: string[];
  why: string;
  cents: Cents | null;
  afciAdded: number | null;
  past: Id[];
  conductorsSpliced: number | null;
  grade: 'splices only' | 'live' | 'final' | null;
}
export interface Result {
  format: 'backboard-plan';
  schema: 1;
  engine: string;
  job: Id;
  edition: U<Edition>;
  plans: Plan[];
  advice: Advice;
  unknown: { path: string; say: string; blocks: string[] }[];
  notCovered: { rule: string; why: string }[];
  places: Place[] | null;
  comparisons: {
    option: Id;
    against: Id;
    rows: { id: Id; kind: Line['kind']; say: string; cents: Cents; againstCents: Cents; differsCents: Cents }[];
    differsCents: Cents;
    breakEvens: { id: Id; say: string; unit: string; now: number; at: number }[];
  }[];
} // places: only with --map; one entry a wall face, left and height
export interface Fault {
  error: { type: string; path: string; say: string };
} // path = JSON pointer into the input; exit code 2
export type Output = Result | Fault | { files: { file: string; output: Result | Fault }[] };
/** `npm run --silent calc -- NAME < in.json` prints CalcOutput or Fault: the pocket calculations, the same code the rules use. */
export interface CalcOutput {
  outcome: 'holds' | 'fails' | 'cannot be told' | 'value';
  figures: Record<string, number | string | boolean>;
  worked: Worked;
}
export interface CalcInput {
  'box-fill': {
    edition: Edition;
    conductors: Count[];
    grounds: Count[];
    deviceYokes: Count[];
    clamps: boolean;
    fittings: number;
    boxIn3: number | null;
  };
  'cabinet-fill': { sectionIn2: number; conductors: (Count & { insulation: string })[]; splicesIn2: number };
  'pull-box': { pull: 'straight' | 'angle' | 'splice'; racewaysIn: number[] };
  ampacity: {
    edition: Edition;
    metal: 'Cu' | 'Al';
    awg: string;
    startColumn: 60 | 75 | 90;
    terminals: U<60 | 75 | 90>;
    limitColumn: 60 | 75 | null;
    conductors: number;
    ambientF: number;
    togetherIn: number | null;
    inRaceway: boolean;
    breakerAmps: number | null;
  };
  feeder: {
    edition: Edition;
    metal: 'Cu' | 'Al';
    awg: string;
    cable: string;
    breakerAmps: number;
    terminals: U<60 | 75>;
    wholeDwelling: U<boolean>;
    continuousAmps: number;
    otherAmps: number;
    conductors: number;
    ambientF: number;
    upsizedFrom: string | null;
  };
  'voltage-drop': {
    volts: number;
    amps: number;
    feetOneWay: number;
    metal: 'Cu' | 'Al';
    awg: string;
    ohmPerKft: number | null;
    raceway: 'PVC' | 'aluminum' | 'steel';
    powerFactor: number;
  };
  load: {
    edition: Edition;
    method: 'standard' | 'optional' | 'existing' | 'measured';
    areaFt2: number;
    smallAppliance: number;
    laundry: number;
    fixedVA: number[];
    rangeVA: number[];
    dryerVA: number[];
    ovenVA: number[];
    cooktopVA: number[];
    wholeDwelling: boolean;
    newHvac: boolean;
    heatVA: number;
    coolVA: number;
    largestMotorVA: number;
    evVA: number;
    otherVA: number;
    peakVA: number | null;
  };
  afci: {
    edition: Edition;
    volts: number;
    amps: number;
    serves: U<Use[]>;
    outsideIn: number;
    tailsIn: number;
    addsOutlet: boolean;
    shortenedOnly: boolean;
    newHomeRun: boolean;
    amendments: Record<string, string>;
  };
  'working-space': {
    edition: Edition;
    size: Size;
    bottom: In;
    topHandle: In;
    free: { left: In; right: In; depth: In; height: In };
    existingDwelling: boolean;
    amps: number;
    voltsToGround: number;
  };
  boring: {
    member: 'joist' | 'bearing stud' | 'other stud';
    depthIn: number;
    holeIn: number | null;
    edgeIn: number | null;
    notchIn: number | null;
  }; // edgeIn = hole's edge to the nearest edge of the member
  bend: { cable: string | null; diameterIn: number | null }; // cable as its trade name
  'raceway-fill': {
    raceway: 'EMT' | 'PVC 40' | 'PVC 80';
    tradeSize: string;
    nipple: boolean;
    conductors: (Count & { insulation: string })[];
  };
  'terminal-bend': { awg: string; wires: number; wall: 'side' | 'opposite' };
  'dedicated-space': {
    edition: Edition;
    size: Size;
    bottom: In;
    structure: In;
    thing: { left: In; right: In; out: In; outTo: In; from: In; to: In };
  }; // left, right from the can's left edge; out, outTo from the wall; from, to above the floor
  arrangement: { spaces: number; circuits: { id: Id; poles: 1 | 2; va: number; partner: Id | null }[] };
  cut: {
    coils: { length: In; dollars: number; have: number | null }[];
    pieces: { length: In; count: number }[];
    keepFrom: In | null;
    remnantShare: number;
  };
}
export interface Count {
  awg: string;
  count: number;
}
