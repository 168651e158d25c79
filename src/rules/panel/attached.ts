import type { Enclosure } from '../../job/schema';
import { POWER_SOURCES } from '../../standards/editionsService';
import { compareText } from '../../units/order';
import { isKnown } from '../../units/types';
import { oldPanels, pathTo } from '../reading';
import type { FactsInYear } from '../rule';

type Attached = Enclosure['attached'][number];
export const isSource = (thing: Attached): boolean => POWER_SOURCES.includes(thing.kind);

/** Old panels with something of the sort hung on them. */
export const panelsWith = (facts: FactsInYear, wanted: (thing: Attached) => boolean): string[] =>
  oldPanels(facts)
    .filter((e) => e.attached.some(wanted))
    .map((e) => e.id);

/** What of the sort hangs on a panel: answered or open, and where the open answers stand in the job. */
export const hungOn = (facts: FactsInYear, panel: string, wanted: (thing: Attached) => boolean) => {
  const things = facts.job.enclosures
    .find((e) => e.id === panel)!
    .attached.map((thing, i) => ({
      thing,
      waits: (['becomes', 'answer'] as const)
        .filter((key) => !isKnown(thing[key]))
        .map((key) => pathTo(facts.job, 'enclosures', panel, 'attached', i, key)),
    }))
    .filter(({ thing }) => wanted(thing));
  const open = things.filter(({ waits }) => waits.length > 0);
  const names = (list: typeof things) =>
    list
      .map(({ thing }) => thing.kind)
      .sort(compareText)
      .join(', ');
  return {
    open: names(open),
    waits: open.flatMap(({ waits }) => waits),
    all: names(things),
    answers: things
      .map(({ thing }) => thing.answer)
      .sort(compareText)
      .join('; '),
  };
};
