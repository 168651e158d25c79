import type { Plan } from '../facts/result';
import type { Job, Option } from '../job/schema';
import { formatFeetInches } from '../units/length';
import { type Id, type In, isKnown, type Pt3 } from '../units/types';
import { sceneLetters as say } from '../words/en/scene';
import { boxPlace } from './boxPlace';
import type { TextLine } from './items';
import { boxNames, newTrunks } from './newWork';
import { oldCanBecomes } from './oldWork';
import { canPlace } from './solidPanels';
import { pointIn } from './solidShapes';
import { intrusions } from './solidSpaces';
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
  /** on: on the thing · beside: with a leader to it · close: a count at the slash across a row. */
  readonly stands: 'on' | 'beside' | 'close';
}

const name = (
  id: Id,
  text: string,
  at: Pt3,
  rank: number,
  tone: TextLine['tone'],
  more: Partial<SolidName> = {},
): SolidName => ({
  id,
  line: { say: text, lettering: more.stands === 'close' ? 'figure' : 'small', tone },
  at,
  rank,
  must: false,
  stands: 'beside',
  ...more,
});

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
      const over = o.bottom >= CUT_IN && Math.min(o.size.width, o.size.depth) >= 8;
      const at: Pt3 = [x, y, over ? o.bottom : o.bottom + o.size.height / 2];
      return name(o.id, over ? say.over({ thing: o.kind }) : o.kind, at, 5, over ? 'ink-3' : 'ink-2', { stands: 'on' });
    });

/** A shorter stretch of a row is not counted: the figure would be longer than it. Our own line. */
const COUNTED_IN = 10;
/** How many cables run together, where their longest stretch is. */
const counts = (plan: Plan): SolidName[] =>
  longestOfEach(newTrunks(plan)).flatMap(({ from, to, cables }, i) => {
    if (cables.length < 2 || Math.hypot(to[0] - from[0], to[1] - from[1]) < COUNTED_IN) return [];
    const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const at: Pt3 = [x, y, heightAt(plan, cables[0]!, x, y)];
    return [name(`count-${i}`, String(cables.length), at, 4, 'new', { stands: 'close' })];
  });
/** Height of the leg of a run that passes over a plan point. */
const heightAt = (plan: Plan, run: Id, mx: In, my: In): In => {
  const legs = plan.runs.find((r) => r.homeRun === run)?.legs ?? [];
  const over = legs.find(({ from, to }) => {
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const via = Math.hypot(mx - from[0], my - from[1]) + Math.hypot(to[0] - mx, to[1] - my);
    return long > 0 && via - long < 0.01;
  });
  return over ? (over.from[2] + over.to[2]) / 2 : 0;
};

/** What stands in the way, with what was measured and what is asked for where both are lengths. */
const inTheWay = (job: Job, option: Option, plan: Plan): SolidName[] =>
  intrusions(job, option, plan).map((i) => {
    const [x, y] = middle(i.outline);
    const finding = plan.findings.find((f) => f.rule === i.rule && f.subject === option.enclosure.id);
    const { measured = null, required = null, unit = '' } = finding ?? {};
    const text =
      unit === 'in' && measured !== null && required !== null && required > 0
        ? say.ofNeeded({ measured: formatFeetInches(measured), required: formatFeetInches(required) })
        : say.inTheWay;
    return name(`in the way: ${i.thing}`, text, [x, y, i.toZ], 2, 'ink');
  });

/** What is lettered in the 3-D view. */
export const solidNames = (job: Job, option: Option, plan: Plan | null): SolidName[] => [
  ...panels(job, option, plan),
  ...(plan ? [...boxes(job, plan), ...inTheWay(job, option, plan), ...counts(plan)] : []),
  ...things(job, option),
];
