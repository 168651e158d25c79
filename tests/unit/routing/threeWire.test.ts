import { describe, expect, it } from 'vitest';
import { route } from '../../../src/routing/route';
import type { Cable } from '../../../src/standards/cable';
import type { Edition } from '../../../src/units/types';
import { askFor, homeRun, room } from './smallRoom';

/** 250.140: three wires are excused in the circuit that exists; 2017 and 2020 bar a bare neutral from a subpanel. */
const BARE: Partial<Cable> = { kind: 'SE-U', size: '8', hots: 2, neutral: 'bare', ground: false };
const INSULATED: Partial<Cable> = { size: '10', hots: 2, neutral: 'insulated', ground: false };

/** The way of a range cable that is drawn back from `pivot` (119 reaches, 60 does not). */
const way = (
  cable: Partial<Cable>,
  pivot: number,
  edition: Edition = 2020,
  becomes: 'removed' | 'splice can' = 'removed',
) => {
  const old = homeRun('h1');
  const { job, option } = room({
    homeRuns: [{ ...old, cable: { ...old.cable, ...cable } }],
    group: { pivot },
    option: { replaces: [{ enclosure: 'old', becomes }] },
  });
  const circuits = job.circuits.map((c) => ({ ...c, poles: 2 as const, volts: 240 as const, amps: 40 }));
  const fed = { ...option, enclosure: { ...option.enclosure, role: 'feeder-fed' as const } };
  const changed = { ...job, circuits, options: [fed], code: { ...job.code, edition } };
  return route(askFor({ job: changed, option: fed })).runs[0]!;
};

describe('an old three-wire range or dryer cable', () => {
  it('too short it is not cut in, not spliced in a can, but run anew with four wires', () => {
    for (const becomes of ['removed', 'splice can'] as const)
      for (const cable of [BARE, INSULATED]) {
        const run = way(cable, 60, 2023, becomes);
        expect(run.way).toBe('new home run');
        expect(run.why).toContain('three-wire');
        expect(run.newCable).toMatchObject({ hots: 2, neutral: 'insulated', ground: true });
      }
  });
  it('a bare neutral is not drawn back to a subpanel before 2023', () => {
    expect(way(BARE, 119, 2017).way).toBe('new home run');
    expect(way(BARE, 119, 2020).way).toBe('new home run');
    expect(way(BARE, 119, 2023).way).toBe('reuse');
  });
  it('an insulated neutral that reaches is drawn back in any code year', () => {
    expect(way(INSULATED, 119, 2017).way).toBe('reuse');
  });
  it('two hots without a neutral, as of a water heater, are cut in like any other', () => {
    expect(way({ size: '10', hots: 2, neutral: 'none', ground: false }, 60).way).toBe('cut-in');
  });
});
