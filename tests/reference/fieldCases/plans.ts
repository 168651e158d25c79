import { expect } from 'vitest';
import type { Plan } from '../../../src/facts/result';
import type { Job } from '../../../src/job/schema';
import { planOption } from '../../../src/plan/planOption';
import { demoJob } from '../../support/demos';
import { type Changes, changed } from '../../unit/rules/support';
import type { Check } from './case';

/** Whole plans of the small demo house, a service panel with nine cables, with what a case says put in. */

const SMALL = demoJob('small-house');
const at = (id: string) => SMALL.homeRuns.findIndex((h) => h.id === id);
const planned = (option: string, set: Changes = {}): { plan: Plan; job: Job } => {
  const job = changed(SMALL, set);
  return { job, plan: planOption(job, job.options.find((o) => o.id === option)!).plan };
};
const outcomeOf = (plan: Plan, rule: string) => plan.findings.find((f) => f.rule === rule)?.outcome;
const quantityOf = (plan: Plan, item: string) =>
  plan.price.lines.filter((l) => l.item === item).reduce((n, l) => n + l.quantity, 0);

/** The range on a three-wire cable with a bare neutral. */
const OLD_RANGE: Changes = {
  [`/homeRuns/${at('h-07')}/cable/kind`]: 'SE-U',
  [`/homeRuns/${at('h-07')}/cable/neutral`]: 'bare',
  [`/homeRuns/${at('h-07')}/cable/ground`]: false,
};

export const planCases: Readonly<Record<string, Check>> = {
  'FC-12': (e) => {
    // 18 in short of the terminals: 22 in of tail becomes 4
    const short = Object.fromEntries([0, 1].map((g) => [`/cableGroups/${g}/tails`, { hot: 4, neutral: 4, ground: 4 }]));
    const run = planned('in-place', short).plan.runs.find((r) => r.homeRun === 'h-03')!;
    expect(run.way.replaceAll(' ', '_').replace('in_new_panel', 'inside_panel')).toBe(e.method);
    // hot and neutral are counted as spliced; the ground is the third pigtail
    expect(run.reach!.hot < 0 && run.reach!.neutral < 0 && run.reach!.ground < 0).toBe(true);
    expect(run.conductorsSpliced + 1).toBe(e.pigtails);
  },
  'FC-57': (e) => {
    const bare = { [`/homeRuns/${at('h-05')}/cable/ground`]: false };
    const { plan, job } = planned('relocate-a', bare);
    const run = plan.runs.find((r) => r.homeRun === 'h-05')!;
    expect(run.newCable!.ground).toBe(e.ground_in_extension);
    expect(job.homeRuns[at('h-05')]!.cable.ground).toBe(e.ground_downstream);
    expect(plan.findings.some((f) => f.rule === 'UNGROUNDED' && f.subject === 'h-05')).toBe(true);
  },
  'FC-60': (e) => {
    const metal = { [`/homeRuns/${at('h-05')}/cable/metal`]: 'Al' };
    const { plan } = planned('relocate-a', metal);
    expect(plan.runs.find((r) => r.homeRun === 'h-05')!.conductorsSpliced).toBe(2);
    // hot, neutral and ground
    expect(quantityOf(plan, 'splice:Al-Cu')).toBe(e.connectors_per_circuit);
  },
  'FC-61': (e) => {
    const { plan } = planned('relocate-a', { '/options/1/replaces/0/becomes': 'subpanel' });
    expect(new Set(plan.runs.map((r) => r.way))).toEqual(new Set(['stays on old panel']));
    expect(plan.tally.conductorsSpliced).toBe(e.branch_splices);
    // what feeds the old panel is not planned: the price says so
    expect(plan.price.missing).toContain('/options/1/replaces/0/becomes');
  },
  'FC-64': (e) => {
    const { plan } = planned('relocate-a', OLD_RANGE);
    const run = plan.runs.find((r) => r.homeRun === 'h-07')!;
    const { hots, neutral, ground } = run.newCable!;
    const fourWire = hots === 2 && neutral === 'insulated' && ground === true;
    expect(run.way === 'new home run' && fourWire ? 'new_4wire' : run.way).toBe(e.default);
  },
  'FC-65': (e) => {
    const stays = planned('in-place', OLD_RANGE).plan;
    expect(outcomeOf(stays, 'OLD-3WIRE') === 'holds').toBe(e.service_inside_keeps_3wire);
    const moved = planned('relocate-a', OLD_RANGE).plan.runs.find((r) => r.homeRun === 'h-07')!;
    expect(moved.way !== 'new home run').toBe(e.panel_moved_keeps_3wire);
  },
  'FC-72': (e) => {
    const along = {
      '/options/1/serviceDisconnect': null,
      '/options/1/enclosure/role': 'service',
      '/options/1/enclosure/bonded': true,
    };
    expect(outcomeOf(planned('relocate-a', along).plan, 'SVC-LOC') === 'fails').toBe(
      e.needs_outside_disconnect_if_limit_5,
    );
    expect(outcomeOf(planned('relocate-a').plan, 'SVC-LOC')).toBe('holds');
  },
  'FC-73': (e) => {
    const inYear = (year: number) => planned('in-place', { '/code/edition': year }).plan;
    // 2020 is silent: asked, not required
    expect(outcomeOf(inYear(2020), 'EMDISC') === 'fails').toBe(e['2020_panel_only_disc']);
    expect(outcomeOf(inYear(2023), 'EMDISC') === 'fails').toBe(e['2023_service_equipment_disc']);
    expect([2020, 2023].every((y) => outcomeOf(inYear(y), 'SPD-SVC') === 'fails')).toBe(e.surge_2020plus);
    expect(outcomeOf(inYear(2017), 'SPD-SVC')).toBeUndefined();
  },
  'FC-94': (e) => {
    const { plan, job } = planned('relocate-a');
    const tested = new Set(plan.price.lines.filter((l) => l.item === 'pre-test').flatMap((l) => l.homeRuns));
    const guarded = plan.afci.filter((a) => a.required === 'yes').map((a) => a.circuit);
    const theirs = job.homeRuns.filter((h) => h.circuits.some((c) => guarded.includes(c)));
    expect(theirs.length).toBeGreaterThan(0);
    expect(theirs.every((h) => tested.has(h.id))).toBe(e.pretest_required);
  },
};
