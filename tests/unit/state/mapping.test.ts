import { expect, test } from 'vitest';
import type { Place } from '../../../src/facts/result';
import { openJob } from '../../../src/job/parse';
import type { MapProgress } from '../../../src/plan/map/mapSteps';
import { createJobStore } from '../../../src/state/jobStore';
import { mapKey } from '../../../src/state/mapping';
import type { Mapper } from '../../../src/workers/mapper';
import { demoText, testPorts } from './support';

const place = (left: number, cents: number): Place => ({
  on: { wall: 'east', face: 'front', left, bottom: 43 },
  upright: true,
  clear: true,
  rules: [],
  why: '',
  cents,
  afciAdded: 0,
  past: [],
  conductorsSpliced: 0,
  grade: 'live',
});

/** A mapper that says what the test tells it to. */
const askedMapper = () => {
  const asked: { step: (step: MapProgress) => void; end: (how: 'done' | 'stopped') => void }[] = [];
  const mapper: Mapper = {
    map: (_job, _option, step) => new Promise((end) => asked.push({ step, end })),
    stop: () => asked.at(-1)?.end('stopped'),
  };
  return { mapper, asked };
};
const opened = async () => {
  const { mapper, asked } = askedMapper();
  const store = createJobStore({ ...testPorts().ports, mapper });
  await store.actions.openText(demoText('small-house'), 'small-house.job.json');
  return { store, asked };
};
const later = () => new Promise((resolve) => setTimeout(resolve, 0));

test('a map fills place by place, the later word of a place standing, until it is stopped', async () => {
  const { store, asked } = await opened();
  store.actions.showMap('relocate-a');
  expect(store.getState().map).toMatchObject({ option: 'relocate-a', phase: 'working', places: [] });
  asked[0]!.step({ done: 0, of: 2, changed: [place(0, 100), place(3, 200)] });
  asked[0]!.step({ done: 1, of: 2, changed: [place(3, 150)] });
  expect(store.getState().map).toMatchObject({ done: 1, of: 2 });
  expect(store.getState().map!.places.map((p) => p.cents)).toEqual([100, 150]);
  store.actions.stopMap();
  await later();
  expect(store.getState().map).toMatchObject({ phase: 'stopped', done: 1 });
  store.actions.hideMap();
  expect(store.getState().map).toBeNull();
});

test('one that was finished is not searched again after the panel was moved; another height is', async () => {
  const { store, asked } = await opened();
  store.actions.showMap('relocate-a');
  asked[0]!.step({ done: 1, of: 1, changed: [place(0, 100)] });
  asked[0]!.end('done');
  await later();
  store.actions.hideMap();
  const option = store.getState().history!.now.options.find((o) => o.id === 'relocate-a')!;
  const { on } = option.enclosure;
  store.actions.edit({ edit: 'move panel', option: 'relocate-a', on: { ...on, left: on.left + 12 } });
  store.actions.showMap('relocate-a');
  expect(asked.length).toBe(1);
  expect(store.getState().map).toMatchObject({ phase: 'done' });
  store.actions.edit({ edit: 'move panel', option: 'relocate-a', on: { ...on, bottom: on.bottom + 6 } });
  store.actions.showMap('relocate-a');
  expect(asked.length).toBe(2);
});

test('names and notes change nothing about where a panel can go, prices and things in the way do', () => {
  const file = openJob(demoText('small-house'));
  if (!file.ok) throw new Error(file.error.error.say);
  const { job } = file.value;
  const option = job.options.find((o) => o.id === 'relocate-a')!;
  const key = mapKey(job, option);
  expect(mapKey({ ...job, notes: 'other', title: 'other' }, { ...option, title: 'other' })).toBe(key);
  expect(mapKey({ ...job, site: { ...job.site, obstacles: [] } }, option)).not.toBe(key);
  expect(mapKey({ ...job, practice: { ...job.practice, maxSpliceSpots: 1 } }, option)).not.toBe(key);
});
