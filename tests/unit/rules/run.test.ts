import { describe, expect, test } from 'vitest';
import type { Job } from '../../../src/job/schema';
import { RULES } from '../../../src/rules/list';
import { holds, type Rule } from '../../../src/rules/rule';
import { judgeAll, runRules } from '../../../src/rules/run';
import { sectionOf } from '../../../src/standards/sections';
import { formatFeetInches } from '../../../src/units/length';
import { FIXTURES } from './fixtures/all';
import { baseJob, changed, factsFor, factsOf, verdictOf } from './support';

const backward = (job: Job): Job => ({
  ...job,
  enclosures: [...job.enclosures].reverse(),
  circuits: [...job.circuits].reverse(),
  homeRuns: [...job.homeRuns].reverse(),
  site: { ...job.site, obstacles: [...job.site.obstacles].reverse(), openings: [...job.site.openings].reverse() },
});

// 300.3(B), 300.20: all conductors of a circuit run together; 210.4(B) is about disconnecting and does not mend that
test('a borrowed neutral is separated or run together: a handle tie or common trip alone is no remedy', () => {
  const { say } = verdictOf(factsFor({ '/circuits/0/flags': ['borrowed neutral'] }), 'GROUP', 'c-1')!;
  expect(say).toContain('a neutral of its own, or run hot and neutral together');
  expect(say).toContain('A handle tie or a common trip alone leaves');
});

describe('running the rules', () => {
  test('verdicts come sorted by rule and subject', () => {
    const keys = runRules(factsFor()).verdicts.map((v) => `${v.rule}\n${v.subject}`);
    expect(keys).toEqual([...keys].sort());
    expect(new Set(keys).size).toBe(keys.length);
  });
  test('turning the lists of the job round changes nothing but places in those lists', () => {
    for (const fixture of FIXTURES) {
      const facts = factsFor(fixture.set, fixture.over);
      const turned = factsOf(backward(facts.job), {
        ...fixture.over,
        runs: [...facts.runs].reverse(),
        rows: [...facts.rows].reverse(),
        boxes: [...facts.boxes].reverse(),
      });
      const plain = (f: typeof facts) =>
        runRules(f).verdicts.map(({ unknown, ...v }) => ({ ...v, unknown: unknown.length }));
      expect(plain(turned), `${fixture.rule}: ${fixture.name}`).toEqual(plain(facts));
    }
  });
  test('an answer settles what a rule could not tell, and the verdict quotes it', () => {
    const answer = { rule: 'OLD-CAN', subject: 'old', by: 'inspector', on: '2026-02-01', note: '', photo: null };
    const kept = { '/options/0/replaces/0/becomes': 'splice can' };
    const yes = verdictOf(factsFor({ ...kept, '/answers/-': { ...answer, answer: 'yes' } }), 'OLD-CAN', 'old');
    expect([yes?.outcome, yes?.effect, yes?.amendment]).toEqual([
      'holds',
      null,
      'OLD-CAN = yes (inspector, 2026-02-01)',
    ]);
    const no = verdictOf(factsFor({ ...kept, '/answers/-': { ...answer, answer: false } }), 'OLD-CAN', 'old');
    expect([no?.outcome, no?.effect]).toEqual(['fails', 'stops the job']);
  });
  test('an answer never turns a failure', () => {
    const answer = { rule: 'HANDLE', subject: 'new', answer: true, by: 'a', on: '2026-02-01', note: '', photo: null };
    const facts = factsFor({ '/options/0/enclosure/on/bottom': 60, '/answers/-': answer });
    expect(verdictOf(facts, 'HANDLE', 'new')?.outcome).toBe('fails');
  });
  test('code year not known: rules that all years share still answer, the others wait for it', () => {
    const facts = factsFor({ '/code/edition': 'unknown' });
    expect(verdictOf(facts, 'WS-DEPTH', 'new')?.outcome).toBe('holds');
    expect(verdictOf(facts, 'SPD-FDR', 'new')?.unknown).toContain('/code/edition');
    expect(runRules(facts).verdicts.every((v) => v.outcome !== 'fails' || v.effect !== null)).toBe(true);
  });
  test('a movable thing in the way stops the job and the remedy names its move and price', () => {
    const facts = factsFor({
      '/site/obstacles/-': {
        id: 'w',
        kind: 'washer',
        corner: [95, 110],
        turn: 0,
        size: { width: 27, depth: 27, height: 39 },
        sizes: 'measured',
        bottom: 0,
        blocksCable: true,
        blocksSpace: true,
        foreign: false,
        clearance: 1,
        exists: { now: true, after: true },
        stored: false,
        moveCents: 45000,
      },
    });
    const verdict = verdictOf(facts, 'WS-DEPTH', 'new');
    expect(verdict?.effect).toBe('stops the job');
    expect(verdict?.remedies[0]).toMatchObject({ say: 'Move the washer.', cents: 45000 });
    expect(verdict?.shape).toHaveLength(4);
  });
  test('an old panel that keeps breakers is held to the place rules as well; one that is emptied is not', () => {
    const low = { '/enclosures/0/on/bottom': 66 };
    expect(verdictOf(factsFor(low), 'HANDLE', 'old')?.outcome).toBe('fails');
    const emptied = factsFor(low, { runs: factsFor().runs.filter((r) => r.way !== 'stays on old panel') });
    expect(verdictOf(emptied, 'HANDLE', 'old')).toBeUndefined();
  });
  test('turning the whole house by quarter turns changes no verdict on place', () => {
    const turn = ([x, y]: readonly [number, number]): [number, number] => [-y, x];
    const { site } = baseJob;
    const turned: Job = {
      ...baseJob,
      site: {
        ...site,
        outline: site.outline.map((c) => ({ ...c, at: turn(c.at) })),
        areas: site.areas.map((a) => ({ ...a, outline: a.outline.map(turn) })),
        framing: site.framing.map((f) => ({ ...f, direction: 0 })),
      },
    };
    const place = (job: Job) =>
      runRules(factsOf(job)).verdicts.filter((v) => v.rule.startsWith('WS-') || v.rule === 'DEDICATED');
    const bare = (job: Job) => place(job).map(({ shape: _, ...v }) => v);
    expect(bare(turned)).toEqual(bare(baseJob));
  });
});

describe('a rule that fails in itself', () => {
  const breaks = (at: 'subjects' | 'check'): Rule => ({
    id: 'HANDLE',
    subjects: () => {
      if (at === 'subjects') throw new Error('no such list');
      return ['new', 'old'];
    },
    check: (_facts, subject) => {
      if (subject === 'new') throw new Error('no such height');
      return holds('fine');
    },
  });
  test('cannot be told for its subject; the other subjects and rules are judged', () => {
    const verdicts = judgeAll([breaks('check'), ...RULES.filter((r) => r.id === 'WS-DEPTH')], factsFor());
    expect(verdicts.map((v) => [v.rule, v.subject, v.outcome])).toEqual([
      ['HANDLE', 'new', 'cannot be told'],
      ['HANDLE', 'old', 'holds'],
      ['WS-DEPTH', 'new', 'holds'],
      ['WS-DEPTH', 'old', 'holds'],
    ]);
    expect(verdicts[0]!.look).toContain('no such height');
  });
  test('where even its subjects cannot be found it is said of the job', () => {
    expect(judgeAll([breaks('subjects')], factsFor()).map((v) => [v.subject, v.outcome])).toEqual([
      ['job', 'cannot be told'],
    ]);
  });
});

test('in every situation: no rule fails in itself, and every failure says what cures it or where to look', () => {
  for (const { set, over, rule, name } of FIXTURES) {
    const { verdicts } = runRules(factsFor(set, over));
    expect(verdicts.filter((v) => v.look?.includes('report the fault'))).toEqual([]);
    const mute = verdicts.filter((v) => v.outcome === 'fails' && v.remedies.length === 0 && v.look === null);
    expect(mute, `${rule}: ${name}`).toEqual([]);
  }
});

// 110.26(A)(3): the exception is cited where it decides, not where there is headroom
test('the headroom exception is cited only where the panel hangs on it', () => {
  const duct = FIXTURES.find((f) => f.rule === 'WS-HEIGHT' && f.effect === 'verify in field' && f.outcome === 'holds')!;
  expect(verdictOf(factsFor(duct.set), 'WS-HEIGHT', 'new')?.section).toBe('110.26(A)(3) Exc. 2');
  expect(verdictOf(factsFor({ ...duct.set, '/code/edition': 2020 }), 'WS-HEIGHT', 'new')?.section).toBe(
    '110.26(A)(3) Exc. 1',
  );
  expect(verdictOf(factsFor(), 'WS-HEIGHT', 'new')?.section).toBeNull();
  expect(sectionOf('WS-HEIGHT', 2023).section).toBe('110.26(A)(3)');
});

// 110.26(A)(1): 36 in
test('what is short by a hair is not said to be enough', () => {
  const short = FIXTURES.find((f) => f.rule === 'WS-DEPTH' && f.name.includes('35 63/64'))!;
  expect(verdictOf(factsFor(short.set), 'WS-DEPTH', 'new')!.say).toContain(`${formatFeetInches(35 + 15 / 16)} clear`);
});

// 312.3: flush, or not more than 1/4 in behind a noncombustible surface
test('a recessed cabinet: how far behind the finished surface it may stand', () => {
  const recessed = (build: string) =>
    verdictOf(
      factsFor({ '/options/0/enclosure/mount': 'recessed', '/site/outline/1/face/after/build': build }),
      'FLUSH',
      'new',
    )!;
  expect([recessed('finished studs').required, recessed('open studs').required]).toEqual([0.25, 0]);
});

describe('sections by code year', () => {
  test('spot checks against the published table of rules', () => {
    expect(sectionOf('AFCI-EXT', 2020).section).toBe('210.12(D)');
    expect(sectionOf('AFCI-EXT', 2023).section).toBe('210.12(E)');
    expect(sectionOf('SPD-FDR', 2020).section).toBe('none');
    expect(sectionOf('SPD-FDR', 2023)).toEqual({ section: '215.18(D)', standing: 'confirmed' });
    expect(sectionOf('CAB-FILL', 2026)).toEqual({ section: '312.11(A)', standing: 'unverified' });
    expect(sectionOf('EMDISC', 2026).section).toBe('230.70(A)(1)');
    expect(sectionOf('SPLICE-BOX', 2026).section).toContain('renumbered');
  });
  test('every 2026 number is unverified; with the year unknown the weakest standing stands', () => {
    expect(sectionOf('HANDLE', 2026).standing).toBe('unverified');
    expect(sectionOf('AFCI-EXT', 'unknown')).toEqual({ section: '210.12(D) or 210.12(E)', standing: 'unverified' });
  });
  test('a job that is only changed in a field no rule reads gives the same verdicts', () => {
    const notes = changed(baseJob, { '/notes': 'seen' });
    expect(runRules(factsOf(notes))).toEqual(runRules(factsOf(baseJob)));
  });
});
