/** What the keys of a job are called by the people who survey and price it: "Not known of the joists: depth." */
const KEYS: Readonly<Record<string, string>> = {
  // circuits
  amps: 'breaker rating',
  continuous: 'whether its load is on for three hours or more',
  hardWired: 'whether it is wired in or plugged in',
  protection: 'AFCI or GFCI protection today',
  serves: 'rooms it serves',
  va: 'load in VA',
  partner: 'the circuit it shares a neutral with',
  volts: 'voltage',
  poles: 'poles',
  addsOutlet: 'whether an outlet is added',
  // cables
  kind: 'kind of cable',
  size: 'conductor size',
  metal: 'copper or aluminum',
  hots: 'number of hot conductors',
  neutral: 'whether it has a neutral, and insulated or bare',
  ground: 'whether it has an equipment grounding conductor',
  insulation: 'insulation temperature on its jacket',
  wholeLength: 'whole length to its first outlet',
  condition: 'condition',
  ownPivot: 'first support that can stay',
  ownTails: 'free conductor in the old panel',
  pivot: 'first support that can stay',
  tails: 'free conductor in the old panel',
  drawsBack: 'whether it can be drawn back',
  // panels
  bonded: 'whether neutral and ground are bonded in it',
  busAmps: 'bus rating',
  doorHinge: 'side its door hinges on',
  electrodeLandsHere: 'whether the grounding electrode conductor lands in it',
  groundTerminals: 'number of ground terminals',
  neutralTerminals: 'number of neutral terminals',
  knockouts: 'number of knockouts',
  lugs: 'terminal marking, 60 or 75 °C',
  mainAmps: 'main breaker',
  role: 'whether it is service equipment or fed by a feeder',
  spaces: 'number of breaker spaces',
  topHandle: 'height of its highest breaker handle',
  weatherproof: 'whether it is weatherproof',
  becomes: 'what feeds it when it stays as a subpanel, and from which breaker',
  // feeder
  breakerAmps: 'breaker in front of it',
  spaceFree: 'whether a breaker space is free there',
  raceway: 'raceway it runs in',
  wholeDwelling: 'whether the whole dwelling hangs on it',
  wires: 'number of wires',
  outside: 'its length outside the room, along its way from its source to where it comes in',
  // house and code
  edition: 'code year in force',
  floorAreaFt2: 'floor area',
  panelAreaFt2: 'floor area served by this panel',
  laundryCircuits: 'number of laundry circuits',
  smallApplianceCircuits: 'number of small-appliance circuits',
  occupied: 'whether it is lived in during the work',
  otherSource: 'whether it has another source of power, and how that connects',
  panelLit: 'whether there is light at the panel',
  yearBuilt: 'year it was built',
  onPanel: 'whether it hangs on this panel',
  // site
  use: 'use',
  cover: 'ceiling cover',
  ceiling: 'ceiling height',
  depth: 'depth',
  direction: 'direction',
  firstJoist: 'place of the first joist',
  spacing: 'spacing',
  underside: 'height of the underside',
  hinge: 'side it hinges on',
  swings: 'side it swings to',
  build: 'what it is built of',
  insulated: 'whether it is insulated',
  studSpacing: 'stud spacing',
  thickness: 'thickness',
  sizes: 'its sizes: those of an ordinary one stand for them',
  height: 'height',
};
const FRAMING_KIND = 'kind of joist';
const STATE = { now: 'today', after: 'after the work' } as const;

/** camelCase of a key nobody has named yet, in words. */
const spelled = (key: string): string => key.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();

const list = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

export const fieldWords = {
  /** True where a key has words of its own. */
  isNamed: (key: string): boolean => Object.hasOwn(KEYS, key),
  field: (v: { key: string; ofJoists: boolean; state: 'now' | 'after' | null; face: string | null }) =>
    [
      v.ofJoists && v.key === 'kind' ? FRAMING_KIND : Object.hasOwn(KEYS, v.key) ? KEYS[v.key] : spelled(v.key),
      ...(v.face === null ? [] : [`on its ${v.face} side`]),
      ...(v.state === null ? [] : [STATE[v.state]]),
    ].join(' '),
  hung: (v: { kind: string; asks: 'becomes' | 'answer' }) =>
    v.asks === 'becomes'
      ? `whether the ${v.kind} hung on it moves to the new panel or ends with this work`
      : `what becomes of the ${v.kind} hung on it`,

  circuit: (v: { label: string; number: string }) =>
    v.label === '' ? `circuit ${v.number}` : `${v.label} (circuit ${v.number})`,
  cable: (v: { circuits: readonly string[]; id: string; only: boolean }) =>
    v.circuits.length === 0
      ? `the cable “${v.id}”`
      : v.only
        ? `the cable of ${list(v.circuits)}`
        : `the cable “${v.id}” of ${list(v.circuits)}`,
  group: (v: { id: string }) => `the cable group “${v.id}”`,
  oldPanel: (v: { id: string; only: boolean }) => (v.only ? 'the old panel' : `the old panel “${v.id}”`),
  newPanel: (v: { option: string; only: boolean }) => (v.only ? 'the new panel' : `the new panel of “${v.option}”`),
  option: (v: { title: string }) => `the option “${v.title}”`,
  feeder: 'the feeder',
  feederSource: 'the source of the feeder',
  house: 'the house',
  code: 'the code in force',
  wall: (v: { id: string }) => `the wall “${v.id}”`,
  named: (v: { kind: string; id: string; only: boolean }) => (v.only ? `the ${v.kind}` : `the ${v.kind} “${v.id}”`),
  partition: 'partition',
  area: 'area',
  bay: {
    'panned return': 'joist bay that is a return duct',
    blocked: 'blocked joist bay',
    insulated: 'insulated joist bay',
  },
  joists: (v: { id: string; only: boolean }) => (v.only ? 'the joists' : `the joists of “${v.id}”`),
  keepOut: 'a region you keep free of cable',
  job: 'the job',

  notKnown: (v: { thing: string; field: string }) => `Not known of ${v.thing}: ${v.field}.`,
  toAnswer: (v: { thing: string; field: string; value: string }) =>
    `To be answered for ${v.thing}: ${v.field} (surveyed: ${v.value}).`,
  toAnswerOnly: (v: { thing: string; field: string }) => `To be answered for ${v.thing}: ${v.field}.`,
  list,
} as const;
