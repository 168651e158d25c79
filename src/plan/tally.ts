import type { AfciEntry, Box, Finding, Run } from '../facts/result';
import type { Tally } from '../job/schema';
import type { TimeAnswer } from '../pricing/time';
import type { PriceTotals } from '../pricing/totals';

/** Circuits that may gain AFCI: the inspector decides, or it cannot be told. None is no answer where one of these is. */
export const afciOpenIn = (afci: readonly AfciEntry[]): number =>
  afci.filter((a) => a.required === 'inspector decides' || a.required === 'cannot be told').length;

/** The six figures every sheet shows, and what they are counted from. Hours to a tenth. */
export const tallyOf = (
  parts: {
    readonly findings: readonly Finding[];
    readonly runs: readonly Run[];
    readonly boxes: readonly Box[];
    readonly afci: readonly AfciEntry[];
  },
  totals: PriceTotals,
  time: TimeAnswer,
): Tally => ({
  stops: parts.findings.filter((f) => f.effect === 'stops the job').length,
  lowCents: totals.low,
  likelyCents: totals.likely,
  highCents: totals.high,
  crewHours: Math.round(time.crewHours * 10) / 10,
  outageHours: Math.round(time.outageHours * 10) / 10,
  conductorsSpliced: parts.runs.reduce((n, r) => n + r.conductorsSpliced, 0),
  boxes: parts.boxes.length,
  afciAdded: parts.afci.filter((a) => a.required === 'yes').length,
});
