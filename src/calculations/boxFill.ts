import {
  ALLOWANCES,
  CONDUCTOR_VOLUME_SOURCE,
  conductorVolume,
  FILL_SOURCES,
  groundAllowances,
} from '../standards/boxVolumes';
import { cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { err, ok, type Result } from '../units/result';
import { EDITIONS, type Edition, type U } from '../units/types';
import { calcMechanicalWords as say } from '../words/en/calcMechanical';
import {
  checkBoolean,
  checkCounts,
  checkEdition,
  checkNumber,
  checkNumberOrNull,
  checkObject,
  firstFault,
} from './inputChecks';
import { tidy } from './refuse';
import type { CalcInput, CalcOutput, Count } from './types';
import { atMost, type Step, step } from './worked';

/** What is in a box: conductors that end, are spliced or pass through; EGCs; clamps inside; device yokes by the largest conductor on each; support fitting types. */
export interface BoxContents {
  readonly conductors: readonly Count[];
  readonly grounds: readonly Count[];
  readonly clamps: boolean;
  readonly yokes: readonly Count[];
  readonly fittings: number;
}
interface Part {
  readonly kind: 'conductors' | 'grounds' | 'clamps' | 'fittings' | 'yokes';
  readonly awg: string;
  readonly count: number;
  readonly allowances: number;
  /** Of one allowance, cu in. */
  readonly each: number;
  readonly in3: number;
}

const present = (counts: readonly Count[]): Count[] => counts.filter((c) => c.count > 0);
const largest = (counts: readonly Count[]): string | undefined =>
  present(counts).reduce<string | undefined>(
    (best, c) => (best === undefined || conductorVolume(c.awg)! > conductorVolume(best)! ? c.awg : best),
    undefined,
  );

/** The parts a fill is summed from; null where a conductor is not counted by volume (4 AWG and larger). */
const partsOf = (edition: Edition, box: BoxContents): Part[] | null => {
  const everything = [...box.conductors, ...box.grounds, ...box.yokes];
  if (present(everything).some((c) => conductorVolume(c.awg) === undefined)) return null;
  const part = (kind: Part['kind'], awg: string, count: number, allowances: number): Part => ({
    kind,
    awg,
    count,
    allowances,
    each: conductorVolume(awg)!,
    in3: allowances * conductorVolume(awg)!,
  });
  const parts = present(box.conductors).map((c) =>
    part('conductors', c.awg, c.count, c.count * ALLOWANCES.conductorEndingOrSpliced),
  );
  const ground = largest(box.grounds);
  const grounds = box.grounds.reduce((sum, c) => sum + c.count, 0);
  if (ground !== undefined) parts.push(part('grounds', ground, grounds, groundAllowances(edition, grounds)));
  const biggest = largest([...box.conductors, ...box.grounds]);
  if (biggest !== undefined && box.clamps) parts.push(part('clamps', biggest, 1, ALLOWANCES.clampsInside));
  if (biggest !== undefined && box.fittings > 0)
    parts.push(part('fittings', biggest, box.fittings, box.fittings * ALLOWANCES.fittingType));
  for (const c of present(box.yokes)) parts.push(part('yokes', c.awg, c.count, c.count * ALLOWANCES.deviceYoke));
  return parts;
};
const sum = (parts: readonly Part[]): number => tidy(parts.reduce((total, p) => total + p.in3, 0));

/**
 * Volume the contents of a box need, cu in. (314.16(B)). Edition unknown: the largest figure of any edition. Null
 * where a conductor is 4 AWG or larger or of no known size: 314.28 or the survey decides, not volume.
 */
export const boxFillIn3 = (edition: U<Edition>, box: BoxContents): number | null => {
  const fills = (edition === 'unknown' ? EDITIONS : [edition]).map((e) => partsOf(e, box));
  return fills.some((parts) => parts === null) ? null : Math.max(...fills.map((parts) => sum(parts!)));
};

const sayPart = (p: Part): string => {
  switch (p.kind) {
    case 'conductors':
      return say.conductorsCount(p);
    case 'grounds':
      return say.groundsCount(p);
    case 'clamps':
      return say.clampsCount(p);
    case 'fittings':
      return say.fittingsCount(p);
    case 'yokes':
      return say.yokesCount(p);
  }
};

const sizeFault = (awg: string): string | null =>
  conductorVolume(awg) === undefined ? say.notByVolume({ awg }) : null;

/** Pocket calculation 'box-fill': the volume needed, and whether a box of `boxIn3` holds it (equal is enough). */
export const calcBoxFill = (input: CalcInput['box-fill']): Result<CalcOutput, Fault> => {
  const fault =
    checkObject('', input) ??
    firstFault(
      checkEdition(input.edition),
      checkCounts('/conductors', input.conductors, sizeFault),
      checkCounts('/grounds', input.grounds, sizeFault),
      checkCounts('/deviceYokes', input.deviceYokes, sizeFault),
      checkBoolean('/clamps', input.clamps),
      checkNumber('/fittings', input.fittings, { min: 0, max: 100, whole: true }),
      checkNumberOrNull('/boxIn3', input.boxIn3, { min: 0 }),
    );
  if (fault) return err(fault);
  const { edition, boxIn3 } = input;
  const parts = partsOf(edition, { ...input, yokes: input.deviceYokes })!;
  const fillIn3 = sum(parts);
  const steps: Step[] = parts.map((p) => step(sayPart(p), p.in3, 'in³', cited(FILL_SOURCES[p.kind][edition])));
  steps.push(
    step(say.fillSum({ parts: parts.map((p) => p.in3) }), fillIn3, 'in³', cited(CONDUCTOR_VOLUME_SOURCE[edition])),
  );
  if (boxIn3 !== null)
    steps.push(step(say.boxGiven({ fits: atMost(fillIn3, boxIn3) }), boxIn3, 'in³', cited(FILL_SOURCES.box[edition])));
  return ok({
    outcome: boxIn3 === null ? 'value' : atMost(fillIn3, boxIn3) ? 'holds' : 'fails',
    figures: boxIn3 === null ? { fillIn3 } : { fillIn3, boxIn3 },
    worked: { id: 'box-fill', value: fillIn3, unit: 'in³', steps },
  });
};
