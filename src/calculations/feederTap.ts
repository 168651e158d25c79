import { cited } from '../standards/source';
import { TAP_DEVICE_RULE, TAP_RULES } from '../standards/taps';
import type { Edition } from '../units/types';
import { electricalWords as say } from '../words/en/calcElectrical';
import { EPS, tidy } from './refuse';
import type { Worked } from './types';

/** Conductors tapped from a feeder whose device protects larger ones. */
export interface TapCase {
  /** Device ahead of the feeder, A. */
  readonly ahead: number;
  readonly feet: number;
  readonly loadAmps: number;
  /** The device the tap ends in, A. */
  readonly endAmps: number;
}

/** Is a tap of this ampacity, A, allowed? 240.21(B)(1) and (2); longer ones are not. */
export const tapHolds = (tap: TapCase, ampacity: number): boolean => {
  const rule = TAP_RULES.find((r) => tap.feet <= r.feet + EPS);
  const least = rule && Math.max(tap.ahead / rule.part, tap.loadAmps, tap.endAmps);
  return least !== undefined && ampacity >= least - EPS;
};

export const tapSteps = (tap: TapCase, ampacity: number, edition: Edition): Worked['steps'] => {
  const { ahead, feet, endAmps, loadAmps } = tap;
  const rule = TAP_RULES.find((r) => feet <= r.feet + EPS);
  const section = cited(TAP_DEVICE_RULE[edition]);
  if (!rule) {
    const reach = TAP_RULES.at(-1)!.feet;
    return [{ say: say.tapTooLong({ feet, reach }), value: reach, unit: 'ft', section }];
  }
  const part = cited(rule.rule[edition]);
  return [
    {
      say: say.tapShare({ feet, reach: rule.feet, part: rule.part, ahead }),
      value: tidy(ahead / rule.part),
      unit: 'A',
      section: part,
    },
    { say: say.tapLoad, value: loadAmps, unit: 'A', section: part },
    { say: say.tapEnd({ holds: endAmps <= ampacity + EPS }), value: endAmps, unit: 'A', section },
  ];
};
