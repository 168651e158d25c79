import { expect } from 'vitest';
import { calcFeeder } from '../../../src/calculations/feeder';
import type { RuleFacts } from '../../../src/facts/ruling';
import type { Enclosure } from '../../../src/job/schema';
import { arrangePanel } from '../../../src/loads/arrangePanel';
import { breakersOf } from '../../../src/loads/breakers';
import { LUGS_AN_END } from '../../../src/plan/required';
import { runRules } from '../../../src/rules/run';
import { ampacity } from '../../../src/standards/ampacity';
import { baseJob, type Changes, changed, directory, factsOf } from '../../unit/rules/support';
import { answerOf, type Check } from './case';

/** The rules, asked about the small basement of the rule tests with what a case says put in. */

const asked = (rule: string, subject: string, set: Changes, over: Partial<RuleFacts> = {}) =>
  runRules(factsOf(changed(baseJob, set), over)).verdicts.find((v) => v.rule === rule && v.subject === subject);
const NEW = '/options/0/enclosure';
const AREA = '/site/areas/0/state';

/** The old cabinet, emptied, with splices in it. */
const keptCan = (job: typeof baseJob): Partial<RuleFacts> => ({
  boxes: [{ ...factsOf(job).boxes[0]!, id: 'can-old', on: 'splice can', at: [47, 144, 72] }],
});
const canIn = (use: string, answer: Changes = {}) => {
  const set = { [`${AREA}/now/use`]: use, [`${AREA}/after/use`]: use, ...answer };
  return asked('OLD-CAN', 'old', set, keptCan(changed(baseJob, set)));
};

const feeder = (awg: string, breakerAmps: number, terminals: 60 | 75 | 'unknown' = 75) =>
  answerOf(
    calcFeeder({
      edition: 2023,
      metal: 'Al',
      awg,
      cable: 'SE-R',
      breakerAmps,
      terminals,
      wholeDwelling: false,
      continuousAmps: 0,
      otherAmps: 62,
      conductors: 2,
      ambientF: 86,
      upsizedFrom: null,
    }),
  );

const circuitsOf = (onePole: number, twoPole: number) =>
  Array.from({ length: onePole + twoPole }, (_, i) => ({
    ...baseJob.circuits[0]!,
    id: `x-${String(i).padStart(2, '0')}`,
    poles: i < onePole ? (1 as const) : (2 as const),
    volts: i < onePole ? (120 as const) : (240 as const),
  }));

export const ruleCases: Readonly<Record<string, Check>> = {
  'FC-07': (e) => {
    // the inspector says; nothing in the text bars splices in a bedroom
    expect(canIn('bedroom', { '/code/amendments': { spliceCan: 'yes' } })!.outcome === 'holds').toBe(e.may_remain);
    const ask = canIn('bedroom')!;
    expect(ask.outcome).toBe('cannot be told');
    // what is to be seen on site, whoever decides
    expect(/\breachable\b/i.test(ask.look ?? '')).toBe(e.must_be_accessible);
    expect(/\bfull cover\b/i.test(ask.look ?? '')).toBe(e.needs_cover_fastened);
  },
  'FC-09': (e) => {
    const drywall = { [`${AREA}/after/cover`]: 'drywall' };
    expect(asked('SPLICE-BOX', 'box-1', drywall)!.outcome === 'holds').toBe(e.boxes_allowed_behind_drywall);
    expect(asked('SPLICE-BOX', 'box-1', {})!.outcome).toBe('holds');
  },
  'FC-29': (e) => {
    const pairs = [1, 2].flatMap((n): typeof baseJob.circuits =>
      (['a', 'b'] as const).map((side) => ({
        ...baseJob.circuits[0]!,
        id: `m-${n}${side}`,
        partner: `m-${n}${side === 'a' ? 'b' : 'a'}`,
      })),
    );
    const breakers = breakersOf(
      { ...baseJob, circuits: pairs, homeRuns: [] },
      pairs.map((c) => c.id),
    );
    expect(breakers.filter((b) => b.afci && b.poles === 2)).toHaveLength(Number(e.two_pole_afci));
    expect(breakers).toHaveLength(2);
  },
  'FC-31': (e) => {
    const sameLeg = factsOf(baseJob).arrangement;
    const legs = { ...sameLeg, directory: directory({ 'c-2': 'A', 'c-3': 'A' }) };
    expect(asked('MWBC', 'c-2', {}, { arrangement: legs })!.outcome === 'fails').toBe(e.violation);
  },
  'FC-32': (e) => {
    // one neutral back to the panel for several circuits is a neutral borrowed from another
    const trunk = asked('GROUP', 'c-1', { '/circuits/0/flags': ['borrowed neutral'] })!;
    expect(trunk.outcome !== 'fails').toBe(e.neutral_trunk_allowed);
  },
  'FC-44': (e) => {
    const bath = { [`${AREA}/after/use`]: 'bath' };
    expect(asked('BATH', 'new', bath)!.outcome).toBe('fails');
    expect(canIn('bath', { '/code/amendments': { spliceCan: 'yes' } })!.outcome === 'holds').toBe(
      e.old_box_allowed_in_bathroom,
    );
  },
  'FC-45': (e) => {
    const stair = {
      id: 'stair-1',
      kind: 'stair',
      corner: [95, 110],
      turn: 0,
      size: { width: 30, depth: 34, height: 30 },
      sizes: 'measured',
      bottom: 0,
      blocksCable: false,
      blocksSpace: false,
      foreign: false,
      clearance: 0,
      exists: { now: true, after: true },
      stored: false,
      moveCents: null,
    };
    expect(asked('STAIRS', 'new', { '/site/obstacles/-': stair })!.outcome).toBe('fails');
    expect(e.over_steps).toBe('fail');
    // a level floor 36 in deep, with the steps beyond it
    const beyond = { ...stair, corner: [95, 60] };
    expect(asked('STAIRS', 'new', { '/site/obstacles/-': beyond })!.outcome).toBe('holds');
    expect(asked('WS-DEPTH', 'new', { '/site/obstacles/-': beyond })!.outcome).toBe('holds');
    expect(e.landing_36).toBe('pass');
  },
  'FC-52': (e) => {
    const inverted = (mainAt: Enclosure['mainAt']) =>
      asked('ORIENT', 'new', { [`${NEW}/upright`]: false, [`${NEW}/mainAt`]: mainAt })!.outcome;
    expect([inverted('top'), inverted('bottom')]).toEqual(['holds', 'holds']);
    expect(e.inverted_us).toBe('pass_if_horizontal_main');
  },
  'FC-55': (e) => {
    // an empty cabinet 12 in deep right over a panel 4 in deep
    const trough = {
      ...baseJob.enclosures[0]!,
      id: 'trough',
      on: { wall: 'north', face: 'front', left: 100, bottom: 78 },
      size: { width: 14.5, depth: 12, height: 12 },
    };
    const verdict = asked('WS-6IN', 'new', { '/enclosures/-': trough, [`${NEW}/size/depth`]: 4 })!;
    expect(verdict.measured).toBe(e.protrusion_in);
    expect(verdict.outcome === 'holds').toBe(e.pass);
  },
  'FC-53': (e) => {
    // a poured wall: 1/4 in of air behind the cabinet, 312.2; plywood is custom
    const damp = asked('DAMP', 'new', { '/site/outline/1/face/after/build': 'poured' });
    expect(damp!.required).toBe(e.gap_in);
  },
  'FC-66': (e) => {
    expect(ampacity('Al', '2', 75)).toBe(e.amp_2al_75C);
    expect(feeder('2', 100).outcome === 'holds').toBe(e.ok_100);
    expect(feeder('2', 90).outcome === 'holds').toBe(e.ok_90);
    const smallest = ['4', '3', '2', '1', '1/0'].find((awg) => feeder(awg, 100).outcome === 'holds');
    expect(`${smallest} AWG`).toBe(e.min_al_100);
    // the case takes 75 °C for granted; where neither end is read the rules page says "cannot be told"
    expect(feeder('2', 90, 'unknown').outcome).toBe('cannot be told');
  },
  'FC-71': (e) => {
    const steel = { '/feeder/wires': 3, '/feeder/raceway': 'metal', '/feeder/cable/ground': false };
    expect(asked('FDR-4W', 'feeder', steel)!.outcome === 'holds').toBe(e.treat_as_4wire_if_continuous);
    expect(asked('FDR-4W', 'feeder', { ...steel, '/feeder/raceway': 'none' })!.outcome).toBe('fails');
    expect(ampacity('Al', '6', 75)).toBe(e.amp_6al_75C);
  },
  'FC-86': (e) => {
    // 24 circuits of one pole, a cable each: hots on breakers, neutrals and grounds on bars, three lugs and the main
    const circuits = circuitsOf(24, 0);
    const homeRuns = circuits.map((c) => ({ ...baseJob.homeRuns[0]!, id: `h-${c.id}`, circuits: [c.id] }));
    const job = { ...baseJob, circuits, homeRuns };
    const {
      directory: list,
      neutralsToLand,
      groundsToLand,
    } = arrangePanel(job, job.options[0]!, breakersOf(job), [], 0);
    const hots = list.filter((d) => d.circuit !== null).length;
    expect([hots, neutralsToLand, groundsToLand]).toEqual([24, 24, 24]);
    expect(hots + neutralsToLand + groundsToLand + LUGS_AN_END + 1).toBe(e.terminations);
  },
  'FC-77': (e) => {
    const job = { ...baseJob, circuits: circuitsOf(22, 12), homeRuns: [] };
    const { spacesNeeded } = arrangePanel(job, job.options[0]!, breakersOf(job), [], 0);
    expect(spacesNeeded).toBe(e.spaces);
    const verdict = asked(
      'SPACES',
      'new',
      { [`${NEW}/spaces`]: 42 },
      {
        arrangement: { ...factsOf(baseJob).arrangement, spacesNeeded, sparesLeft: 42 - spacesNeeded },
      },
    );
    expect(verdict!.outcome).toBe('fails');
  },
};
