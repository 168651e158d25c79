import { columnLimit } from '../../standards/wiringMethods';
import { isKnown } from '../../units/types';
import { panelWords as say } from '../../words/en/rulesPanel';
import { rolePaths } from '../panel/serviceReading';
import { cannotBeTold, doesNotApply, holds, type Rule } from '../rule';
import { feederApplies, feederCables, theFeeder } from './feederReading';

const SERVICE_ENTRANCE: readonly string[] = ['SE-R', 'SE-U'];

/** Service-entrance cable indoors: small sizes touching insulation are held to the 60 °C column. */
export const fdrSer: Rule = {
  id: 'FDR-SER',
  subjects: theFeeder,
  check: (facts) => {
    const applies = feederApplies(facts);
    if (applies === false) return doesNotApply();
    const cables = feederCables(facts).filter((c) => !isKnown(c.kind) || SERVICE_ENTRANCE.includes(c.kind));
    if (cables.length === 0) return doesNotApply();
    const untold = (waits: readonly string[]) => cannotBeTold(say.serUnknown(), say.serLook(), waits);
    if (!isKnown(applies)) return untold(rolePaths(facts));
    const keys = (['kind', 'size'] as const).filter((key) => cables.some((c) => !isKnown(c[key])));
    if (keys.length > 0) return untold(keys.map((key) => `/feeder/cable/${key}`));
    const small = cables.some((c) => columnLimit(c.kind, c.size, true).column !== null);
    return small ? cannotBeTold(say.serSmall(), say.serLook(), []) : holds(say.serHolds());
  },
};
