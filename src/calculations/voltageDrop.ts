import { AC_TABLE, acResistance, impedance, reactance } from '../standards/impedance';
import { isSize } from '../standards/sizes';
import { BEYOND, cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { refuse, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';

/** The input names no code year; the table was read for this one. */
const TABLE_EDITION = 2023;
const OHMS_LAW = "Ohm's law";
/** Informational notes to these sections recommend 3 % and 5 %: no rule. */
const NOTES = '210.19, 215.2 informational notes';

/**
 * `voltage-drop` of a single-phase two-wire or line-to-line load: figures volts, percent. A resistance entered stands
 * for the whole impedance; without one, R·cos θ + X·sin θ of Chapter 9 Table 9 at 75 °C.
 */
export const calcVoltageDrop = (input: CalcInput['voltage-drop']): Result<CalcOutput, Fault> => {
  const { volts, amps, feetOneWay, metal, awg, ohmPerKft, raceway, powerFactor } = input;
  if (!isSize(awg)) return refuse('not-a-size', '/awg', say.notASize({ found: awg }));
  const table = cited(AC_TABLE[TABLE_EDITION]);
  const ohms = ohmPerKft ?? impedance(metal, awg, raceway, powerFactor);
  if (ohms === BEYOND)
    return refuse('beyond-table', '/awg', say.notInTable({ what: `${awg} ${metal}, ${raceway}`, table }));
  const loopFeet = 2 * feetOneWay;
  const dropped = tidy((loopFeet / 1000) * ohms * amps);
  const percent = tidy((100 * dropped) / volts);
  const parts = {
    r: Number(acResistance(metal, awg, raceway)),
    x: Number(reactance(awg, raceway)),
    cos: powerFactor,
    sin: tidy(Math.sqrt(Math.max(0, 1 - powerFactor * powerFactor))),
  };
  return ok({
    outcome: 'value',
    figures: { volts: dropped, percent },
    worked: {
      id: 'voltage-drop',
      value: dropped,
      unit: 'V',
      steps: [
        ohmPerKft === null
          ? { say: say.ohmTable(parts), value: tidy(ohms), unit: 'Ω/1000 ft', section: table }
          : { say: say.ohmGiven, value: ohmPerKft, unit: 'Ω/1000 ft', section: OHMS_LAW },
        { say: say.loop({ feet: feetOneWay }), value: loopFeet, unit: 'ft', section: OHMS_LAW },
        { say: say.drop({ ohms: tidy(ohms), loop: loopFeet, amps }), value: dropped, unit: 'V', section: OHMS_LAW },
        { say: say.left, value: tidy(volts - dropped), unit: 'V', section: OHMS_LAW },
        { say: say.dropShare({ dropped, volts }), value: percent, unit: '%', section: NOTES },
      ],
    },
  });
};
