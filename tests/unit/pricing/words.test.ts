import { expect, test } from 'vitest';
import { planOption } from '../../../src/plan/planOption';
import { defaultBook } from '../../../src/pricing/defaultBook';
import { bookItemWords as words } from '../../../src/words/en/bookItems';
import { DEMOS, demoJob } from '../../support/demos';

test('every entry of the default book has words of its own, no two the same', () => {
  const said = [
    ...defaultBook.materials.map(({ id }) => [id, words.material(id)]),
    ...defaultBook.tasks.map(({ id }) => [id, words.task(id)]),
    ...defaultBook.allowances.map(({ id }) => [id, words.money(id)]),
  ] as const;
  const plain = new Set(['disposal', 'plumber', 'sheet-metal worker']); // their id is their name
  expect(said.filter(([id, text]) => !plain.has(id!) && text === id)).toEqual([]);
  expect(said.filter(([, text]) => /[:@]|undefined/.test(text!))).toEqual([]);
  const texts = said.map(([, text]) => text);
  expect(texts.filter((text, i) => texts.indexOf(text) !== i)).toEqual([]);
});

test.each([
  ['cable:12/2 NM', '12/2 NM cable'],
  ['cable:12/2 NM@250', '12/2 NM cable, length of 250 ft'],
  ['cable:?/2 NM', 'cable not read in full (?/2 NM)'],
  ['breaker:1p 20 AFCI+GFCI', '20 A one-pole AFCI and GFCI breaker'],
  ['feeder breaker:2p 90', '90 A two-pole breaker'],
  ['panel:40', 'panel of 40 spaces'],
])('%s is called %s', (id, text) => {
  expect(words.entry(id)).toBe(text);
});

test.each(DEMOS)('what %s has no price for, what drives it and what it buys is said without ids', (demo) => {
  const job = demoJob(demo);
  for (const option of job.options) {
    const { price, time, order } = planOption(job, option).plan;
    expect(price.missingSay.length).toBe(price.missing.length);
    const said = [
      ...price.missingSay,
      ...[...price.drivers, ...price.alternates, ...price.lines, ...time.byTask, ...order].map((x) => x.say),
    ];
    expect(said.filter((text) => /^\/|\/\d+\/|[a-z]:\S|[ch]-\d\d|breaker:|material:|labor:/.test(text))).toEqual([]);
    expect(said.filter((text) => text.trim() === '')).toEqual([]);
  }
});
