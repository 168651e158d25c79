import { describe, expect, test } from 'vitest';
import { fieldSentence, thingNamed } from '../../../src/job/names';
import { fromPointer } from '../../../src/job/pointer';
import type { Job } from '../../../src/job/schema';
import { fieldWords } from '../../../src/words/en/fields';
import { DEMOS, demoJob } from '../../support/demos';
import { forgotten } from '../../support/planFaults';
import { unknowablePlaces } from '../../support/unknowable';

const idsIn = (value: unknown): string[] =>
  typeof value !== 'object' || value === null
    ? []
    : Object.entries(value).flatMap(([key, v]) => (key === 'id' && typeof v === 'string' ? [v] : idsIn(v)));

describe.each(DEMOS)('what is not known of %s, in words', (demo) => {
  const job = demoJob(demo);
  const places = unknowablePlaces(job);

  test('every field that may be unknown has words of its own', () => {
    const keys = places.map((p) => fromPointer(p)!.at(-1)!).filter((key) => key !== 'answer');
    expect([...new Set(keys)].filter((key) => !fieldWords.isNamed(key))).toEqual([]);
  });
  test('its sentence holds no pointer, no key, and no id but in quotes', () => {
    const ids = new Set(idsIn(job));
    for (const place of places) {
      const sentence = fieldSentence(forgotten(job, place), place);
      expect(sentence).toMatch(/^Not known of .+: .+\.$/);
      expect(sentence).not.toMatch(/\/\d|[a-z][A-Z]|undefined|\[object/);
      const plain = sentence.replace(/“[^”]*”/g, '');
      const words = plain.split(/[^\w-]+/).filter((w) => /\d|-/.test(w) && ids.has(w));
      expect(words, sentence).toEqual([]);
    }
  });
  test('two different fields of two different things never read the same', () => {
    const sentences = places.map((p) => fieldSentence(forgotten(job, p), p));
    const twice = sentences.filter((s, i) => sentences.indexOf(s) !== i);
    expect(twice).toEqual([]);
  });
});

describe('things by their names', () => {
  const job = demoJob('small-house');
  const renamed = (change: (j: Job) => Job) => change(job);
  test.each([
    ['/circuits/0/amps', 'Not known of Kitchen counter left (circuit 1): breaker rating.'],
    ['/feeder/from/lugs', 'Not known of the source of the feeder: terminal marking, 60 or 75 °C.'],
    ['/feeder/from/breakerAmps', 'Not known of the feeder: breaker in front of it.'],
    ['/site/framing/0/depth', 'Not known of the joists: depth.'],
    ['/site/framing/0/kind', 'Not known of the joists: kind of joist.'],
    ['/site/outline/1/face/after/build', 'Not known of the wall “north”: what it is built of after the work.'],
    ['/enclosures/0/role', 'Not known of the old panel: whether it is service equipment or fed by a feeder.'],
  ])('%s', (place, sentence) => {
    expect(fieldSentence(forgotten(job, place), place)).toBe(sentence);
  });
  test('a cable by its circuits, a thing in the way by its kind, with its id where there are several', () => {
    expect(thingNamed(job, 'h-01-02')).toBe(
      'the cable of Kitchen counter left (circuit 1) and Kitchen counter right (circuit 2)',
    );
    expect(thingNamed(job, 'furnace')).toBe('the furnace');
    const two = renamed((j) => ({
      ...j,
      site: { ...j.site, obstacles: [...j.site.obstacles, { ...j.site.obstacles[0]!, id: 'second' }] },
    }));
    expect(thingNamed(two, 'second')).toBe('the furnace “second”');
    expect(thingNamed(job, 'north')).toBe('the wall “north”');
    expect(thingNamed(job, 'nobody')).toBe('nobody');
  });
  test('a field that is known but waits for an answer says what was surveyed', () => {
    expect(fieldSentence(job, '/house/occupied')).toBe(
      'To be answered for the house: whether it is lived in during the work (surveyed: true).',
    );
  });
});
