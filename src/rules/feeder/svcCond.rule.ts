import { cableName } from '../../standards/cableNames';
import { SERVICE_LEAST_AMPS, SERVICE_LEAST_RULE, UTILITY } from '../../standards/editionsService';
import { isKnown, type U } from '../../units/types';
import { panelWords } from '../../words/en/rulesPanel';
import { serviceWords as say } from '../../words/en/rulesService';
import { isServiceWork, newIsService, rolePaths } from '../panel/serviceReading';
import { newPanel } from '../reading';
import { cannotBeTold, doesNotApply, type FactsInYear, holds, holdsNearly, type Rule, stops } from '../rule';
import { bothEnds, carriesOf, checkCable, type Ends, theFeeder } from './feederReading';

const KEYS = ['kind', 'size', 'metal', 'insulation'] as const;

/** The service overcurrent device once the work is done: the new disconnect's, or the main of a service panel. */
const mainOf = (facts: FactsInYear): U<number> | null =>
  facts.option.serviceDisconnect?.amps ?? newPanel(facts).panel.mainAmps;

const underLeast = ({ edition }: FactsInYear): string =>
  say.condUnder({ least: SERVICE_LEAST_AMPS, section: SERVICE_LEAST_RULE[edition].section });

/** Which of the facts the check waits for are open, in words. */
const openOf = ({ job }: FactsInYear, terminals: Ends['terminals']): string[] => {
  const { size, metal, kind, insulation } = job.feeder.cable;
  return [
    ...(isKnown(size) ? [] : [say.condSize()]),
    ...(isKnown(metal) ? [] : [say.condMetal()]),
    ...(isKnown(kind) && isKnown(insulation) ? [] : [say.condJacket()]),
    ...(isKnown(terminals) ? [] : [say.condTerminals()]),
  ];
};

/** What they carry by the marking of their ends, as far as the survey says what they are. */
const untoldOf = (facts: FactsInYear, main: number, ends: Ends): string => {
  const { cable } = facts.job.feeder;
  const at = carriesOf(facts, cable, ends);
  if (at.length === 0) return say.condUnknown({ amps: main });
  const under = at.some(({ most }) => most < SERVICE_LEAST_AMPS) ? ` ${underLeast(facts)}` : '';
  return `${panelWords.feederCarries({ cable: cableName(cable), at })} ${say.condUnread({ amps: main, jacket: !isKnown(cable.insulation) || !isKnown(cable.kind) })}${under}`;
};

/**
 * Service-entrance conductors against the main they end in. Those of a one-family dwelling carry all of its load, so
 * 83 % of the rating will do from 100 A on. A feeder has its own rules.
 */
export const svcCond: Rule = {
  id: 'SVC-COND',
  subjects: theFeeder,
  check: (facts) => {
    const { job, option } = facts;
    const { serviceDisconnect } = option;
    const service = isServiceWork(facts);
    if (service === false) return doesNotApply();
    const terminals = serviceDisconnect ? job.feeder.from.lugs : bothEnds(facts);
    const look = say.condLook({ open: openOf(facts, terminals) });
    if (!isKnown(service)) return cannotBeTold(say.condUnknown({ amps: null }), look, rolePaths(facts));
    if (serviceDisconnect === null && newIsService(facts) === false) return doesNotApply();
    if (job.feeder.from.panel !== UTILITY) return cannotBeTold(say.condUnrecorded(), look, ['/feeder/from/panel']);
    const main = mainOf(facts);
    // A service panel without a main: OCPD-PANEL and SVC-SIX speak.
    if (main === null) return doesNotApply();
    if (!isKnown(main)) return cannotBeTold(say.condUnknown({ amps: null }), look, [newPanel(facts).path('mainAmps')]);
    const { cable, from } = job.feeder;
    // The terminals of a new disconnect are bought to the marking; those of a panel are surveyed.
    const ends: Ends = { terminals, wholeDwelling: true };
    const answer = checkCable(facts, cable, main, 0, ends);
    const measure = { measured: main, required: answer?.breakerMax ?? null, unit: 'A' };
    if (answer?.outcome === 'fails') {
      const fails = say.condFails({ cable: cableName(cable), amps: main, most: answer.breakerMax });
      const under = answer.breakerMax < SERVICE_LEAST_AMPS;
      return stops(under ? `${fails} ${underLeast(facts)}` : fails, {
        ...measure,
        remedies: [
          ...(under ? [] : [{ say: say.condSmaller({ amps: answer.breakerMax }), cents: null, work: [] }]),
          { say: say.condNew(), cents: null, work: [] },
        ],
      });
    }
    if (answer?.outcome !== 'holds')
      return cannotBeTold(untoldOf(facts, main, ends), look, [
        ...KEYS.filter((key) => !isKnown(cable[key])).map((key) => `/feeder/cable/${key}`),
        ...(isKnown(from.lugs) ? [] : ['/feeder/from/lugs']),
        ...(serviceDisconnect || isKnown(option.enclosure.lugs) ? [] : [newPanel(facts).path('lugs')]),
      ]);
    const said = say.condHolds({ cable: cableName(cable), amps: main });
    return serviceDisconnect ? holdsNearly(said, say.condMarked(), measure) : holds(said, measure);
  },
};
