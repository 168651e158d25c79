import { UTILITY } from '../../standards/editionsService';
import { isKnown, type U } from '../../units/types';
import { either, newPanel, oldPanels, pathTo } from '../reading';
import type { FactsInYear } from '../rule';

/** Is an old panel that goes away service equipment? */
export const oldIsService = (facts: FactsInYear): U<boolean> =>
  either(oldPanels(facts).map((e) => (isKnown(e.role) ? e.role === 'service' : 'unknown')));

/** Is the new panel itself service equipment? */
export const newIsService = ({ option }: FactsInYear): U<boolean> => {
  const { role } = option.enclosure;
  return isKnown(role) ? role === 'service' : 'unknown';
};

/** Does this option touch service equipment: the old one, a new disconnect, or a panel that is it? */
export const isServiceWork = (facts: FactsInYear): U<boolean> =>
  either([facts.option.serviceDisconnect !== null, oldIsService(facts), newIsService(facts)]);

/** Is the new panel fed by a feeder, not by service conductors? */
export const isFeederFed = (facts: FactsInYear): U<boolean> => {
  if (facts.option.serviceDisconnect !== null) return true;
  const service = newIsService(facts);
  return isKnown(service) ? !service : 'unknown';
};

/** The conductors in front of the panel are a feeder that exists or will. */
export const hasFeeder = ({ job, option }: FactsInYear): boolean =>
  option.serviceDisconnect !== null || job.feeder.from.panel !== UTILITY;

export const rolePaths = (facts: FactsInYear): string[] => [
  ...(isKnown(facts.option.enclosure.role) ? [] : [newPanel(facts).path('role')]),
  ...oldPanels(facts).flatMap((e) => (isKnown(e.role) ? [] : [pathTo(facts.job, 'enclosures', e.id, 'role')])),
];

/** The one subject of most panel rules. */
export const theNewPanel = ({ option }: FactsInYear): readonly [string] => [option.enclosure.id];
