import { describe, expect, test } from 'vitest';
import { applyEdit } from '../../../src/job/applyEdit';
import { editName } from '../../../src/job/edit';
import { openJob } from '../../../src/job/parse';
import { answerOf, quoted } from '../../../src/job/questions';
import { saveJob } from '../../../src/job/save';
import { QUESTION_KEYS, type QuestionKey, questionOf } from '../../../src/standards/questions';
import { RULE_IDS } from '../../../src/standards/sections';
import { SPLITS, splitOf } from '../../../src/standards/splits';
import { answerSays, questionWords, quotedSays } from '../../../src/words/en/questions';
import { splitWords } from '../../../src/words/en/splits';
import { year } from './fixtures/fixture';
import { baseJob, type Changes, changed, factsFor, leg, rowWith, runsWith, verdictOf } from './support';

const BY = 'R. Tester';
const ON = '2026-03-02';

type Over = Parameters<typeof factsFor>[1];
/** Where an answer shows: the situation, the rule and its subject, and what it says with each answer. */
interface Case {
  readonly rule: string;
  readonly subject: string;
  readonly set?: Changes;
  readonly over?: Over;
  readonly says: Readonly<Record<string, string>>;
}
const NEW = '/options/0/enclosure';
const SERVICE: Changes = {
  '/enclosures/0/role': 'service',
  '/feeder/from/panel': 'utility',
  '/feeder/from/breakerAmps': null,
  [`${NEW}/role`]: 'service',
  [`${NEW}/bonded`]: true,
  [`${NEW}/mainAmps`]: 100,
};
const drawnBack = { runs: runsWith('h-1', { way: 'reuse', newCable: null, codeLength: 0, codeLengthWithTails: 0 }) };
const shortNew = { runs: runsWith('h-1', { way: 'new home run', codeLength: 60, codeLengthWithTails: 102 }) };
const extended = (codeLength: number, codeLengthWithTails: number) => ({
  runs: runsWith('h-1', { codeLength, codeLengthWithTails }),
});
/** Three old cables of 60 °C together in one sealed hole. */
const together = {
  ...rowWith({ by: 'sealed hole', length: 2, homeRuns: ['h-1', 'h-2', 'h-4'] }),
  runs: runsWith('h-1', {}).map((r) => ({
    ...r,
    way: 'reuse' as const,
    newCable: null,
    box: null,
    legs: [leg([47, 120, 96.5], [107, 120, 96.5], 'through joists', 'row-1', 'old')],
  })),
};
const OLD_PRINT: Changes = {
  '/homeRuns/0/cable/insulation': 60,
  '/homeRuns/1/cable/insulation': 60,
  '/homeRuns/2/cable/insulation': 60,
  '/homeRuns/2/cable/size': '12',
  '/circuits/3/amps': 20,
};
/** A ceiling that only the exception for existing dwellings lets off. */
const LOW: Changes = { '/site/areas/0/state/after/ceiling': 76, '/site/areas/0/state/now/ceiling': 76 };

const CASES = {
  afciOnPanelReplacement: {
    rule: 'AFCI-LOCAL',
    subject: 'c-1',
    over: extended(80, 90),
    says: { '': 'silent', none: 'holds' },
  },
  afciCountsTails: {
    rule: 'AFCI-EXT',
    subject: 'c-1',
    over: extended(60, 90),
    says: { '': 'holds', yes: 'fails', no: 'holds' },
  },
  racewayCountsIn6ft: { rule: 'AFCI-EXT', subject: 'c-1', says: { '': 'holds', no: 'holds' } },
  afciShortened: {
    rule: 'AFCI-EXT',
    subject: 'c-1',
    over: drawnBack,
    says: { '': 'cannot be told', yes: 'fails', no: 'holds' },
  },
  afciShortNewRun: {
    rule: 'AFCI-EXT',
    subject: 'c-1',
    over: shortNew,
    says: { '': 'cannot be told', yes: 'fails', no: 'holds' },
  },
  spliceCan: {
    rule: 'OLD-CAN',
    subject: 'old',
    set: { '/options/0/replaces/0/becomes': 'splice can' },
    says: { '': 'cannot be told', yes: 'holds', no: 'fails' },
  },
  bundling: {
    rule: 'NM-BUNDLE',
    subject: 'row-1',
    set: OLD_PRINT,
    over: together,
    says: { '': 'fails', 'over 24 in only': 'holds', strict: 'fails' },
  },
  spdInsideHouse: { rule: 'SPD-FDR', subject: 'new', says: { '': 'fails', no: 'holds', yes: 'fails' } },
  emergencyDisconnect: {
    rule: 'EMDISC',
    subject: 'new',
    set: { ...SERVICE, ...year(2020) },
    says: { '': 'cannot be told', yes: 'fails', no: 'holds' },
  },
  headroomInNewSpot: { rule: 'WS-HEIGHT', subject: 'new', set: LOW, says: { '': 'holds', yes: 'holds', no: 'fails' } },
  likeForLike: {
    rule: 'BATH',
    subject: 'new',
    set: { '/site/areas/0/state/after/use': 'bath', '/options/0/kind': 'in place' },
    says: { '': 'fails', yes: 'holds', no: 'fails' },
  },
  handleMaxIn: { rule: 'HANDLE', subject: 'new', says: { '': 'holds', 69: 'fails' } },
  nmAllowed: { rule: 'NM-USE', subject: 'job', says: { '': 'holds', no: 'holds', yes: 'holds' } },
} as const satisfies { readonly [K in Exclude<QuestionKey, 'edition' | 'smokeAlarms'>]: Case };

const CASE_KEYS = Object.keys(CASES) as (keyof typeof CASES)[];
const asAnswer = (text: string): string | number => (/^\d+$/.test(text) ? Number(text) : text);

describe.each(CASE_KEYS)('the answer to %s', (key) => {
  const { rule, subject, set, over, says }: Case = CASES[key];
  const start = changed(baseJob, set ?? {});
  test.each(Object.entries(says))('“%s”: %s, and the finding quotes who and when', (text, expected) => {
    const edit = { edit: 'answer question', question: key, by: BY, on: ON, note: '' } as const;
    const done =
      text === '' ? { ok: true as const, value: start } : applyEdit(start, { ...edit, answer: asAnswer(text) });
    if (!done.ok) throw new Error(done.error.error.say);
    const verdict = verdictOf(
      { ...factsFor({}, over), job: done.value, option: done.value.options[0]! },
      rule,
      subject,
    );
    expect(verdict?.outcome ?? 'silent').toBe(expected);
    expect(verdict?.amendment ?? null).toBe(text === '' ? null : `${key} = ${text} (${BY}, ${ON})`);
  });
});

describe('answering the sheet', () => {
  const start = baseJob;
  const answer = (question: string, said: string | number | null, by = BY) =>
    applyEdit(start, { edit: 'answer question', question, answer: said, by, on: ON, note: ' by phone ' });
  test('an answer stands in the job with name, date and note, and is undone by name', () => {
    const done = answer('spliceCan', 'no');
    if (!done.ok) throw new Error(done.error.error.say);
    expect(answerOf(done.value, 'spliceCan')).toEqual({ answer: 'no', by: BY, on: ON, note: 'by phone' });
    expect(openJob(saveJob(done.value))).toMatchObject({ ok: true, value: { job: done.value, repairs: [] } });
    expect(editName({ edit: 'answer question', question: 'spliceCan', answer: 'no', by: BY, on: ON, note: '' })).toBe(
      'Inspector’s answer: Old can kept for splices',
    );
    const back = applyEdit(done.value, {
      edit: 'answer question',
      question: 'spliceCan',
      answer: null,
      by: '',
      on: ON,
      note: '',
    });
    expect(back).toEqual({ ok: true, value: start });
  });
  test('the code year and the bundling are answered where they stand, and taken back to not asked', () => {
    const asked = answer('edition', 2020);
    expect(asked).toMatchObject({ ok: true, value: { code: { edition: 2020, saidBy: { edition: { by: BY } } } } });
    const bundled = answer('bundling', 'over 24 in only');
    if (!asked.ok || !bundled.ok) throw new Error('refused');
    expect(bundled.value.practice.bundling).toBe('over 24 in only');
    const off = (of: typeof start, question: string) =>
      applyEdit(of, { edit: 'answer question', question, answer: null, by: '', on: ON, note: '' });
    expect(off(asked.value, 'edition')).toMatchObject({ value: { code: { edition: 'unknown', saidBy: {} } } });
    expect(off(bundled.value, 'bundling')).toEqual({ ok: true, value: start });
  });
  test('a value set by hand drops the name of who said otherwise', () => {
    const done = answer('edition', 2020);
    if (!done.ok) throw new Error(done.error.error.say);
    const after = applyEdit(done.value, { edit: 'set value', path: '/code/edition', value: 2023 });
    expect(after).toMatchObject({ ok: true, value: { code: { edition: 2023, saidBy: {} } } });
    const can = answer('spliceCan', 'no');
    if (!can.ok) throw new Error(can.error.error.say);
    const path = '/code/amendments/spliceCan';
    const several = applyEdit(can.value, { edit: 'set values', name: 'paste', values: [{ path, value: 'yes' }] });
    expect(several).toMatchObject({ ok: true, value: { code: { amendments: { spliceCan: 'yes' }, saidBy: {} } } });
    expect(applyEdit(can.value, { edit: 'remove record', list: '/code/amendments', id: 'spliceCan' })).toEqual({
      ok: true,
      value: start,
    });
  });
  test.each([
    ['a question that is none', 'a color', 'yes', BY, '/code'],
    ['an answer it does not have', 'spliceCan', 'perhaps', BY, '/code/amendments/spliceCan'],
    ['a height of nothing', 'handleMaxIn', 0, BY, '/code/amendments/handleMaxIn'],
    ['nobody', 'spliceCan', 'yes', '  ', '/code/saidBy/spliceCan/by'],
  ] as const)('%s is refused, with its place', (_, question, said, by, path) => {
    expect(answer(question, said, by)).toMatchObject({ ok: false, error: { error: { path } } });
  });
  test('an answer in a file that the question does not have is no answer', () => {
    expect(answerOf(changed(start, { '/code/amendments/spliceCan': 'perhaps' }), 'spliceCan')).toBeNull();
    expect(answerOf(changed(start, { '/code/amendments/spliceCan': true }), 'spliceCan')?.answer).toBe('yes');
    expect(quoted(changed(start, { '/code/amendments/spliceCan': true }), 'spliceCan')).toBe('spliceCan = yes');
  });
});

describe('the words of the sheet', () => {
  test.each(QUESTION_KEYS)('%s: every answer has words, and its rules are rules', (key) => {
    const { answers, rules } = questionOf(key);
    const words: Readonly<Record<string, string>> = questionWords.of[key].answers;
    if (answers !== 'inches') for (const a of answers) expect(words[String(a)], String(a)).toBeDefined();
    const known: readonly string[] = RULE_IDS;
    expect(rules.filter((r) => !known.includes(r))).toEqual([]);
  });
  test('what a finding quotes is said with the question by its name', () => {
    expect(quotedSays('spliceCan = no (R. Tester, 2026-03-02); afciShortened = yes')).toBe(
      'Old can kept for splices: no (R. Tester, 2026-03-02); A circuit only shortened needs arc-fault protection: yes',
    );
    expect(quotedSays('handleMaxIn = 78')).toBe('Highest handle, inches: 78');
    expect(quotedSays('OLD-CAN = yes (inspector, 2026-02-01)')).toBe('OLD-CAN = yes (inspector, 2026-02-01)');
    expect(answerSays('handleMaxIn', 78)).toBe('78 in');
  });
  test('every rule on which practice is split has the two sides in words, and a question that bears on it', () => {
    expect(
      Object.keys(splitWords)
        .filter((k) => k !== 'lead')
        .sort(),
    ).toEqual(Object.keys(SPLITS).sort());
    for (const rule of Object.keys(SPLITS)) {
      const question = splitOf(rule)!.question;
      if (question !== null) expect(questionOf(question).rules, rule).toContain(rule);
    }
  });
});
