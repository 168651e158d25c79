import { compareText } from '../units/order';

/**
 * Tasks of the price book in the order they are worked in: one list, so that a task keeps its place among its like in
 * whatever part of the day it falls. Common practice, no source.
 */
export const WORK_ORDER: readonly string[] = [
  // first of all on site: protect, find out, tag, test before anything is cut
  'load in',
  'survey',
  'trace',
  'pre-test',
  // the outage: dead and proved dead, cables tagged and free, the old panel out
  'shutdown',
  'strip cable',
  'strip old panel',
  'attached device',
  'remove old panel',
  // what cables hang on, end in and run through
  'lift tile',
  'light',
  'mount panel',
  'mount on masonry',
  'ground bar',
  'service disconnect',
  'hang box',
  'hang large box',
  'hole',
  'tidy board',
  'running board',
  'sleeve',
  'nipple',
  'wireway',
  // new cable, then old cable drawn back and spliced
  'feeder',
  'feeder ft',
  'pull',
  'pull ft',
  'new home run',
  'reuse',
  'plate',
  'fire stop',
  'splice',
  'splice Al',
  'pigtail',
  // grounding, then the feeder and its main, then the circuits
  'electrode',
  'irreversible splice',
  'intersystem terminal',
  'bonding jumper',
  'main',
  'lug',
  'feeder breaker',
  'land range',
  'land 2p',
  'land 1p',
  'land AFCI',
  'handle tie',
  'spd',
  'hub',
  'set up connected',
  'knockout seal',
  'filler plate',
  'receptacle',
  'cord',
  // proved, written down, seen, closed
  'roll over',
  'test circuit',
  'AFCI trouble',
  'directory',
  'test',
  'inspection',
  'abandoned cable',
  'splice can',
  'patch',
  // no work of their own: what slows all of the above
  'occupied',
  'crowded',
];
const placeOf = (task: string): number => {
  const at = WORK_ORDER.indexOf(task);
  return at < 0 ? WORK_ORDER.length : at;
};

/** Which of two tasks comes first; those of no known place last, by name. */
export const compareWork = (a: string, b: string): number => placeOf(a) - placeOf(b) || compareText(a, b);
