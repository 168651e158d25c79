/** What the entries of a price book are called on papers and screens. Ids stay what files and orders use. */

const MATERIALS: Readonly<Record<string, string>> = {
  board: 'plywood backboard',
  standoff: 'standoff for a masonry wall',
  spd: 'surge protective device',
  'ground bar': 'equipment ground bar kit',
  hub: 'hub of connected breakers',
  'tidy board': 'paint and straps for a tidy board',
  label: 'printed label',
  light: 'luminaire with its switch',
  'handle tie': 'listed handle tie',
  'knockout seal': 'seal for an unused knockout',
  'filler plate': 'breaker filler plate',
  'splice can': 'full cover for an old cabinet',
  staple: 'cable staple',
  plate: 'steel nail plate',
  'fire stop': 'fire-stop seal',
  'intersystem terminal': 'intersystem bonding termination',
  'bonding jumper': 'bonding jumper with clamps',
  'running board': 'running board across the joists',
  patch: 'drywall for a patch',
};

const TASKS: Readonly<Record<string, string>> = {
  survey: 'full survey, cover off',
  trace: 'tracing and tagging unknown circuits',
  'pre-test': 'testing neutrals before a cut',
  'load in': 'loading in and out, protecting, cleaning',
  'mount panel': 'mounting backboard and cabinet',
  'mount on masonry': 'extra for mounting on masonry',
  main: 'fitting the main breaker',
  'service disconnect': 'setting the service disconnect',
  spd: 'fitting the surge protective device',
  'ground bar': 'fitting the ground bar',
  hub: 'fitting and joining the hub',
  'set up connected': 'setting up connected breakers',
  'tidy board': 'painting the board, dressing cables',
  'roll over': 'switching off and restoring circuits one at a time',
  light: 'hanging the luminaire',
  'handle tie': 'fitting handle ties',
  'knockout seal': 'closing unused knockouts',
  'filler plate': 'closing unused breaker openings',
  'strip old panel': 'stripping the old panel',
  'strip cable': 'tagging and freeing cables in the old panel',
  'splice can': 'closing an old cabinet kept for splices',
  'remove old panel': 'taking down the old cabinet',
  'abandoned cable': 'pulling out dead cable or making it safe',
  'attached device': 'moving things hung on the old panel',
  reuse: 'drawing cables back and re-entering them',
  pull: 'setting up new cables',
  'pull ft': 'running new cable',
  'new home run': 'fishing new home runs to their first outlet',
  hole: 'boring holes',
  plate: 'fixing nail plates',
  'fire stop': 'sealing holes',
  'running board': 'putting up running boards',
  sleeve: 'putting up tubing',
  nipple: 'fitting nipples',
  wireway: 'hanging wireway',
  patch: 'opening and patching drywall',
  'lift tile': 'lifting ceiling tiles',
  'hang box': 'hanging splice boxes',
  'hang large box': 'hanging large splice boxes',
  splice: 'splicing',
  'splice Al': 'extra for splices with aluminum',
  pigtail: 'making pigtails',
  'irreversible splice': 'irreversible joints in an electrode conductor',
  'land 1p': 'landing one-pole circuits',
  'land AFCI': 'landing AFCI, GFCI and dual breakers',
  'land 2p': 'landing two-pole circuits',
  'land range': 'landing two-pole circuits of 40 A and more',
  'AFCI trouble': 'allowance for AFCI trips on old wiring',
  feeder: 'setting up the feeder',
  'feeder ft': 'running the feeder',
  'feeder breaker': 'fitting the feeder breaker',
  lug: 'landing and torquing feeder conductors',
  electrode: 'moving the grounding electrode conductor',
  'intersystem terminal': 'fitting the intersystem bonding termination',
  'bonding jumper': 'fitting bonding jumpers',
  shutdown: 'shutting down, proving dead, restoring',
  test: 'setting up and recording the tests',
  'test circuit': 'testing circuits',
  directory: 'checking and writing the directory',
  inspection: 'attending inspections',
  receptacle: 'fitting receptacles',
  cord: 'fitting appliance cords',
  occupied: 'extra for an occupied house',
  crowded: 'extra for a crowded or finished room',
};

const MONEY: Readonly<Record<string, string>> = {
  'splice spot': 'reserve for places with splices',
  permit: 'electrical permit',
  'utility pull': 'utility disconnect and reconnect',
  're-inspection': 'repeated inspection',
  disposal: 'disposal',
  'second trip': 'second trip for the final inspection',
  generator: 'temporary power',
  'lead-safe set-up': 'set-up for lead-safe work',
  'access hatch': 'access panel in a finished surface',
  paint: 'priming and painting patches',
  warranty: 'warranty reserve',
  plumber: 'plumber',
  'sheet-metal worker': 'sheet-metal worker',
  'drywall and paint trade': 'drywall and paint by others',
  'utility service upgrade': 'utility’s work on the service',
  minimum: 'up to the least charge',
  rounding: 'rounding',
  overhead: 'overhead',
  profit: 'profit',
};

const SPLICES: Readonly<Record<string, string>> = {
  '14-10 Cu': 'splice connector, 14 to 10 AWG copper',
  'Al-Cu': 'splice connector listed for aluminum to copper',
  '8-2': 'splice connector, 8 to 2 AWG',
  irreversible: 'irreversible connector for an electrode conductor',
};
const POLES: Readonly<Record<string, string>> = { '1p': 'one-pole', '2p': 'two-pole' };

const breaker = (kind: string): string => {
  const [poles = '', amps = '', protection] = kind.split(' ');
  const guard = { AFCI: ' AFCI', GFCI: ' GFCI', 'AFCI+GFCI': ' AFCI and GFCI' }[protection ?? ''] ?? '';
  return `${amps} A ${POLES[poles] ?? poles}${guard} breaker`;
};
const cable = (kind: string): string => {
  const [name = '', coil] = kind.split('@');
  const unread = name.includes('?') ? `cable not read in full (${name})` : `${name} cable`;
  return coil === undefined ? unread : `${unread}, length of ${coil} ft`;
};

/** Entries with a kind after the colon. */
const FAMILIES: Readonly<Record<string, (kind: string) => string>> = {
  cable,
  breaker,
  'feeder breaker': breaker,
  panel: (kind) => `panel of ${kind} spaces`,
  main: (kind) => `${kind} A main breaker`,
  'service disconnect': (kind) => `${kind} A service disconnect`,
  box: (kind) => `${kind} splice box with cover`,
  connector: (kind) => `${kind} in cable connector`,
  sleeve: (kind) => `${kind} in tubing`,
  nipple: (kind) => `${kind} in nipple`,
  wireway: (kind) => `${kind} wireway`,
  splice: (kind) => SPLICES[kind] ?? `splice connector ${kind}`,
  electrode: (kind) => `${kind} AWG copper electrode conductor`,
  receptacle: (kind) => `${kind} receptacle`,
  cord: (kind) => `${kind} four-wire cord`,
  finish: (kind) => `${kind} finish of the trim`,
  trim: (kind) => `${kind} decorative cover`,
  connected: (kind) => `connected breaker over a plain ${POLES[kind] ?? kind} one`,
};

const own = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

const inFamily = (id: string): string | undefined => {
  const colon = id.indexOf(':');
  return colon < 0 ? undefined : own(FAMILIES, id.slice(0, colon))?.(id.slice(colon + 1));
};

export const bookItemWords = {
  material: (id: string): string => inFamily(id) ?? own(MATERIALS, id) ?? id,
  task: (id: string): string => own(TASKS, id) ?? id,
  money: (id: string): string => own(MONEY, id) ?? id,
  tax: (v: { on: string }) => `tax on ${v.on}`,
  move: (v: { thing: string }) => `moving ${v.thing}`,
  /** Whatever kind of entry it is. */
  entry: (id: string): string => inFamily(id) ?? own(TASKS, id) ?? own(MATERIALS, id) ?? own(MONEY, id) ?? id,
  alternate: {
    spd: 'surge protective device',
    afci: 'AFCI breakers where the inspector decides',
    'white finish': 'white trim and door',
    'finish to match': 'trim and door painted to match the wall',
    'solid cover': 'solid decorative cover',
    'clear cover': 'clear decorative cover',
    dual: 'GFCI protection too, where a breaker is AFCI',
    connected: 'connected breakers with their hub',
    spares: 'next larger panel, for more spare spaces',
    'tidy board': 'painted board, cables dressed in rows',
    'extra circuit': 'one more 20 A circuit, within 50 ft',
  } as Readonly<Record<string, string>>,
  packages: { good: 'Good', better: 'Better', best: 'Best' },

  noPrice: (v: { entry: string }) => `The price book has no price for: ${v.entry}.`,
  noMovePrice: (v: { thing: string }) => `What it costs to move ${v.thing} is not in the survey.`,
  noRating: (v: { circuit: string }) => `The breaker of ${v.circuit} has no price: its rating is not known.`,
  noLength: (v: { cable: string; of: string }) =>
    `The length of ${v.cable} is not whole: the part hidden in the house, to the first outlet, is not known for ${v.of}.`,
  noMoney: (v: { entry: string; dollars: number }) =>
    `The price book has ${v.dollars < 0 ? `−$${-v.dollars}` : '$0'} for ${v.entry}: that is no price.`,
  noHours: (v: { entry: string }) => `The price book has no hours for ${v.entry}: 0 h is no time.`,
  noRate: 'The price book has $0 for a labor-hour: that is no rate.',
  noProfit: 'The profit asked for as a margin leaves no price that has it.',
} as const;
