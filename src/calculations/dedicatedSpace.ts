import { overlap } from '../geometry/freeIntervals';
import { DEDICATED_ABOVE_IN, SPACE_SOURCES } from '../standards/workingSpace';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkEdition, checkNumber, checkObject, firstFault, inputFault } from './inputChecks';
import type { CalcInput, CalcOutput } from './types';
import { step } from './worked';

type Input = CalcInput['dedicated-space'];
const length = { min: -12_000, max: 12_000 };
const size = { above: 0, max: 12_000 };

const checkThing = (thing: Input['thing']) =>
  firstFault(
    ...(['left', 'right', 'out', 'outTo', 'from', 'to'] as const).map((key) =>
      checkNumber(`/thing/${key}`, thing[key], length),
    ),
  ) ??
  (thing.right < thing.left
    ? inputFault('/thing/right', say.leftRight())
    : thing.outTo < thing.out
      ? inputFault('/thing/outTo', say.leftRight())
      : thing.to < thing.from
        ? inputFault('/thing/to', say.leftRight())
        : null);

/** Pocket calculation 'dedicated-space': does a thing reach into the zone of the panel's own width and depth (110.26(E)(1))? Touching does not. */
export const calcDedicatedSpace = (input: Input): Result<CalcOutput, Fault> => {
  const fault =
    checkObject('', input) ??
    checkObject('/size', input.size) ??
    checkObject('/thing', input.thing) ??
    firstFault(
      checkEdition(input.edition),
      checkNumber('/size/width', input.size.width, size),
      checkNumber('/size/depth', input.size.depth, size),
      checkNumber('/size/height', input.size.height, size),
      checkNumber('/bottom', input.bottom, length),
      checkNumber('/structure', input.structure, length),
      checkThing(input.thing),
    );
  if (fault) return err(fault);
  const { thing, edition } = input;
  const { section } = SPACE_SOURCES.dedicated[edition];
  const top = Math.min(input.bottom + input.size.height + DEDICATED_ABOVE_IN, input.structure);
  const ways = [
    { way: 'along', from: thing.left, to: thing.right, zoneTo: input.size.width },
    { way: 'out', from: thing.out, to: thing.outTo, zoneTo: input.size.depth },
    { way: 'up', from: thing.from, to: thing.to, zoneTo: top },
  ] as const;
  const meets = ways.map(({ from, to, zoneTo }) => overlap([from, to], [0, zoneTo]));
  const inZone = meets.every(Boolean);
  const steps = [
    step(say.zoneFoot(), `${input.size.width} x ${input.size.depth}`, 'in', section),
    step(say.zoneTop(), top, 'in', section),
    ...ways.map(({ way, from, to, zoneTo }, i) =>
      step(say.thingMeets({ way, zoneTo, meets: meets[i]! }), `${from} to ${to}`, 'in', section),
    ),
    step(say.thingInZone(), inZone ? 'yes' : 'no', '', section),
  ];
  return ok({
    outcome: 'value',
    figures: { inZone },
    worked: { id: 'dedicated-space', value: top, unit: 'in', steps },
  });
};
