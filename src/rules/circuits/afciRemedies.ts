import type { Run } from '../../facts/result';
import type { Remedy } from '../../facts/ruling';
import { dot, subtract } from '../../geometry/vector';
import { faceOf, type WallFace, wallFaces } from '../../job/site';
import { AFCI_EDITIONS, AFCI_EXEMPT_IN, AFCI_RECEPTACLES } from '../../standards/editionsAfci';
import { formatFeetInches } from '../../units/length';
import { type In, isKnown } from '../../units/types';
import { protectionWords as say } from '../../words/en/rulesProtection';
import { type CircuitJudgement, withGfci } from '../afci';
import { cablesOf, isExtended, runOf } from '../reading';
import type { FactsInYear } from '../rule';

type Side = 'left' | 'right';

/** How much of a way's new cable runs along the panel's wall toward either side, in: what moving the panel back saves. */
const alongWall = (run: Run, face: WallFace): Record<Side, In> => {
  const travel = run.legs
    .filter((leg) => leg.cable === 'new')
    .map(({ from, to }) => dot(subtract([to[0], to[1]], [from[0], from[1]]), face.along));
  const sum = (sign: 1 | -1) => travel.reduce((total, d) => total + Math.max(0, sign * d), 0);
  // a cable that travels right to the panel grows shorter as the panel moves left
  return { left: sum(1), right: sum(-1) };
};

/**
 * How far the panel has to move along its wall so that the extension of the circuit stays within the length that is
 * excused: whole inches. Null where its length is not what asks for protection, or no side of the wall helps.
 */
export const nearerBy = (
  facts: FactsInYear,
  { circuit }: CircuitJudgement,
): { by: In; to: Side; length: In } | null => {
  const { job, option, edition } = facts;
  const face = faceOf(wallFaces(job.site, 'after'), option.enclosure.on);
  const { afciCountsTails } = job.code.amendments;
  const tails = afciCountsTails === true || afciCountsTails === 'yes';
  const runs = cablesOf(job, circuit.id).flatMap((h) => runOf(facts, h.id) ?? []);
  if (!face || circuit.addsOutlet || runs.some((r) => r.way === 'new home run')) return null;
  const counted = (run: Run) => (tails ? run.codeLengthWithTails : run.codeLength);
  const extended = runs.filter(isExtended);
  const long = extended.filter((run) => counted(run) > AFCI_EXEMPT_IN[edition]);
  // several extensions that are short one by one stay a question to the inspector
  if (long.length === 0 || extended.length > 1) return null;
  const longest = Math.max(...long.map(counted));
  const by = Math.ceil(longest - AFCI_EXEMPT_IN[edition]);
  const to = (['left', 'right'] as const).find((side) =>
    long.every((run) => {
      const along = alongWall(run, face);
      return along[side] >= by && along[side] > along[side === 'left' ? 'right' : 'left'];
    }),
  );
  return to ? { by, to, length: longest - by } : null;
};

/** The breaker that guards the circuit: with GFCI where the circuit has that today. */
const breakerOf = ({ job }: FactsInYear, { circuit }: CircuitJudgement) => ({
  shared: job.circuits.some((c) => c.id === circuit.partner),
  gfci: withGfci(job, circuit, []),
});

/** What satisfies the rule: the breaker that is in the plan, a device at the first receptacle, or the panel so much nearer. */
export const afciRemedies = (facts: FactsInYear, judged: CircuitJudgement): Remedy[] => {
  const { amps } = judged.circuit;
  const breaker = breakerOf(facts, judged);
  const inBook = `breaker:${breaker.shared ? '2p' : '1p'} ${amps} ${breaker.gfci ? 'AFCI+GFCI' : 'AFCI'}`;
  // what is wired directly (lighting, smoke alarms) has no receptacle to put the device in
  const receptacle = isKnown(amps) && judged.circuit.hardWired !== true ? AFCI_RECEPTACLES[amps] : undefined;
  const withSwitch = AFCI_EDITIONS[facts.edition].firstDevice === 'first receptacle or switch';
  const item = { quantity: 1, homeRuns: [], rule: 'AFCI-EXT', alternate: null };
  const near = nearerBy(facts, judged);
  return [
    { say: say.inBreaker(breaker), cents: null, work: isKnown(amps) ? [{ ...item, item: inBook }] : [] },
    ...(receptacle === undefined
      ? []
      : [{ say: say.atFirst({ withSwitch }), cents: null, work: [{ ...item, item: `receptacle:${receptacle}` }] }]),
    ...(near === null
      ? []
      : [
          {
            say: say.nearer({ by: formatFeetInches(near.by), to: near.to, length: formatFeetInches(near.length) }),
            cents: null,
            work: [],
          },
        ]),
  ];
};
