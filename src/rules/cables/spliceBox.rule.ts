import type { Box } from '../../facts/result';
import { pointToSegment } from '../../geometry/polygon';
import { areaAt, type State, type WallFace, wallFaces } from '../../job/site';
import { besideEachOther } from '../../standards/boxSize';
import { BOX_AT_WALL_IN } from '../../standards/editionsCables';
import { FINISHED } from '../../standards/editionsPlace';
import { byId } from '../../units/order';
import { isKnown, type Pt3 } from '../../units/types';
import { boxBankWords as bank } from '../../words/en/rulesBoxes';
import { cableWords as say } from '../../words/en/rulesCables';
import { buildPath } from '../place/placeReading';
import { sitePath } from '../reading';
import { cannotBeTold, type FactsInYear, holds, holdsNearly, type Rule, type Says, stops } from '../rule';
import { inPlanOf } from './cableReading';

const remedies = () => [
  {
    say: say.reachRemedy(),
    cents: null,
    work: [{ item: 'access hatch', quantity: 1, homeRuns: [], rule: 'SPLICE-BOX', alternate: null }],
  },
];

const untold = (waits: readonly string[]): Says => cannotBeTold(say.reachUnknown(), say.reachLook(), waits);
const judged = (reachable: boolean): Says =>
  reachable ? holds(say.reachHolds()) : stops(say.reachBuried(), { remedies: remedies() });

/** At the joists: what ceiling is there after the finishing. */
const overhead = ({ job }: FactsInYear, at: Pt3): Says => {
  const area = areaAt(job.site, inPlanOf(at));
  if (!area) return untold(['/site/areas']);
  const { cover } = area.state.after;
  return isKnown(cover)
    ? judged(cover !== 'drywall')
    : untold([sitePath(job, 'areas', area.id, 'state', 'after', 'cover')]);
};

const nearestFace = ({ job }: FactsInYear, state: State, at: Pt3): WallFace | undefined => {
  const near = wallFaces(job.site, state).map((face) => ({
    face,
    far: pointToSegment(inPlanOf(at), face.from, face.to),
  }));
  return near.filter((n) => n.far <= BOX_AT_WALL_IN).sort((a, b) => a.far - b.far)[0]?.face;
};

/** On a wall: closed in where the finishing comes between. */
const onWall = (facts: FactsInYear, at: Pt3): Says => {
  const after = nearestFace(facts, 'after', at);
  if (!after) return judged(true);
  const before = wallFaces(facts.job.site, 'now').find((f) => f.id === after.id);
  const waits = [
    ...(isKnown(after.build) ? [] : [buildPath(facts, { face: after }, 'after')]),
    ...(before && !isKnown(before.build) ? [buildPath(facts, { face: after }, 'now')] : []),
  ];
  if (isKnown(after.build) && !FINISHED.includes(after.build)) return judged(true);
  if (waits.length > 0) return untold(waits);
  return judged(before !== undefined && before.build === after.build);
};

/** Do two boxes take each other's room where the plan has them? */
const overlap = (a: Box, b: Box): boolean =>
  a.at.every((x, k) => Math.abs(x - b.at[k]!) < besideEachOther(a.size, b.size));

const PLACED: readonly string[] = ['joist', 'wall', 'wireway'];

/** Every splice box can be opened when the room is finished. */
export const spliceBox: Rule = {
  id: 'SPLICE-BOX',
  subjects: ({ boxes }) => byId(boxes.filter((b) => PLACED.includes(b.on))).map((b) => b.id),
  check: (facts, subject) => {
    const box = facts.boxes.find((b) => b.id === subject)!;
    const said = box.on === 'joist' ? overhead(facts, box.at) : onWall(facts, box.at);
    const beside = facts.boxes.filter((b) => b !== box && PLACED.includes(b.on) && overlap(b, box));
    return said.outcome === 'holds' && beside.length > 0 ? holdsNearly(bank.crowded(), bank.crowdedLook()) : said;
  },
};
