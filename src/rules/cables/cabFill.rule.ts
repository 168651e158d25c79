import { cabinetFillHolds } from '../../calculations/cabinetFill';
import { CABINET_FILL } from '../../standards/cabinetFill';
import type { Cable } from '../../standards/cable';
import { conductorArea } from '../../standards/conductorAreas';
import { CONNECTOR_IN2, cabinetSection, OLD_INSULATION } from '../../standards/editionsCables';
import { isBeyond } from '../../standards/source';
import { byId } from '../../units/order';
import { isKnown } from '../../units/types';
import { cableWords as say } from '../../words/en/rulesCables';
import { cablePaths, canOf, homeRunById, runOf } from '../reading';
import { cannotBeTold, holds, type Rule, stops } from '../rule';

const CABINETS: readonly string[] = ['splice can', 'new panel'];

/** Cross-section of the conductors of one cable, sq in.; null where its size is not known or not in the table. */
const areaOf = ({ size, hots, neutral, ground }: Cable): number | null => {
  if (!isKnown(size) || !isKnown(hots)) return null;
  const insulated = conductorArea(size, OLD_INSULATION);
  const bare = conductorArea(size, 'bare');
  if (isBeyond(insulated) || isBeyond(bare)) return null;
  return insulated * (hots + (neutral === 'none' ? 0 : 1)) + (ground === false ? 0 : bare);
};

/** Splices in a cabinet: conductors, and conductors with their splices, keep to their shares of the wiring space. */
export const cabFill: Rule = {
  id: 'CAB-FILL',
  subjects: ({ boxes }) => byId(boxes.filter((b) => CABINETS.includes(b.on))).map((b) => b.id),
  check: (facts, subject) => {
    const box = facts.boxes.find((b) => b.id === subject)!;
    const cables = box.homeRuns.flatMap((homeRun) => {
      const next = runOf(facts, homeRun)?.newCable;
      return [homeRunById(facts.job, homeRun).cable, ...(next ? [next] : [])].map((cable) => ({ homeRun, cable }));
    });
    const waits = cables.flatMap(({ homeRun, cable }) =>
      cablePaths(facts.job, homeRun, cable, ['size', 'hots', 'neutral', 'ground']),
    );
    const areas = cables.map(({ cable }) => areaOf(cable));
    const can = canOf(facts.job, box);
    // The gutters of a new panel depend on its maker: only an emptied cabinet is known from its size.
    if (!can || waits.length > 0 || areas.includes(null))
      return cannotBeTold(say.cabinetUnknown(), say.cabinetLook(), waits);
    const section = cabinetSection(can.size);
    const conductors = areas.reduce<number>((sum, area) => sum + (area ?? 0), 0) / section;
    const joints = box.conductorsSpliced + box.homeRuns.length;
    const total = conductors + (joints * CONNECTOR_IN2) / section;
    const detail = { measured: total, required: CABINET_FILL.withSplicesMost, unit: 'share' };
    const v = { share: total };
    return cabinetFillHolds(conductors, total)
      ? holds(say.cabinetHolds(v), detail)
      : stops(say.cabinetFails(v), { ...detail, remedies: [{ say: say.boxRemedy(), cents: null, work: [] }] });
  },
};
