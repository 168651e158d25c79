import type { Finding, Plan } from '../facts/result';
import { signedArea } from '../geometry/polygon';
import type { Job, Option } from '../job/schema';
import { solids as things } from '../job/site';
import type { Id, In, Pt } from '../units/types';
import { stroke } from './items';
import { at, face, prism } from './solidShapes';
import type { Solid } from './solids';
import { clipConvex, HEADROOM_IN, workingSpace } from './spaces';

const DEDICATED = 'DEDICATED';
const WORKING: readonly string[] = ['WS-DEPTH', 'WS-WIDTH', 'WS-HEIGHT', 'WS-STORE'];

/** Space kept clear: the floor of it hatched, its edges dashed. */
const clearSpace = (id: Id, outline: readonly Pt[], fromZ: In, toZ: In): Solid => {
  const floor = outline.map((p) => at(p, fromZ + 0.15));
  return {
    id,
    kind: 'space',
    faces: fromZ === 0 ? [face(floor, 'zone', null, 'up')] : [],
    edges: prism(outline, fromZ, toZ, { surface: 'zone', stroke: stroke('thin', 'new', 'zone') }).edges,
    body: null,
  };
};

/** The dedicated space over the new panel, as far up as the rule looked. */
const dedicatedSpace = (plan: Plan, option: Option): Solid[] => {
  const { enclosure } = option;
  const shape = plan.findings.find((f) => f.rule === DEDICATED && f.subject === enclosure.id)?.shape;
  const top = shape?.[0]?.[2];
  const from = enclosure.on.bottom + enclosure.size.height;
  if (!shape || top === undefined || top <= from) return [];
  return [
    clearSpace(
      'dedicated space',
      shape.map(([x, y]): Pt => [x, y]),
      from,
      top,
    ),
  ];
};

const matters = (f: Finding, panel: Id): boolean =>
  f.subject === panel && f.effect !== null && (WORKING.includes(f.rule) || f.rule === DEDICATED);

/** The part of a thing that stands in a space kept clear. */
export interface Intrusion {
  readonly thing: Id;
  readonly rule: string;
  readonly outline: readonly Pt[];
  readonly fromZ: In;
  readonly toZ: In;
}

/**
 * What reaches into the spaces of the findings that fail or are open. The working space ends at its headroom; the
 * dedicated one takes foreign pipes and ducts at any height but that of the panel itself.
 */
export const intrusions = (job: Job, option: Option, plan: Plan): Intrusion[] => {
  const seen = new Set<Id>();
  const { id: panel } = option.enclosure;
  return plan.findings
    .filter((f) => matters(f, panel) && f.shape !== null)
    .flatMap((f) =>
      things(job.site, 'after', option.moves).flatMap((thing): Intrusion[] => {
        const working = f.rule !== DEDICATED;
        const counts = working
          ? (thing.blocksSpace || (f.rule === 'WS-STORE' && thing.stored)) && thing.fromZ < HEADROOM_IN
          : thing.foreign;
        if (!counts || (f.rule === 'WS-STORE') !== thing.stored) return [];
        const outline = clipConvex(
          thing.outline,
          f.shape!.map(([x, y]): Pt => [x, y]),
        );
        if (outline.length < 3 || Math.abs(signedArea(outline)) < 0.01 || seen.has(thing.id)) return [];
        seen.add(thing.id);
        const toZ = working ? Math.min(thing.toZ, HEADROOM_IN) : thing.toZ;
        return [{ thing: thing.id, rule: f.rule, outline, fromZ: Math.max(0, thing.fromZ), toZ }];
      }),
    );
};

const GROWN_IN = 0.06;
const marked = (i: Intrusion): Solid => ({
  id: `in the way: ${i.thing}`,
  kind: 'intrusion',
  ...prism(i.outline, i.fromZ + GROWN_IN, i.toZ + GROWN_IN, { surface: 'intrusion', stroke: stroke('profile', 'ink') }),
  body: null,
});

/** Working space, dedicated space, and what stands in them. */
export const solidSpaces = (job: Job, option: Option, plan: Plan): Solid[] => {
  const space = workingSpace(plan, option);
  return [
    ...(space ? [clearSpace('working space', space, 0, HEADROOM_IN)] : []),
    ...dedicatedSpace(plan, option),
    ...intrusions(job, option, plan).map(marked),
  ];
};
