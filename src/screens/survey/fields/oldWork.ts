import { CABLE_KINDS } from '../../../standards/cable';
import { surveyWords as say } from '../../../words/en/survey';
import { choice, count, countOrNone, type Group, group, length, type Spec, text, words, yesNo } from './spec';

const { f, heads, choices } = say;
const U = 'may be unknown';
const lugs = choice({ value: 60, say: choices.degrees60 }, { value: 75, say: choices.degrees75 });

export const PANEL: readonly Group[] = [
  group(
    heads.place,
    words('service', 'feeder-fed')('/role', f.role, U),
    words('surface', 'recessed')('/mount', f.mount),
    length('/on/left', f.left),
    length('/on/bottom', f.bottom),
    length('/size/width', f.width),
    length('/size/depth', f.depth),
    length('/size/height', f.height),
    yesNo('/upright', f.upright),
    words('top', 'bottom')('/mainAt', f.mainAt),
    choice(
      { value: 'left', say: choices.left },
      { value: 'right', say: choices.right },
      { value: 'lift-off', say: choices['lift-off'] },
    )('/doorHinge', f.doorHinge, U),
    yesNo('/weatherproof', f.weatherproof, U),
  ),
  group(
    heads.cover,
    countOrNone(choices.noMain)('/mainAmps', f.mainAmps, U),
    count('/busAmps', f.busAmps, U),
    lugs('/lugs', f.lugs, U),
    count('/spaces', f.spaces, U),
    count('/knockouts', f.knockouts, U),
    count('/neutralTerminals', f.neutralTerminals, U),
    count('/groundTerminals', f.groundTerminals, U),
    length('/topHandle', f.topHandle, U),
    yesNo('/bonded', f.bonded, U),
    yesNo('/electrodeLandsHere', f.electrode, U),
  ),
];

/** What may hang on an old panel, as job files name it. */
export const ATTACHED_KINDS = [
  'transfer switch',
  'generator inlet',
  'solar',
  'battery',
  'second feeder',
  'transformer',
  'timer',
  'monitor',
  'alarm',
  'SPD',
  'charger control',
  'other',
] as const;

export const GROUP: readonly Group[] = [
  group(
    null,
    words('top', 'bottom', 'left', 'right', 'back')('/entry', f.entry),
    length('/pivot', f.pivot, U),
    yesNo('/drawsBack', f.drawsBack, U),
  ),
];
/** Fields of a group's tails, once they are measured. */
export const TAILS: readonly Spec[] = [
  length('/tails/hot', f.tailHot, U),
  length('/tails/neutral', f.tailNeutral, U),
  length('/tails/ground', f.tailGround, U),
];

/** Kinds of large loads, as job files name them. */
export const LOAD_KINDS = [
  'dishwasher',
  'disposal',
  'microwave',
  'water heater',
  'dryer',
  'range',
  'oven',
  'cooktop',
  'air conditioner',
  'heat pump',
  'electric heat',
  'EV charger',
  'pump',
  'other',
] as const;
export const LOAD: readonly Group[] = [
  group(null, words(...LOAD_KINDS)('/kind', f.kind), count('/va', f.va, U), yesNo('/onPanel', f.onPanel, U)),
];

export const CODE: readonly Group[] = [
  group(
    say.parts['/code'],
    choice(...[2017, 2020, 2023, 2026].map((value) => ({ value, say: `NEC ${value}` })))('/edition', f.edition, U),
    text('/place', f.place),
  ),
];

export const HOUSE: readonly Group[] = [
  group(
    say.parts['/house'],
    count('/yearBuilt', f.yearBuilt, U),
    count('/floorAreaFt2', f.floorAreaFt2, U),
    count('/panelAreaFt2', f.panelAreaFt2, U),
    count('/smallApplianceCircuits', f.smallAppliance, U),
    count('/laundryCircuits', f.laundryCircuits, U),
    yesNo('/occupied', f.occupied, U),
    yesNo('/panelLit', f.panelLit, U),
    yesNo('/otherSource', f.otherSource, U),
  ),
];

export const FEEDER: readonly Group[] = [
  group(
    say.parts['/feeder'],
    text('/from/panel', f.feederPanel),
    countOrNone(choices.utilityBreaker)('/from/breakerAmps', f.feederBreaker, U),
    lugs('/from/lugs', f.feederLugs, U),
    yesNo('/from/spaceFree', f.feederSpace, U),
    length('/outside', f.feederOutside, U),
    choice({ value: 3, say: '3' }, { value: 4, say: '4' })('/wires', f.wires, U),
    words('none', 'metal', 'PVC')('/raceway', f.raceway, U),
    yesNo('/wholeDwelling', f.wholeDwelling, U),
  ),
  group(
    heads.cable,
    words(...CABLE_KINDS)('/cable/kind', f.cableKind, U),
    text('/cable/size', f.cableSize, U),
    words('Cu', 'Al')('/cable/metal', f.cableMetal, U),
    words(1, 2)('/cable/hots', f.cableHots, U),
    words('insulated', 'bare', 'none')('/cable/neutral', f.cableNeutral, U),
    yesNo('/cable/ground', f.cableGround, U),
    choice(
      { value: 60, say: choices.degrees60 },
      { value: 75, say: choices.degrees75 },
      { value: 90, say: choices.degrees90 },
    )('/cable/insulation', f.cableInsulation, U),
  ),
];
