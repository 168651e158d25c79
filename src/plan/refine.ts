import type { Plan, Refinement } from '../facts/result';
import type { Enclosure, Job, Option } from '../job/schema';
import { enclosureOnFace, faceOf, wallFaces } from '../job/site';
import { byId } from '../units/order';
import { type In, isKnown } from '../units/types';
import { refineWords as say } from '../words/en/refine';
import { barsThePlace } from './barred';
import { placesOn } from './map/clearPlaces';
import { laidAt, type Spot } from './map/lookAt';
import { MAP_STEP_IN } from './map/positions';
import { planOption } from './planOption';

/** How far an in-place panel may be shifted along its wall and still be in place. */
export const SHIFT_IN: In = 12;
/** Common studs, where the survey does not say how far apart they are. */
const STUD_IN: In = 16;
const SAME = 1e-6;

interface Tried {
  readonly id: Refinement['id'];
  readonly spot: Spot;
}

/** Cables with a joint in them, or run anew: what a better place spares. */
const joined = (plan: Plan): number =>
  plan.runs.filter((r) => r.way !== 'stays' && r.way !== 'reuse' && r.way !== 'stays on old panel').length;

const topOf = (e: Enclosure): In => enclosureOnFace(e).top;

/** Everything an electrician would try before cutting a cable: tops flush, along the wall, upside down, the other face, the next bay. */
const spotsOf = (job: Job, option: Option): Tried[] => {
  const { enclosure } = option;
  const { on, size, upright } = enclosure;
  const faces = wallFaces(job.site, 'after');
  const face = faceOf(faces, on);
  if (!face) return [];
  const last = face.length - size.width;
  const spot = (more: Partial<typeof on>, turned = upright): Spot => ({ on: { ...on, ...more }, upright: turned });
  const fits = (left: In) => left >= 0 && left <= last + SAME;
  const old = byId(job.enclosures).filter((e) => option.replaces.some((r) => r.enclosure === e.id));
  const tops = [...new Set(old.map((e) => topOf(e) - size.height))].filter(
    (bottom) => bottom >= 0 && Math.abs(bottom - on.bottom) > SAME,
  );
  const near = (left: In) => Math.abs(left - on.left) <= SHIFT_IN + SAME && Math.abs(left - on.left) > SAME;
  const steps = [-4, -3, -2, -1, 1, 2, 3, 4].map((n) => on.left + n * MAP_STEP_IN);
  const lefts = [...steps, ...placesOn(job, option, face).clear.flat(), ...old.map((e) => e.on.left)];
  const shifts = [...new Set(lefts.map((x) => Math.round(x * 64) / 64))].filter((x) => fits(x) && near(x));
  const stud = isKnown(face.studSpacing) ? face.studSpacing : STUD_IN;
  const bays = stud === null ? [] : [on.left - stud, on.left + stud].filter(fits);
  const other = faces.find((f) => f.wall === on.wall && f.face !== on.face);
  return [
    ...tops.map((bottom): Tried => ({ id: 'flush tops', spot: spot({ bottom }) })),
    ...shifts.map((left): Tried => ({ id: 'shift', spot: spot({ left }) })),
    { id: 'upside down', spot: spot({}, !upright) },
    ...(other
      ? [
          {
            id: 'other face' as const,
            spot: spot({ face: other.face, left: Math.max(0, face.length - on.left - size.width) }),
          },
        ]
      : []),
    ...bays.map((left): Tried => ({ id: 'next bay', spot: spot({ left }) })),
  ];
};

/** Fewer joined cables first, then cheaper, then nearer to where the panel was laid. */
const better = (a: Refinement, b: Refinement): number => b.saves - a.saves || a.cents - b.cents;

/**
 * An option in place, refined: of each kind of small change the best that nothing stops, with how many cables it spares
 * a joint and what it makes of the price. Steps are live plans, so that whoever drives may stop.
 */
export function* refineSteps(job: Job, option: Option): Generator<Plan, Refinement[]> {
  if (option.kind !== 'in place') return [];
  const own = planOption(job, option, 'live');
  yield own.plan;
  const found = new Map<Refinement['id'], Refinement>();
  for (const { id, spot } of spotsOf(job, option)) {
    const laid = laidAt(job, option, spot);
    if (barsThePlace({ ...own.facts, ...laid }).length > 0) continue;
    const { plan } = planOption(laid.job, laid.option, 'live');
    yield plan;
    if (plan.tally.stops > 0 || plan.runs.some((r) => r.blockedBy.length > 0)) continue;
    const one: Refinement = {
      id,
      say: say.is[id],
      on: spot.on,
      upright: spot.upright,
      saves: joined(own.plan) - joined(plan),
      cents: plan.tally.likelyCents - own.plan.tally.likelyCents,
    };
    const before = found.get(id);
    if (!before || better(one, before) < 0) found.set(id, one);
  }
  return [...found.values()].sort(better);
}

export const refinementsOf = (job: Job, option: Option): Refinement[] => {
  const steps = refineSteps(job, option);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
