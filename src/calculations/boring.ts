import { BORING, MEMBERS, type Member, NAIL_SETBACK, NO_TENSION_NOTCH_FROM_IN } from '../standards/boring';
import { cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import type { U } from '../units/types';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { checkNumber, checkNumberOrNull, checkObject, checkOneOf, firstFault } from './inputChecks';
import { EPS, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import { atLeast, atMost, type Step, step } from './worked';

export type JoistKind = 'sawn' | 'I-joist' | 'open-web truss' | 'LVL';

/** What may be cut out of one member, in. */
export interface BoringLimits {
  readonly maxHoleIn: number;
  readonly minEdgeIn: number;
  /** Wood between a hole and the next hole or notch; null = no figure. */
  readonly betweenIn: number | null;
  readonly maxNotchIn: number;
  readonly maxEndNotchIn: number;
  /** A cable's hole nearer than this to the nail face needs a steel plate. */
  readonly plateUnderIn: number;
}

/**
 * Limits for a solid sawn member of actual depth `depthIn`. Null for engineered wood, and for a joist whose kind is
 * not known: only its maker's chart or an engineer can say (IRC R502.8.2).
 */
export const boringLimits = (member: Member, depthIn: number, kind: U<JoistKind> = 'sawn'): BoringLimits | null => {
  if (member === 'joist' && kind !== 'sawn') return null;
  const rule = BORING[member];
  return {
    maxHoleIn: depthIn * rule.holeShare,
    minEdgeIn: rule.edgeIn,
    betweenIn: rule.betweenIn,
    maxNotchIn: depthIn * rule.notchShare,
    maxEndNotchIn: depthIn * rule.endNotchShare,
    plateUnderIn: NAIL_SETBACK.edgeIn,
  };
};

/** Where the center of a hole may lie, measured from the bottom edge, in; null where a hole that size fits nowhere. */
export const holeBand = (limits: BoringLimits, depthIn: number, holeIn: number): readonly [number, number] | null => {
  const from = limits.minEdgeIn + holeIn / 2;
  const to = depthIn - from;
  return holeIn <= limits.maxHoleIn + EPS && from <= to + EPS ? [from, Math.max(from, to)] : null;
};

const USUAL_NOMINAL_IN = 2;

/** How deep a notch may be where it is, and why: studs know one depth; a joist its ends, its outer thirds and no more. */
const notchMost = (input: CalcInput['boring'], limits: BoringLimits): { most: number; why: string } => {
  const { member, notchAt = 'outer third', notchBelow = false, nominalIn = USUAL_NOMINAL_IN } = input;
  if (member !== 'joist') return { most: limits.maxNotchIn, why: say.notchInStud() };
  if (notchAt === 'end') return { most: limits.maxEndNotchIn, why: say.notchAtEnd() };
  if (notchAt === 'middle third') return { most: 0, why: say.notchMiddle() };
  return notchBelow && nominalIn >= NO_TENSION_NOTCH_FROM_IN
    ? { most: 0, why: say.notchPulled({ from: NO_TENSION_NOTCH_FROM_IN }) }
    : { most: limits.maxNotchIn, why: say.notchOuter() };
};

const SHARE: Readonly<Record<Member, string>> = { joist: 'one third', 'bearing stud': '40 %', 'other stud': '60 %' };

/**
 * Pocket calculation 'boring' for solid sawn wood: the limits, and a verdict on the hole or notch given. Without
 * `edgeIn` a hole holds when it can be placed with wood enough on both sides.
 */
export const calcBoring = (input: CalcInput['boring']): Result<CalcOutput, Fault> => {
  const size = { min: 0, max: 100 };
  const fault =
    checkObject('', input) ??
    firstFault(
      checkOneOf('/member', input.member, MEMBERS),
      checkNumber('/depthIn', input.depthIn, { above: 0, max: 100 }),
      checkNumberOrNull('/holeIn', input.holeIn, size),
      checkNumberOrNull('/edgeIn', input.edgeIn, size),
      checkNumberOrNull('/notchIn', input.notchIn, size),
      checkNumberOrNull('/betweenIn', input.betweenIn ?? null, size),
      checkNumber('/nominalIn', input.nominalIn ?? USUAL_NOMINAL_IN, { above: 0, max: 24 }),
    );
  if (fault) return err(fault);
  const { member, depthIn, holeIn, edgeIn, notchIn, betweenIn = null } = input;
  const limits = boringLimits(member, depthIn)!;
  const rule = BORING[member];
  const steps: Step[] = [
    step(say.largestHole({ share: SHARE[member], depthIn }), limits.maxHoleIn, 'in', rule.hole.section),
    step(say.woodAtEdge(), limits.minEdgeIn, 'in', rule.hole.section),
    step(say.deepestNotch({ share: rule.notchShare, depthIn }), limits.maxNotchIn, 'in', rule.notch.section),
    step(say.deepestEndNotch({ share: rule.endNotchShare, depthIn }), limits.maxEndNotchIn, 'in', rule.notch.section),
    step(say.nailPlate(), limits.plateUnderIn, 'in', cited(NAIL_SETBACK.bored[2023])),
  ];
  const verdicts: boolean[] = [];
  if (holeIn !== null) {
    steps.push(step(say.holeGiven(), holeIn, 'in', rule.hole.section));
    verdicts.push(atMost(holeIn, limits.maxHoleIn));
  }
  if (holeIn !== null || edgeIn !== null) {
    // The nearer edge of a hole leaves at most half of the wood that is not bored away.
    const most = (depthIn - (holeIn ?? 0)) / 2;
    const edge = Math.min(edgeIn ?? most, most);
    steps.push(step(edgeIn === null ? say.noEdgeGiven() : say.edgeGiven(), edge, 'in', rule.hole.section));
    verdicts.push(atLeast(edge, limits.minEdgeIn));
  }
  if (betweenIn !== null && limits.betweenIn !== null) {
    steps.push(step(say.betweenLeast(), limits.betweenIn, 'in', rule.hole.section));
    steps.push(step(say.betweenGiven(), betweenIn, 'in', rule.hole.section));
    verdicts.push(atLeast(betweenIn, limits.betweenIn));
  }
  if (notchIn !== null) {
    const { most, why } = notchMost(input, limits);
    steps.push(step(say.notchGiven(), notchIn, 'in', rule.notch.section));
    steps.push(step(why, most, 'in', rule.notch.section));
    verdicts.push(atMost(notchIn, most));
  }
  return ok({
    outcome: verdicts.length === 0 ? 'value' : verdicts.every(Boolean) ? 'holds' : 'fails',
    figures: {
      maxHoleIn: tidy(limits.maxHoleIn),
      minEdgeIn: limits.minEdgeIn,
      maxNotchIn: tidy(limits.maxNotchIn),
      maxEndNotchIn: tidy(limits.maxEndNotchIn),
    },
    worked: { id: 'boring', value: tidy(limits.maxHoleIn), unit: 'in', steps },
  });
};
