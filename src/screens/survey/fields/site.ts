import { buildSchema } from '../../../job/schema';
import { USES } from '../../../standards/uses';
import { surveyWords as say } from '../../../words/en/survey';
import { PALETTE } from '../palette';
import {
  angle,
  choice,
  type Group,
  group,
  length,
  lengthOrNone,
  money,
  type Spec,
  stands,
  text,
  words,
  yesNo,
} from './spec';

const { f, heads, choices } = say;
const U = 'may be unknown';
const build = words(...buildSchema.options);

const faceNowAfter = (at: string, prefix: (v: { what: string }) => string = ({ what }) => what): readonly Spec[] =>
  (['now', 'after'] as const).flatMap((state) => [
    build(`${at}/${state}/build`, prefix({ what: f[state]({ what: f.build }) }), U),
    yesNo(`${at}/${state}/insulated`, prefix({ what: f[state]({ what: f.insulated }) }), U),
  ]);
const stud = lengthOrNone(choices.open)('/studSpacing', f.studSpacing, U);
const point = (field: string, what = ''): readonly Spec[] => [
  length(`${field}/0`, what ? `${what} ${f.x}` : f.x),
  length(`${field}/1`, what ? `${what} ${f.y}` : f.y),
];

const sizes = choice({ value: 'measured', say: choices.measured })('/sizes', f.sizes, U);

export const WALL: readonly Group[] = [
  group(null, length('/thickness', f.thickness, U), stud),
  group(heads.wallNow, ...faceNowAfter('/face')),
];

export const PARTITION: readonly Group[] = [
  group(null, length('/thickness', f.thickness, U), length('/height', f.height, U), stands('/exists', f.stands), stud),
  group(heads.place, ...point('/from', f.from), ...point('/to', f.to)),
  group(
    heads.wallNow,
    ...faceNowAfter('/front', ({ what }) => f.front({ what: what.toLowerCase() })),
    ...faceNowAfter('/back', ({ what }) => f.back({ what: what.toLowerCase() })),
  ),
];

export const OPENING: readonly Group[] = [
  group(
    null,
    words('door', 'window', 'cased opening')('/kind', f.kind),
    stands('/exists', f.stands),
    length('/on/left', f.left),
    length('/on/bottom', f.sill),
    length('/width', f.width),
    length('/height', f.height),
    sizes,
    choice(
      { value: 'left', say: choices.left },
      { value: 'right', say: choices.right },
      { value: null, say: choices.noLeaf },
    )('/hinge', f.hinge, U),
    choice(
      { value: 'front', say: choices.front },
      { value: 'back', say: choices.back },
      { value: null, say: choices.noLeaf },
    )('/swings', f.swings, U),
  ),
];

export const AREA: readonly Group[] = [
  group(
    heads.states,
    ...(['now', 'after'] as const).flatMap((state) => [
      words(...USES)(`/state/${state}/use`, f[state]({ what: f.use }), U),
      words('open joists', 'drywall', 'lay-in')(`/state/${state}/cover`, f[state]({ what: f.cover }), U),
      length(`/state/${state}/ceiling`, f[state]({ what: f.ceiling }), U),
      length(`/state/${state}/floorRise`, f[state]({ what: f.floorRise })),
    ]),
  ),
];

export const FRAMING: readonly Group[] = [
  group(
    null,
    choice({ value: 0, say: choices.alongX }, { value: 90, say: choices.alongY })('/direction', f.direction, U),
    length('/spacing', f.spacing, U),
    length('/firstJoist', f.firstJoist, U),
    length('/depth', f.joistDepth, U),
    words('sawn', 'I-joist', 'open-web truss', 'LVL')('/kind', f.kind, U),
    length('/underside', f.underside, U),
  ),
];

export const BAY: readonly Group[] = [group(null, words('panned return', 'blocked', 'insulated')('/state', f.state))];

export const OBSTACLE: readonly Group[] = [
  group(
    null,
    words(...PALETTE.map((t) => t.kind))('/kind', f.kind),
    stands('/exists', f.stands),
    ...point('/corner'),
    angle('/turn', f.turn),
    length('/bottom', f.hang),
    length('/size/width', f.width),
    length('/size/depth', f.depth),
    length('/size/height', f.height),
    sizes,
  ),
  group(
    heads.blocks,
    yesNo('/blocksCable', f.blocksCable),
    yesNo('/blocksSpace', f.blocksSpace),
    yesNo('/foreign', f.foreign),
    length('/clearance', f.clearance),
    yesNo('/stored', f.stored),
    money(say.fixed)('/moveCents', f.moveCents),
  ),
];

export const SLEEVE: readonly Group[] = [
  group(null, length('/diameter', f.diameter), yesNo('/metal', f.metalSleeve)),
  group(heads.place, ...point('/from'), length('/from/2', f.z)),
  group(heads.far, ...point('/to'), length('/to/2', f.z)),
];

export const SURVEY: readonly Group[] = [
  group(say.parts['/survey'], words('walk-through', 'full')('/grade', f.grade), text('/by', f.by), text('/on', f.on)),
];
