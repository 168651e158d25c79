import type { PinCost, Plan } from '../facts/result';
import type { Option, Pin } from '../job/schema';
import { formatDollars } from '../units/money';
import { byId } from '../units/order';
import type { Id } from '../units/types';
import { pinWords as say } from '../words/en/pins';

export const withoutPin = (option: Option, id: Id): Option => ({
  ...option,
  pins: option.pins.filter((p) => p.id !== id),
});

/** What one pin costs against the program's own answer: the price with it less the price without it alone. */
export const pinCost = ({ id }: Pin, plan: Plan, without: Plan): PinCost => {
  const barred = plan.runs.find((r) => r.blockedBy.includes(id));
  if (barred) return { pin: id, cents: null, say: say.cannotHold({ why: barred.why }) };
  const cents = plan.tally.likelyCents - without.tally.likelyCents;
  if (cents === 0) return { pin: id, cents, say: say.same() };
  return { pin: id, cents, say: (cents > 0 ? say.dearer : say.cheaper)({ dollars: formatDollars(Math.abs(cents)) }) };
};

/** A plan with the cost of each of its option's pins; `without` is the plan of the same option with one pin less. */
export const withPinCosts = (option: Option, plan: Plan, without: (pin: Id) => Plan): Plan => ({
  ...plan,
  pins: byId(option.pins).map((pin) => pinCost(pin, plan, without(pin.id))),
});
