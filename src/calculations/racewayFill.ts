import { AREA_TABLE, COMPACT_TABLE, conductorArea, INSULATIONS } from '../standards/conductorAreas';
import { FILL_SHARE, FILL_TABLE, fillRow, NIPPLE_RULE, RACEWAY_TABLE, racewayArea } from '../standards/conduit';
import { isSize } from '../standards/sizes';
import { BEYOND, cited } from '../standards/source';
import type { Fault } from '../units/fault';
import { ok, type Result } from '../units/result';
import { electricalWords as say } from '../words/en/calcElectrical';
import { EPS, refuse, tidy } from './refuse';
import type { CalcInput, CalcOutput } from './types';
import type { Step } from './worked';

/** The input names no code year; the tables were read for this one. */
const TABLE_EDITION = 2023;

/**
 * `raceway-fill`: figures share, allowed (fractions of the inside area). Insulations by name; 'bare' is an EGC without
 * one, 'compact XHHW' the aluminum build of Table 5A.
 */
export const calcRacewayFill = (input: CalcInput['raceway-fill']): Result<CalcOutput, Fault> => {
  const { raceway, tradeSize, nipple, conductors } = input;
  const sizes = cited(RACEWAY_TABLE[TABLE_EDITION]);
  const inside = racewayArea(raceway, tradeSize);
  if (inside === BEYOND)
    return refuse('beyond-table', '/tradeSize', say.notInTable({ what: `${raceway} ${tradeSize}`, table: sizes }));

  let filled = 0;
  let count = 0;
  const areas: Step[] = [];
  for (const [i, c] of conductors.entries()) {
    const at = `/conductors/${i}`;
    if (!INSULATIONS.includes(c.insulation)) {
      const known = INSULATIONS.join(', ');
      return refuse('not-an-insulation', `${at}/insulation`, say.notAnInsulation({ found: c.insulation, known }));
    }
    if (!isSize(c.awg)) return refuse('not-a-size', `${at}/awg`, say.notASize({ found: c.awg }));
    const area = conductorArea(c.awg, c.insulation);
    const table = (c.insulation.startsWith('compact') ? COMPACT_TABLE : AREA_TABLE)[TABLE_EDITION].section;
    if (area === BEYOND)
      return refuse('beyond-table', `${at}/awg`, say.notInTable({ what: `${c.awg} ${c.insulation}`, table }));
    filled += area * c.count;
    areas.push({
      say: say.conductorArea({ ...c, each: area }),
      value: tidy(area * c.count),
      unit: 'in²',
      section: table,
    });
    count += c.count;
  }
  if (count === 0) return refuse('nothing-given', '/conductors', say.noConductors);

  const share = tidy(filled / inside);
  const allowed = FILL_SHARE[fillRow(count, nipple)];
  const fillSection = cited((nipple ? NIPPLE_RULE : FILL_TABLE)[TABLE_EDITION]);
  return ok({
    outcome: share <= allowed + EPS ? 'holds' : 'fails',
    figures: { share, allowed },
    worked: {
      id: 'raceway-fill',
      value: share,
      unit: '',
      steps: [
        { say: say.insideArea({ raceway, size: tradeSize }), value: inside, unit: 'in²', section: sizes },
        ...areas,
        { say: say.filled({ in2: tidy(filled), inside }), value: share, unit: '', section: fillSection },
        { say: say.fillAllowed({ count, nipple }), value: allowed, unit: '', section: fillSection },
      ],
    },
  });
};
