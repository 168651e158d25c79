import type { Fault } from '../units/fault';
import { byId, compareText } from '../units/order';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { panelSlots } from './panelSlots';
import { splitPhases } from './phaseSplit';
import { refuse, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';

/** Shared neutrals on opposite legs; balance itself is practice, no rule asks for it. */
const SHARED_NEUTRAL = '210.4';
const PRACTICE = 'common practice';

type Input = CalcInput['arrangement'];

const problem = (circuits: Input['circuits']) => {
  const at = new Map<string, number>();
  for (const [i, c] of circuits.entries()) {
    if (at.has(c.id)) return refuse('duplicate-id', `/circuits/${i}/id`, say.twicePresent({ id: c.id }));
    at.set(c.id, i);
  }
  for (const [i, c] of circuits.entries()) {
    if (c.partner === null) continue;
    const other = circuits[at.get(c.partner) ?? -1];
    if (!other || other === c || other.partner !== c.id || other.poles !== 1 || c.poles !== 1)
      return refuse('not-a-partner', `/circuits/${i}/partner`, say.noPartner({ partner: c.partner }));
  }
  return null;
};

/**
 * `arrangement`: figures legA, legB, differenceVA at the best balance there is, with 2-pole breakers on both legs and
 * shared neutrals on opposite ones. Holds when everything finds a space; where not, the figures leave the spaces aside.
 */
export const calcArrangement = (input: Input): Result<CalcOutput, Fault> => {
  const fault = problem(input.circuits);
  if (fault) return fault;
  const circuits = byId(input.circuits);
  const doubles = circuits.filter((c) => c.poles === 2);
  const singles = circuits.filter((c) => c.poles === 1 && c.partner === null);
  const pairs = circuits.flatMap((c) => {
    const other = c.partner === null ? undefined : circuits.find((o) => o.id === c.partner);
    return other && compareText(c.id, other.id) < 0 ? [{ id: c.id, va: [c.va, other.va] as const }] : [];
  });
  const slots = panelSlots(input.spaces);
  const twos = doubles.length + pairs.length;
  const fitting =
    twos <= slots.doubles
      ? splitPhases({ singles, pairs, placesA: slots.legA - twos, placesB: slots.legB - twos })
      : null;
  const split = fitting ?? splitPhases({ singles, pairs, placesA: singles.length, placesB: singles.length });
  if (!split) throw new Error('phases without a bound on places always split');
  const both = doubles.reduce((sum, c) => sum + c.va / 2, 0);
  const [legA, legB] = [tidy(split.legA + both), tidy(split.legB + both)];
  const differenceVA = tidy(Math.abs(legA - legB));
  const isOn = (leg: 'A' | 'B', c: Input['circuits'][number]): boolean => {
    if (c.poles === 2) return true;
    const first = c.partner === null || compareText(c.id, c.partner) < 0;
    const onA = c.partner === null ? split.onA.has(c.id) : split.turned.has(first ? c.id : c.partner) !== first;
    return onA === (leg === 'A');
  };
  const onLeg = (leg: 'A' | 'B') =>
    circuits.filter((c) => isOn(leg, c)).map((c) => ({ id: c.id, va: c.va / c.poles, half: c.poles === 2 }));
  const needed = circuits.reduce((sum, c) => sum + c.poles, 0);
  return ok({
    outcome: fitting ? 'holds' : 'fails',
    figures: { legA, legB, differenceVA, exact: split.exact },
    worked: {
      id: 'arrangement',
      value: differenceVA,
      unit: 'VA',
      steps: [
        { say: say.spacesNeeded, value: needed, unit: '', section: PRACTICE },
        { say: say.spacesGiven, value: input.spaces, unit: '', section: PRACTICE },
        { say: say.legLoad({ leg: 'A', parts: onLeg('A') }), value: legA, unit: 'VA', section: SHARED_NEUTRAL },
        { say: say.legLoad({ leg: 'B', parts: onLeg('B') }), value: legB, unit: 'VA', section: SHARED_NEUTRAL },
        { say: say.difference({ exact: split.exact }), value: differenceVA, unit: 'VA', section: PRACTICE },
      ],
    },
  });
};
