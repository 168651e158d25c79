import { type RowCable, type RowPolicy, rowLimit } from '../../calculations/cableRows';
import type { Row } from '../../facts/result';
import { quoted } from '../../job/questions';
import { SHORT_RULE } from '../../standards/countAdjustment';
import { formatFeetInches } from '../../units/length';
import { type Id, isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { wiringWords as wiring } from '../../words/en/rulesWiring';
import { cablePaths, homeRunById, laidCable, pathTo, runOf } from '../reading';
import { cannotBeTold, doesNotApply, type FactsInYear, holds, holdsNearly, type Rule, stops } from '../rule';
import { rowIds } from './cableReading';
import { isShortStretch, wholeLengthPaths } from './shortStretch';
import { rowsBeside } from './sideBySide';

/** The cable of a home run that lies in a row: the old one where its leg there is old. */
const cableIn = (facts: FactsInYear, row: Row, homeRun: Id): RowCable => {
  const { job } = facts;
  const own = homeRunById(job, homeRun);
  const run = runOf(facts, homeRun);
  const old = run?.legs.some((leg) => leg.row === row.id && leg.cable === 'old');
  const amps = own.circuits.map((id) => job.circuits.find((c) => c.id === id)!.amps);
  return {
    cable: run && !old ? laidCable(job, run) : own.cable,
    amps: amps.every(isKnown) ? Math.max(0, ...amps) : 'unknown',
  };
};

const policyOf = ({ job }: FactsInYear, row: Row): RowPolicy => ({
  togetherIn: row.length,
  spaced: row.by === 'board',
  sealed: row.by === 'sealed hole',
  insulated: false,
  bundling: job.practice.bundling,
  nextSizeInRows: job.practice.nextSizeInRows,
  ...(row.by === 'raceway' || row.by === 'wireway' ? { inside: row.by } : {}),
});

/** Cables that run together still hold their breakers after adjustment. */
export const nmBundle: Rule = {
  id: 'NM-BUNDLE',
  subjects: rowIds,
  check: (facts, subject) => {
    const { job, edition } = facts;
    const row = facts.rows.find((r) => r.id === subject)!;
    if (row.homeRuns.length <= 1) return doesNotApply();
    const cables = row.homeRuns.map((id) => cableIn(facts, row, id));
    const { outcome, factor, limit } = rowLimit(cables, policyOf(facts, row), edition);
    const detail = { measured: factor, unit: 'share', amendment: quoted(job, 'bundling') };
    if (outcome === 'holds') {
      const beside = rowsBeside(facts, row);
      const stretch = formatFeetInches(beside.stretch);
      return beside.rows > 0
        ? holdsNearly(say.bundleHolds({ limit }), wiring.beside({ ...beside, stretch }), detail)
        : holds(say.bundleHolds({ limit }), detail);
    }
    const short = isShortStretch(facts, row);
    if (short === true)
      return holds(wiring.shortStretch({ limit }), { ...detail, section: SHORT_RULE[edition].section });
    if (!isKnown(short))
      return cannotBeTold(wiring.shortUnknown({ limit }), wiring.shortLook(), wholeLengthPaths(facts, row), detail);
    if (outcome === 'fails')
      return stops(say.bundleFails({ limit }), {
        ...detail,
        remedies: [{ say: say.bundleRemedy(), cents: null, work: [] }],
      });
    const waits = row.homeRuns.flatMap((id, i) => [
      ...cablePaths(job, id, cables[i]!.cable, ['kind', 'size', 'metal', 'hots', 'neutral', 'insulation']),
      ...homeRunById(job, id).circuits.flatMap((c) =>
        isKnown(job.circuits.find((x) => x.id === c)!.amps) ? [] : [pathTo(job, 'circuits', c, 'amps')],
      ),
    ]);
    return cannotBeTold(say.bundleUnknown({ limit }), say.bundleLook(), waits, detail);
  },
};
