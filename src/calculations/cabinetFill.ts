import { CABINET_FILL } from '../standards/cabinetFill';
import { conductorArea } from '../standards/conductorAreas';
import { isBeyond } from '../standards/source';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import { type Check, checkList, checkNumber, checkObject, firstFault, inputFault, isObject } from './inputChecks';
import { tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import { atMost, step } from './worked';

const PERCENT = 100;

const checkConductor = (at: string, item: unknown): Check => {
  if (!isObject(item)) return inputFault(at, say.expectedObject());
  const { awg, insulation, count } = item;
  if (typeof awg !== 'string') return inputFault(`${at}/awg`, say.expectedSize());
  if (typeof insulation !== 'string') return inputFault(`${at}/insulation`, say.expectedInsulation());
  if (isBeyond(conductorArea(awg, insulation)))
    return inputFault(`${at}/awg`, say.noConductorArea({ awg, insulation }), 'beyond-the-table');
  return checkNumber(`${at}/count`, count, { min: 0, max: 10_000, whole: true });
};

/** Do conductors, and conductors with splices and taps, keep to their shares of a cabinet's wiring space (312.8(A))? */
export const cabinetFillHolds = (conductorShare: number, totalShare: number): boolean =>
  atMost(conductorShare, CABINET_FILL.conductorsMost) && atMost(totalShare, CABINET_FILL.withSplicesMost);

/** Pocket calculation 'cabinet-fill': shares of the cross-section at its tightest place. `splicesIn2` is the connectors alone. */
export const calcCabinetFill = (input: CalcInput['cabinet-fill']): Result<CalcOutput, Fault> => {
  const fault =
    checkObject('', input) ??
    firstFault(
      checkNumber('/sectionIn2', input.sectionIn2, { above: 0 }),
      checkList('/conductors', input.conductors, checkConductor),
      checkNumber('/splicesIn2', input.splicesIn2, { min: 0 }),
    );
  if (fault) return err(fault);
  const { section } = CABINET_FILL.source[2023];
  const eaches = input.conductors.map((c) => conductorArea(c.awg, c.insulation) as number);
  const areas = input.conductors.map((c, i) => c.count * eaches[i]!);
  const in2 = tidy(areas.reduce((sum, area) => sum + area, 0));
  const { sectionIn2, splicesIn2 } = input;
  const conductorShare = tidy(in2 / sectionIn2);
  const totalShare = tidy((in2 + splicesIn2) / sectionIn2);
  const steps = [
    ...input.conductors.map((c, i) =>
      step(say.areaOf({ ...c, each: eaches[i]! }), areas[i]!, 'in²', 'Chapter 9 Table 5'),
    ),
    step(say.conductorShareStep({ in2, sectionIn2 }), conductorShare * PERCENT, '%', section),
    step(say.shareMost(), CABINET_FILL.conductorsMost * PERCENT, '%', section),
    step(say.totalShareStep({ in2, splicesIn2, sectionIn2 }), totalShare * PERCENT, '%', section),
    step(say.shareMost(), CABINET_FILL.withSplicesMost * PERCENT, '%', section),
  ];
  return ok({
    outcome: cabinetFillHolds(conductorShare, totalShare) ? 'holds' : 'fails',
    figures: { conductorShare, totalShare },
    worked: { id: 'cabinet-fill', value: totalShare * PERCENT, unit: '%', steps },
  });
};
