import { describe, expect, it } from 'vitest';
import { directMills } from '../../../src/pricing/assemblies';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { lengthAlong } from '../../../src/routing/cutLength';
import { route } from '../../../src/routing/route';
import { askFor, homeRun, penaltyFor, RUN_LENGTH, room } from './smallRoom';

const tick = 1 / 64;
const only = (answer: ReturnType<typeof route>) => answer.runs[0]!;

describe('reuse', () => {
  // From x = 89.875 on the run: 16.875 across to the bay over the knockout at 106.75, 76.75 along it to the wall, 24.625
  // down: 118.25; with 1/4 in inside that is the 118.5 in of cable there is between pivot and old can.
  it('is taken where the jacket reaches to the last 1/64 in', () => {
    const run = only(route(askFor(room({ group: { pivot: 118.5 } }))));
    expect(run.way).toBe('reuse');
    expect(lengthAlong([run.legs[0]!.from, ...run.legs.map((l) => l.to)])).toBe(118.25);
    expect(run.reach!.jacket).toBe(0);
    expect([run.codeLength, run.codeLengthWithTails, run.cutLength]).toEqual([0, 0, 0]);
    expect(run.legs.every((l) => l.cable === 'old')).toBe(true);
    expect(run.holes).toBe(0); // north in its own bay, then across on the plywood
  });
  it('is not taken when the pivot is 1/64 in nearer the old can', () => {
    const run = only(route(askFor(room({ group: { pivot: 118.5 - tick } }))));
    expect(run.way).not.toBe('reuse');
    expect(run.why).toContain('jacket');
  });
  it('hot, neutral and ground are tested after the jacket', () => {
    // need from the top entry 2 in from the corner, over the bar: ground 10.8 + 4 = 14.8
    const tails = { hot: 60, neutral: 60, ground: 20 };
    const spare = only(route(askFor(room({ group: { pivot: 118.5, tails: { ...tails, ground: 60 } } })))).reach!;
    expect(spare.ground).toBeCloseTo(60 + 0.25 - 14.8, 9);
    const run = only(route(askFor(room({ group: { pivot: 118.5, tails: { ...tails, ground: 14.5 } } }))));
    expect(run.way).toBe('splice in new panel');
    expect(run.codeLength).toBe(0);
    expect(run.why).toContain('ground');
  });
  it('what is not known is not reused, and says why', () => {
    for (const group of [{ pivot: 'unknown' }, { tails: 'unknown' }, { drawsBack: 'unknown' }] as const) {
      const run = only(route(askFor(room({ group }))));
      expect(run.way).not.toBe('reuse');
      expect(run.way).not.toBe('stays');
    }
  });
  it('cloth is neither reused nor cut in', () => {
    const run = only(route(askFor(room({ homeRuns: [homeRun('h1', { condition: ['cloth'] })] }))));
    expect(run.way).toBe('new home run');
    expect(run.why).toContain('cloth');
  });
  it('knob-and-tube gets a new home run only', () => {
    const old = homeRun('h1');
    const run = only(
      route(askFor(room({ homeRuns: [{ ...old, cable: { ...old.cable, kind: 'knob-and-tube', ground: false } }] }))),
    );
    expect(run.way).toBe('new home run');
  });
});

describe('cut-in and the 6 ft line', () => {
  // On the bay at x = 112 the new cable is 144 − y along and 24.625 down. The box may hang 12 in before the end of what
  // can be reached: at chain 170, y = 96.625, the length is 47.375 + 24.625 = 72 exactly.
  const at = (reachableTo: number) =>
    only(route(askFor(room({ group: { drawsBack: false, reachable: [[0, reachableTo]] } }), [penaltyFor(['h1'])])));
  it('exactly 72 in when the run can be reached to 182 in', () => {
    const run = at(182);
    expect(run.way).toBe('cut-in');
    expect(run.codeLength).toBe(72);
    expect(run.legs[0]!.from).toEqual([112, 96.625, 96.625]);
    expect(run.cutIn).toEqual([112, 84.625, 96.625]);
    expect(run.codeLengthWithTails).toBe(72 + 12 + 42);
    expect(run.cutLength).toBe(132); // 72 + 6 slack + 54
    expect(run.holes).toBe(0);
  });
  it('72-1/64 in when it can be reached to 1/64 in less', () => {
    expect(at(182 - tick).codeLength).toBe(72 + tick);
  });
  it('the penalty moves the choice: old cable that has the length is brought nearer', () => {
    // drawn back, the cable leaves its run at x ≥ 100 (12 in before the end at 112) and goes toward the panel
    const group = {
      pivot: 60,
      reachable: [[0, 140.625]] as [number, number][],
      tails: { hot: 10, neutral: 10, ground: 10 },
    };
    const free = route(askFor(room({ group })));
    const dear = route(askFor(room({ group }), [penaltyFor(['h1'], 500_000)]));
    expect(only(dear).codeLength).toBeLessThanOrEqual(72);
    expect(dear.objectiveMills).toBeGreaterThanOrEqual(free.objectiveMills);
  });
});

describe('a whole answer', () => {
  const many = Array.from({ length: 6 }, (_, i) => homeRun(`h${i}`));
  const group = { drawsBack: false } as const;
  it('cables spliced at one spot share boxes, rows and holes; work is priced as pricing prices it', () => {
    const ask = askFor(room({ homeRuns: many, group: { ...group, reachable: [[0, 140.625]] } }));
    const answer = route(ask);
    expect(answer.runs.map((r) => r.way)).toEqual(many.map(() => 'cut-in'));
    expect(new Set(answer.boxes.map((b) => b.at.join())).size).toBe(1);
    for (const b of answer.boxes) expect(b.fillIn3).toBeLessThanOrEqual(b.volumeIn3);
    expect(answer.boxes.flatMap((b) => b.homeRuns).sort()).toEqual(many.map((h) => h.id));
    // 12 AWG at 90 °C holds 20 A to nine conductors; cables a width apart on a board are not adjusted
    for (const row of answer.rows) if (row.factor < 1) expect(row.conductors).toBeLessThanOrEqual(9);
    expect(answer.workMills).toBe(directMills(answer.work, defaultBook, ask.job.practice));
  });
  it('a multiwire cable is one cable: six conductors in its box', () => {
    const wire = { ...homeRun('h1', { circuits: ['a', 'b'] }) };
    const answer = route(
      askFor(room({ homeRuns: [{ ...wire, cable: { ...wire.cable, hots: 2 } }], group: { ...group } })),
    );
    expect(only(answer).newCable).toMatchObject({ hots: 2, neutral: 'insulated', ground: true });
    expect(only(answer).conductorsSpliced).toBe(3);
    expect(answer.boxes[0]!.fillIn3).toBe(6 * 2.25 + 2.25);
  });
  it('two cables under one breaker are priced as one AFCI', () => {
    const pair = [homeRun('h1', { circuits: ['a'] }), homeRun('h2', { circuits: ['a'] })];
    const r = room({ homeRuns: pair, group: { ...group, reachable: [[0, 100]] } });
    const one = route(askFor(r, [penaltyFor(['h1', 'h2'])]));
    const none = route(askFor(r));
    expect(one.runs.every((x) => x.codeLength > 72)).toBe(true);
    expect(one.objectiveMills - none.objectiveMills).toBe(65_000);
  });
  it('an old three-wire range cable continues as four-wire', () => {
    const old = homeRun('h1');
    const run = only(
      route(
        askFor(
          room({
            homeRuns: [
              { ...old, cable: { ...old.cable, kind: 'SE-U', size: '6', hots: 2, neutral: 'bare', ground: false } },
            ],
            group,
          }),
        ),
      ),
    );
    expect(run.newCable).toEqual({
      kind: 'NM',
      size: '6',
      metal: 'Cu',
      hots: 2,
      neutral: 'insulated',
      ground: true,
      insulation: 90,
    });
  });
  it('permuted lists change no byte', () => {
    const r = room({ homeRuns: many, group });
    const flipped = { ...r.job, homeRuns: [...r.job.homeRuns].reverse(), circuits: [...r.job.circuits].reverse() };
    expect(JSON.stringify(route(askFor({ job: flipped, option: r.option })))).toBe(JSON.stringify(route(askFor(r))));
  });
});

describe('splice can', () => {
  const at = (becomes: 'splice can' | 'program chooses' | 'removed', amendments = {}) =>
    route(
      askFor(
        room({
          group: { drawsBack: false, reachable: [] },
          option: { replaces: [{ enclosure: 'old', becomes }] },
          job: { code: { edition: 2023, place: '', amendments, saidBy: {} } },
        }),
      ),
    );
  it('is used where the option leaves it open and it is cheapest', () => {
    const answer = at('program chooses');
    expect(only(answer).way).toBe('splice can');
    expect(answer.spliceCans).toEqual(['old']);
    expect(answer.boxes[0]).toMatchObject({ id: 'can-old', on: 'splice can', volumeIn3: 14.5 * 24 * 4 });
    expect(only(answer).box).toBe('can-old');
  });
  it('is not used where the inspector says no, or the option removes the can', () => {
    expect(only(at('program chooses', { spliceCan: 'no' })).way).toBe('new home run');
    expect(only(at('removed')).way).toBe('new home run');
    expect(at('program chooses', { spliceCan: 'no' }).spliceCans).toEqual([]);
  });
});

describe('pins', () => {
  const group = { drawsBack: false } as const;
  it('a way that is there is taken whatever it costs', () => {
    const pins = [{ id: 'p', pin: 'way', homeRun: 'h1', way: 'new home run' }] as const;
    const run = only(route(askFor(room({ option: { pins: [...pins] } }))));
    expect(run.way).toBe('new home run');
    expect(run.codeLength).toBeGreaterThan(600 - RUN_LENGTH);
  });
  it('a way that is not there is blocked by its pin, and the rest is planned', () => {
    const pins = [{ id: 'p', pin: 'way', homeRun: 'h1', way: 'reuse' }] as const;
    const answer = route(
      askFor(room({ homeRuns: [homeRun('h1'), homeRun('h2')], group, option: { pins: [...pins] } })),
    );
    expect(answer.runs[0]).toMatchObject({ homeRun: 'h1', way: 'reuse', blockedBy: ['p'], legs: [] });
    expect(answer.runs[1]).toMatchObject({ homeRun: 'h2', way: 'cut-in', blockedBy: [] });
  });
  it('a pinned splice spot is where the box hangs', () => {
    const pins = [{ id: 'p', pin: 'splice at', homeRuns: ['h1'], at: [64, 67.25, 96.625] }] as const;
    const answer = route(askFor(room({ group, option: { pins: [...pins] } })));
    expect(answer.boxes[0]!.at).toEqual([64, 67.25, 96.625]);
  });
  it('a route drawn through a point passes it', () => {
    const pins = [{ id: 'p', pin: 'through', homeRun: 'h1', points: [[192, 100, 96.625]] }] as const;
    const run = only(route(askFor(room({ group, option: { pins: [...pins] } }))));
    const on = run.legs.some((l) => [l.from, l.to].some((p) => p[0] === 192 && p[1] === 100));
    const passes = run.legs.some(
      (l) => (l.from[0] === 192 && l.to[0] === 192) || (l.from[1] === 100 && l.to[1] === 100),
    );
    expect(on || passes).toBe(true);
    expect(run.codeLength).toBeGreaterThan(200);
  });
});
