import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { type Id, type In, isKnown, type Pt3 } from '../units/types';
import { drawingWords as say } from '../words/en/drawings';
import type { TextLine } from './items';
import { boxNames, newTrunks } from './newWork';
import { oldCanBecomes } from './oldWork';
import { boxPlace, canPlace } from './solidPanels';
import { pointIn } from './solidShapes';
import { CUT_IN, middle, stands } from './things';
import { longestOfEach } from './trunks';

/** Lettering and the point in the house it names. */
export interface SolidName {
  readonly id: Id;
  readonly line: Omit<TextLine, 'size'>;
  readonly at: Pt3;
  /** First come first served. */
  readonly rank: number;
  readonly must: boolean;
  /** Stands on the thing, not beside it. */
  readonly on: boolean;
}

const name = (
  id: Id,
  text: string,
  at: Pt3,
  rank: number,
  tone: TextLine['tone'],
  more: Partial<SolidName> = {},
): SolidName => ({ id, line: { say: text, lettering: 'small', tone }, at, rank, must: false, on: false, ...more });

const panels = (job: Job, option: Option, plan: Plan | null): SolidName[] => {
  const { enclosure } = option;
  const fresh = canPlace(job, enclosure);
  const { spaces } = enclosure;
  const text = isKnown(spaces) ? say.newPanel({ spaces }) : say.newPanelSpacesUnknown;
  return [
    ...(fresh ? [name(enclosure.id, text, pointIn(fresh, 0.5, 0, 0.7), 1, 'new', { must: true })] : []),
    ...job.enclosures.flatMap((old) => {
      const place = canPlace(job, old);
      if (!place) return [];
      return [name(old.id, say.oldPanel[oldCanBecomes(option, plan, old.id)], pointIn(place, 0.5, 0, 0.7), 3, 'ink-3')];
    }),
  ];
};

const boxes = (job: Job, plan: Plan): SolidName[] => {
  const names = boxNames(plan);
  return plan.boxes.flatMap((box) =>
    names.has(box.id)
      ? [name(box.id, names.get(box.id)!, pointIn(boxPlace(job, box), 0.5, 0.5, 1), 2, 'new', { must: true })]
      : [],
  );
};

const things = (job: Job, option: Option): SolidName[] =>
  stands(job.site, option.moves)
    .filter(({ obstacle }) => obstacle.kind !== 'post')
    .map(({ obstacle: o, outline }) => {
      const [x, y] = middle(outline);
      const over = o.bottom >= CUT_IN;
      const at: Pt3 = [x, y, over ? o.bottom : o.bottom + o.size.height];
      return name(o.id, over ? say.over({ thing: o.kind }) : o.kind, at, 5, over ? 'ink-3' : 'ink-2', { on: true });
    });

/** How many cables run together, where their longest stretch is. */
const counts = (plan: Plan): SolidName[] =>
  longestOfEach(newTrunks(plan)).flatMap((trunk, i) => {
    if (trunk.cables.length < 2) return [];
    const at: Pt3 = [
      (trunk.from[0] + trunk.to[0]) / 2,
      (trunk.from[1] + trunk.to[1]) / 2,
      heightAt(plan, trunk.cables[0]!, trunk),
    ];
    return [
      {
        ...name(`count-${i}`, String(trunk.cables.length), at, 4, 'new'),
        line: { say: String(trunk.cables.length), lettering: 'figure', tone: 'new' } as const,
      },
    ];
  });
/** Height of the leg of a run that covers a stretch of its plan. */
const heightAt = (
  plan: Plan,
  run: Id,
  stretch: { readonly from: readonly [In, In]; readonly to: readonly [In, In] },
): In => {
  const [mx, my] = [(stretch.from[0] + stretch.to[0]) / 2, (stretch.from[1] + stretch.to[1]) / 2];
  const legs = plan.runs.find((r) => r.homeRun === run)?.legs ?? [];
  const over = legs.find(({ from, to }) => {
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const via = Math.hypot(mx - from[0], my - from[1]) + Math.hypot(to[0] - mx, to[1] - my);
    return long > 0 && via - long < 0.01;
  });
  return over ? (over.from[2] + over.to[2]) / 2 : 0;
};

/** What is lettered in the 3-D view. */
export const solidNames = (job: Job, option: Option, plan: Plan | null): SolidName[] => [
  ...panels(job, option, plan),
  ...(plan ? [...boxes(job, plan), ...counts(plan)] : []),
  ...things(job, option),
];
