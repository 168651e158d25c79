import { expect, test } from 'vitest';
import { mapModel } from '../../../../src/drawings/mapModel';
import type { Place } from '../../../../src/facts/result';
import type { Job, Option } from '../../../../src/job/schema';
import { wallFaces } from '../../../../src/job/site';
import { isBarredByPlace } from '../../../../src/plan/barred';
import { placesOn } from '../../../../src/plan/map/clearPlaces';
import { laidAt } from '../../../../src/plan/map/lookAt';
import { BEST, mapSteps } from '../../../../src/plan/map/mapSteps';
import { leftsOn, positionsOf } from '../../../../src/plan/map/positions';
import { offered, placeKey, ranked } from '../../../../src/plan/map/rank';
import { splicesOnly } from '../../../../src/plan/map/splicesOnly';
import { planOption } from '../../../../src/plan/planOption';
import { stageOf } from '../../../../src/plan/stages';
import type { Pt, Pt3 } from '../../../../src/units/types';
import { demoJob } from '../../../support/demos';
import { cases } from '../../../support/effort';
import { homeRun, room } from '../../routing/smallRoom';
import { shifted, washerCase } from './washerCase';

test('every 3 in from the left end, and both ends of every clear stretch', () => {
  expect(leftsOn(34.5, 14.5, { clear: [[4.25, 10.125]] })).toEqual([0, 3, 4.25, 6, 9, 10.125, 12, 15, 18]);
  expect(leftsOn(14, 14.5, { clear: [] })).toEqual([]);
  // a stretch of a single point, and ends off the sixteenths: rounded to the inside
  expect(leftsOn(20, 14.5, { clear: [[2.001, 2.999]] })).toEqual([0, 2.015625, 2.984375, 3]);
});

/*
 * The washer demo by hand (places.test.ts): on the laundry's north wall, 180 in, the panel is clear from 58 to 163.25;
 * 3 in apart its left edges are 0, 3 … 165, so that 60 … 162 and both ends are clear, 0 … 57 and 165 are not.
 */
test('on the washer’s wall: what is clear, and what bars the rest', () => {
  const job = demoJob('washer');
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const on = positionsOf(job, option).filter((p) => p.on.wall === 'north-laundry');
  const clear = on.filter((p) => p.why === null).map((p) => p.on.left);
  expect(clear).toEqual([58, ...Array.from({ length: 35 }, (_, i) => 60 + 3 * i), 163.25]);
  expect(on.filter((p) => p.on.left < 58).every((p) => p.why === 'washer')).toBe(true);
});

test('spliced only, a place farther along costs the cable between, by the foot', () => {
  // on plywood each of ten 12/2 cables is 30 in longer at s = 32 than at s = 2: 25 ft of cable with its slack, pulled, stapled
  const { job, option } = shifted(8);
  const stage = stageOf(job, option, 'live');
  const reckon = splicesOnly({ ...stage, ask: { ...stage.ask, penalties: [] } });
  const at = (left: number) => reckon({ ...option.enclosure.on, left }).mills;
  const perFt =
    stage.unit('cable:12/2 NM')! * (1 + job.practice.slackShare) + stage.unit('pull ft')! + stage.unit('staple')! / 4.5;
  expect(at(142) - at(112)).toBeGreaterThan(25 * perFt * 0.98);
  expect(at(142) - at(112)).toBeLessThan(25 * perFt * 1.02);
});

/** Every place planned by itself, without the map, but those that are barred whatever is laid: the least likely price of what nothing stops. */
const exhaustive = (job: Job, option: Option): number => {
  const { facts } = planOption(job, option, 'live');
  const prices = wallFaces(job.site, 'after').flatMap((face) =>
    leftsOn(face.length, option.enclosure.size.width, placesOn(job, option, face)).flatMap((left) => {
      const laid = laidAt(job, option, {
        on: { ...option.enclosure.on, wall: face.wall, face: face.face, left },
        upright: option.enclosure.upright,
      });
      if (isBarredByPlace({ ...facts, ...laid })) return [];
      const { plan } = planOption(laid.job, laid.option, 'live');
      const open = plan.tally.stops === 0 && plan.runs.every((r) => r.blockedBy.length === 0);
      return open ? [plan.tally.likelyCents] : [];
    }),
  );
  return Math.min(...prices);
};

/** A room of 8 ft by 6 ft, so that every place can be planned: an old can, two cables through the joists, a washer. */
const small = (): { job: Job; option: Option } => {
  const run: Pt3[] = [
    [0, 27.25, 68],
    [0, 27.25, 96.625],
    [80, 27.25, 96.625],
    [80, 60, 96.625],
  ];
  const group = { path: run, reachable: [[0, 140]] as [number, number][], pivot: 68.625 };
  const { job, option } = room({ homeRuns: [homeRun('h1'), homeRun('h2')], group });
  const outline: Pt[] = [
    [0, 0],
    [0, 72],
    [96, 72],
    [96, 0],
  ];
  const washer = { ...washerCase(0).site.obstacles[0]!, corner: [68, 44] as const };
  const old = { ...job.enclosures[0]!, on: { ...job.enclosures[0]!.on, left: 20 } };
  const site = {
    ...job.site,
    outline: job.site.outline.map((corner, i) => ({ ...corner, at: outline[i]! })),
    areas: job.site.areas.map((area) => ({ ...area, outline })),
    obstacles: [washer],
  };
  const panel = { ...option.enclosure, on: { ...option.enclosure.on, left: 24 } };
  const laid = { ...option, enclosure: panel };
  return { job: { ...job, enclosures: [old], site, options: [laid] }, option: laid };
};
const demos = (): { job: Job; option: Option }[] =>
  ['small-house', 'washer', 'l-shaped'].map((name) => {
    const job = demoJob(name);
    return { job, option: job.options.find((o) => o.id === 'relocate-a')! };
  });

test(
  'the best at live grade is that of an exhaustive search; the best ten are planned whole, and the first of them offered',
  () => {
    const all = cases(1, 4) === 1 ? [small()] : [small(), ...demos()];
    for (const { job, option } of all) {
      const live = new Map<string, Place>();
      const steps = mapSteps(job, option);
      let done: Place[] | null = null;
      let said = { done: 0, of: 0 };
      while (!done) {
        const step = steps.next();
        if (step.done) done = step.value;
        else {
          said = step.value;
          for (const p of step.value.changed) if (p.grade === 'live') live.set(placeKey(p), p);
        }
      }
      const own = [...live.values()].filter(
        (p) => p.clear && p.on.bottom === option.enclosure.on.bottom && p.upright === option.enclosure.upright,
      );
      expect(Math.min(...own.map((p) => p.cents!))).toBe(exhaustive(job, option));
      expect(said.done).toBe(said.of);
      const whole = done.filter((p) => p.grade === 'final');
      expect(whole.length).toBe(Math.min(BEST, own.length));
      const best = offered(done)!;
      const laid = laidAt(job, option, best);
      const { plan } = planOption(laid.job, laid.option);
      expect([best.cents, best.afciAdded]).toEqual([plan.tally.likelyCents, plan.tally.afciAdded]);
      expect(ranked(done)[0]).toBe(best);
      // what is barred says so, and has no price
      for (const p of done.filter((one) => !one.clear)) expect([p.cents, p.why === '']).toEqual([null, false]);
    }
  },
  cases(60_000, 3_600_000),
);

test('lines where circuits pass 6 ft stand between the places that differ', () => {
  const { option } = shifted(8);
  const place = (left: number, past: string[], clear = true): Place => ({
    on: { ...option.enclosure.on, left },
    upright: true,
    clear,
    rules: clear ? [] : ['WS-DEPTH'],
    why: clear ? '' : 'washer',
    cents: clear ? 1000 + left : null,
    afciAdded: clear ? past.length : null,
    past,
    conductorsSpliced: clear ? 0 : null,
    grade: clear ? 'live' : null,
  });
  const places = [place(0, [], false), place(3, []), place(6, []), place(9, ['c1']), place(12, ['c1', 'c2'])];
  const { faces, least, most } = mapModel(option, places);
  const on = faces.get('w1:front')!;
  const half = option.enclosure.size.width / 2;
  expect(on.passes).toEqual([
    { x: 7.5 + half, circuits: ['c1'] },
    { x: 10.5 + half, circuits: ['c2'] },
  ]);
  expect(on.shut).toEqual([{ along: [half, 3 + half], rules: ['WS-DEPTH'] }]);
  expect([least, most]).toEqual([1003, 1012]);
  expect(on.ticks.map((t) => t.within)).toEqual([true, true, true, false, false]);
});
