import { describe, expect, test } from 'vitest';
import { judgeAfci } from '../../../src/calculations/afciJudgement';
import { afciDemands, afciEntries } from '../../../src/rules/afci';
import { gfciAdded } from '../../../src/rules/gfci';
import { formatFeetInches } from '../../../src/units/length';
import { baseJob, baseRuns, changed, factsOf, NM, runsWith, verdictOf } from './support';

type Question = Parameters<typeof judgeAfci>[0];
const bedroom: Question = {
  edition: 2020,
  volts: 120,
  amps: 15,
  serves: ['bedroom'],
  outsideIn: 0,
  tailsIn: 0,
  addsOutlet: false,
  shortenedOnly: false,
  newHomeRun: false,
  amendments: {},
};
const required = (more: Partial<Question>) => judgeAfci({ ...bedroom, ...more }).required;

describe('the judgement', () => {
  test('a panel moved 2 ft with long tails: 2020 leaves the tails out, 2017 leaves it to the inspector', () => {
    // published case: trade-training code forum, thread 2563415
    expect(required({ edition: 2020, outsideIn: 24, tailsIn: 60 })).toBe('no');
    expect(required({ edition: 2017, outsideIn: 24, tailsIn: 60 })).toBe('inspector decides');
    expect(required({ edition: 2017, outsideIn: 24, tailsIn: 40 })).toBe('no');
  });
  test('4 ft of conduit is 4 ft, not hot plus neutral', () => {
    // published case: trade-training code forum, thread 129021
    expect(required({ edition: 2017, outsideIn: 48, tailsIn: 20 })).toBe('no');
  });
  test('6 ft 0 in is excused, 6 ft 0 1/64 in is not (210.12(D) 2020, (E) 2023)', () => {
    expect(required({ outsideIn: 72 })).toBe('no');
    expect(required({ outsideIn: 72 + 1 / 2048 })).toBe('no');
    expect(required({ outsideIn: 72 + 1 / 64 })).toBe('yes');
    expect(judgeAfci({ ...bedroom, outsideIn: 72 }).section).toBe('210.12(D)');
    expect(judgeAfci({ ...bedroom, edition: 2023, outsideIn: 72 }).section).toBe('210.12(E)');
  });
  test('within 3 in of the limit a tape decides', () => {
    const tape = (outsideIn: number, more: Partial<Question> = {}) =>
      judgeAfci({ ...bedroom, ...more, outsideIn }).tapeIt;
    expect([68.9, 69, 75, 75.1].map((x) => tape(x))).toEqual([false, true, true, false]);
    expect(tape(72, { serves: ['bath'] })).toBe(false);
    expect(tape(72, { addsOutlet: true })).toBe(false);
    expect(tape(72, { newHomeRun: true })).toBe(false);
  });
  test('10 A circuits are inside from 2023', () => {
    expect(
      [2017, 2020, 2023, 2026].map((edition) => required({ edition: edition as 2017, amps: 10, outsideIn: 90 })),
    ).toEqual(['no', 'no', 'yes', 'yes']);
  });
  test('any one listed room brings the whole circuit in; none in the list leaves it out', () => {
    expect(required({ serves: ['garage', 'hall'], outsideIn: 90 })).toBe('yes');
    expect(required({ serves: ['garage', 'bath', 'outdoors', 'unfinished storage'], outsideIn: 90 })).toBe('no');
    expect(required({ serves: ['garage', 'other'], outsideIn: 90 })).toBe('cannot be told');
    expect(required({ serves: 'unknown', outsideIn: 90 })).toBe('cannot be told');
  });
  test('an outlet added is never excused; new home runs and shortening are never excused by length', () => {
    expect(required({ addsOutlet: true, outsideIn: 1 })).toBe('yes');
    expect(required({ newHomeRun: true, outsideIn: 10 })).toBe('inspector decides');
    expect(required({ newHomeRun: true, outsideIn: 200 })).toBe('yes');
    expect(required({ shortenedOnly: true })).toBe('inspector decides');
    expect(required({ shortenedOnly: true, amendments: { afciShortened: 'no' } })).toBe('no');
  });
  test('amendments: none on panel replacement, tails counted or not', () => {
    expect(required({ outsideIn: 200, amendments: { afciOnPanelReplacement: 'none' } })).toBe('no');
    expect(required({ outsideIn: 1, addsOutlet: true, amendments: { afciOnPanelReplacement: 'none' } })).toBe('yes');
    expect(required({ outsideIn: 60, tailsIn: 20, amendments: { afciCountsTails: 'yes' } })).toBe('yes');
    expect(required({ edition: 2017, outsideIn: 60, tailsIn: 20, amendments: { afciCountsTails: 'no' } })).toBe('no');
  });
  test('code year not known: a common answer of all four, or none', () => {
    expect(required({ edition: 'unknown', outsideIn: 90 })).toBe('yes');
    expect(required({ edition: 'unknown', outsideIn: 30 })).toBe('no');
    expect(required({ edition: 'unknown', outsideIn: 30, tailsIn: 60 })).toBe('cannot be told');
    expect(required({ edition: 'unknown', amps: 10, outsideIn: 90 })).toBe('cannot be told');
  });
});

describe('entries and demands of a job', () => {
  const [option] = baseJob.options;
  test('one entry for every circuit, sorted, partners at the length of their cable', () => {
    const entries = afciEntries(baseJob, option!, baseRuns);
    expect(entries.map((e) => [e.circuit, e.required, e.codeLength])).toEqual([
      ['c-1', 'no', 60],
      ['c-2', 'yes', 90],
      ['c-3', 'yes', 90],
      ['c-4', 'no', 0],
      ['c-5', 'no', 0],
    ]);
    expect(entries.filter((e) => e.remedy !== null).map((e) => e.circuit)).toEqual(['c-2', 'c-3']);
  });
  test('a circuit with GFCI today is offered both kinds of protection, its partner under the same breaker too (210.8, 210.12)', () => {
    const remedies = (set: Parameters<typeof changed>[1]) => {
      const job = changed(baseJob, set);
      return afciEntries(job, job.options[0]!, baseRuns).flatMap((e) => e.remedy ?? []);
    };
    expect(remedies({})).toHaveLength(2);
    for (const remedy of remedies({}))
      expect(remedy).toMatch(/^Two-pole dual-function breaker, AFCI and GFCI, .*shared neutral; or .*GFCI receptacles/);
    for (const remedy of remedies({ '/circuits/1/protection': 'none' })) expect(remedy).not.toContain('GFCI');
  });
  test('a circuit of several home runs goes by the one that asks most', () => {
    const job = changed(baseJob, { '/homeRuns/1/circuits': ['c-1', 'c-2', 'c-3'] });
    expect(afciEntries(job, job.options[0]!, baseRuns)[0]).toMatchObject({ required: 'yes', codeLength: 90 });
  });
  // 210.12(D) of 2020, (E) of 2023 excuse an extension and do not say what several on one circuit come to: our reading
  test('two home runs extended, each excused, over it together: verified in the field, with both lengths', () => {
    const job = changed(baseJob, { '/homeRuns/2/circuits': ['c-1'], '/homeRuns/2/cable/hots': 1 });
    const two = (codeLength: number) =>
      runsWith('h-1', { codeLength: 48, codeLengthWithTails: 48 }).map((r) =>
        r.homeRun === 'h-4'
          ? { ...r, way: 'cut-in' as const, newCable: NM, codeLength, codeLengthWithTails: codeLength }
          : r,
      );
    const said = (codeLength: number) => verdictOf(factsOf(job, { runs: two(codeLength) }), 'AFCI-EXT', 'c-1')!;
    expect(afciEntries(job, job.options[0]!, two(30))[0]).toMatchObject({ required: 'inspector decides' });
    expect(said(30)).toMatchObject({ outcome: 'cannot be told', effect: 'verify in field' });
    expect(said(30).say).toContain(`by ${formatFeetInches(48)} and ${formatFeetInches(30)}`);
    expect(said(30).say).toContain(`together they are ${formatFeetInches(78)}.`);
    expect(said(24).outcome).toBe('holds'); // 6 ft 0 in together
    expect(said(80).effect).toBe('extra work'); // one alone is over
  });
  test('in place, a cable left or drawn back is not touched', () => {
    const job = changed(baseJob, { '/options/0/kind': 'in place' });
    const runs = runsWith('h-1', { way: 'reuse', newCable: null, codeLength: 0, codeLengthWithTails: 0 });
    expect(afciEntries(job, job.options[0]!, runs)[0]!.required).toBe('no');
    expect(afciEntries(baseJob, option!, runs)[0]!.required).toBe('inspector decides');
  });
  test('partners under one breaker are one demand; 30 A is out of scope; a local rule silences all', () => {
    const demands = afciDemands(baseJob, option!);
    expect(demands.map((d) => [d.id, d.circuits.map((c) => c.id), d.homeRuns, d.inScope])).toEqual([
      ['c-1', ['c-1'], ['h-1'], 'yes'],
      ['c-2', ['c-2', 'c-3'], ['h-2'], 'yes'],
      ['c-4', ['c-4'], ['h-4'], 'no'],
      ['c-5', ['c-5'], ['h-5'], 'no'],
    ]);
    expect(demands[0]!.limitIn).toBe(72 + 1 / 1024);
    const relieved = changed(baseJob, { '/code/amendments/afciOnPanelReplacement': 'none' });
    expect(afciDemands(relieved, option!).map((d) => d.inScope)).toEqual(['no', 'no', 'no', 'no']);
  });
  test('a demand and an entry agree: over the limit in scope is required', () => {
    for (const codeLength of [71, 72, 72 + 1 / 64, 80]) {
      const runs = runsWith('h-1', { codeLength, codeLengthWithTails: codeLength });
      const entry = afciEntries(baseJob, option!, runs)[0]!;
      const demand = afciDemands(baseJob, option!)[0]!;
      expect(entry.required === 'yes').toBe(codeLength > demand.limitIn);
    }
  });
  test('code year and rooms not known: taken at the strictest', () => {
    const job = changed(baseJob, { '/code/edition': 'unknown', '/circuits/0/serves': 'unknown' });
    expect(afciDemands(job, job.options[0]!)[0]!.inScope).toBe('cannot be told');
  });
  test('a dryer run anew with four wires gains GFCI from 2020 on (210.8(A), (D))', () => {
    const runs = runsWith('h-4', { way: 'new home run', newCable: { ...NM, size: '10', hots: 2 } });
    const bare = { '/homeRuns/2/cable/neutral': 'bare', '/homeRuns/2/cable/ground': false };
    expect(gfciAdded(changed(baseJob, bare), runs)).toEqual(['c-4']);
    expect(gfciAdded(changed(baseJob, { ...bare, '/code/edition': 2017 }), runs)).toEqual([]);
    expect(gfciAdded(changed(baseJob, bare), baseRuns)).toEqual([]);
  });
});

describe('what cures an extension that is too long', () => {
  // The cable of circuit c-1 travels 60 in to the right along the wall to the new panel.
  const remedies = (length: number, more: Partial<Parameters<typeof runsWith>[1]> = {}) =>
    verdictOf(
      factsOf(baseJob, { runs: runsWith('h-1', { codeLength: length, codeLengthWithTails: length, ...more }) }),
      'AFCI-EXT',
      'c-1',
    )!.remedies;
  test('the breaker in the plan, a device at the first receptacle with its work, or the panel so much nearer', () => {
    const [breaker, device, nearer] = remedies(80.5);
    expect(breaker!.say).toContain('plan and its price include it');
    expect(breaker!.work.map((w) => w.item)).toEqual(['breaker:1p 20 AFCI']);
    expect(device!.work.map((w) => w.item)).toEqual(['receptacle:5-20 AFCI']);
    // 80-1/2 less 72 is 8-1/2: 9 whole inches, and 71-1/2 are left
    expect(nearer!.say).toContain(`${formatFeetInches(9)} farther left`);
    expect(nearer!.say).toContain(formatFeetInches(71.5));
  });
  test('as far as the cable runs along the wall, and no farther', () => {
    expect(remedies(72 + 60)).toHaveLength(3);
    expect(remedies(72 + 60 + 1 / 64)).toHaveLength(2);
  });
  test('no shift cures a new home run or an added outlet', () => {
    expect(remedies(200, { way: 'new home run' })).toHaveLength(2);
    const adds = verdictOf(factsOf(changed(baseJob, { '/circuits/0/addsOutlet': true })), 'AFCI-EXT', 'c-1')!;
    expect(adds.remedies).toHaveLength(2);
  });
  test('2026 takes the first switch as well (one source)', () => {
    const say = (edition: number) =>
      verdictOf(
        factsOf(changed(baseJob, { '/code/edition': edition }), { runs: runsWith('h-1', { codeLength: 90 }) }),
        'AFCI-EXT',
        'c-1',
      )!.remedies[1]!.say;
    expect(say(2023)).not.toContain('switch');
    expect(say(2026)).toContain('receptacle or switch');
  });
});
