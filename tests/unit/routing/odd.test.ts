import { describe, expect, it } from 'vitest';
import { route } from '../../../src/routing/route';
import { askFor, homeRun, NEW_PANEL, room } from './smallRoom';

describe('odd questions get an answer', () => {
  it('no home runs', () => {
    const answer = route(askFor(room({ homeRuns: [] })));
    expect(answer.runs).toEqual([]);
    expect(answer.workMills).toBe(0);
    expect(answer.proof).toEqual({ splices: { best: true }, rows: { best: true } });
  });
  it('a panel on a wall that is not there: every home run is blocked, nothing else breaks', () => {
    const enclosure = { ...NEW_PANEL, on: { ...NEW_PANEL.on, wall: 'nowhere' } };
    const answer = route(askFor(room({ homeRuns: [homeRun('h1'), homeRun('h2')], option: { enclosure } })));
    for (const run of answer.runs) expect(run.blockedBy.length).toBeGreaterThan(0);
    expect(answer.feeder.blockedBy).toEqual(['new']);
  });
  it('a thing built round the panel is named', () => {
    const base = room({ group: { drawsBack: false } });
    const site = {
      ...base.job.site,
      obstacles: [
        {
          id: 'chest',
          kind: 'other',
          corner: [96, 120],
          turn: 0,
          size: { width: 32, depth: 24, height: 96 },
          sizes: 'measured',
          bottom: 0,
          blocksCable: true,
          blocksSpace: true,
          foreign: true,
          clearance: 1,
          exists: { now: true, after: true },
          stored: false,
          moveCents: null,
        } as const,
      ],
    };
    const run = route(askFor({ job: { ...base.job, site }, option: base.option })).runs[0]!;
    expect(run.blockedBy).toEqual(['chest']);
    expect(run.legs).toEqual([]);
  });
  it('an old panel the option leaves alone keeps its cables', () => {
    const answer = route(askFor(room({ option: { replaces: [] } })));
    expect(answer.runs[0]).toMatchObject({ way: 'stays on old panel', codeLength: 0, legs: [] });
    expect(answer.work).toEqual([]);
  });
  it('a new home run of unknown length is planned, and the price book is asked for its length', () => {
    const answer = route(
      askFor(room({ homeRuns: [homeRun('h1', { wholeLength: 'unknown', condition: ['brittle'] })] })),
    );
    expect(answer.runs[0]!.way).toBe('new home run');
    expect(answer.work.map((w) => w.item)).toContain('length unknown:12/2 NM');
    expect(answer.assumed.map((a) => a.path)).toContain('/homeRuns/0/wholeLength');
  });
  it('nothing in the price book: still an answer, priced at nothing', () => {
    const ask = { ...askFor(room({ group: { drawsBack: false } })), unit: () => undefined };
    const answer = route(ask);
    expect(answer.workMills).toBe(0);
    expect(Number.isFinite(answer.objectiveMills)).toBe(true);
  });
  it('no boxes in the catalogue: no cut-in', () => {
    const ask = { ...askFor(room({ group: { drawsBack: false } })), boxes: [] };
    expect(route(ask).runs[0]!.way).toBe('new home run');
  });
  it('live is one quick pass with the same ways', () => {
    const r = room({ homeRuns: Array.from({ length: 4 }, (_, i) => homeRun(`h${i}`)) });
    const live = route(askFor(r, [], 'live'));
    expect(live.runs.map((x) => x.way)).toEqual(route(askFor(r)).runs.map((x) => x.way));
  });
});
