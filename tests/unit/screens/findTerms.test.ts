import { expect, test } from 'vitest';
import { splitTerms, termsIn } from '../../../src/screens/parts/findTerms';
import { TERMS } from '../../../src/words/en/terms';

test('trade words are found as whole words, each once, and the text stays as it was', () => {
  const text = 'Each splice of a feeder stays in a splice can; no other splice of the feeder does.';
  expect(termsIn(text)).toEqual(['splice', 'feeder', 'spliceCan']);
  expect(
    splitTerms(text)
      .map((p) => p.part)
      .join(''),
  ).toBe(text);
  expect(termsIn('This can be done by a defeater.')).toEqual([]);
});

test('every trade word is found by its own name', () => {
  const missed = Object.entries(TERMS).filter(
    ([key, { name }]) => ![name, name.toLowerCase()].some((text) => (termsIn(text) as string[]).includes(key)),
  );
  expect(missed).toEqual([]);
});
