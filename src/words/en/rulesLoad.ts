/** Sentences of the rule about the load. */

const listed = (names: readonly string[]): string =>
  names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : (names[0] ?? '');

/** To a tenth: up for a load, down for what is left, so that neither looks better than it is. */
const up = (amps: number): number => Math.ceil(amps * 10 - 1e-6) / 10;
const down = (amps: number): number => Math.floor(amps * 10 + 1e-6) / 10;

export const loadWords = {
  appliance: (v: { kind: string }) => `the ${v.kind}`,
  field: {
    '/code/edition': 'the code year',
    '/feeder/wholeDwelling': 'knowing whether the whole dwelling hangs on it',
    '/house/floorAreaFt2': 'the floor area',
    '/house/panelAreaFt2': 'the floor area on this panel',
    '/house/smallApplianceCircuits': 'the small-appliance circuits',
    '/house/laundryCircuits': 'the laundry circuits',
  } as Readonly<Record<string, string>>,
  missing: (without: readonly string[]) => `Missing: ${listed(without)}.`,
  failsAtLeast: (v: { amps: number; most: number; without: readonly string[] }) =>
    `Load at least ${up(v.amps)} A without ${listed(v.without)}: more than the ${v.most} A in front of the panel.`,
  soFar: (v: { amps: number; most: number; without: readonly string[] }) =>
    `The load cannot be told without ${listed(v.without)}. Known so far: at least ${up(v.amps)} A on ${v.most} A, ${
      v.most > v.amps ? `${down(v.most - v.amps)} A left` : 'nothing left'
    }.`,
  soFarAlone: (v: { amps: number; without: readonly string[] }) =>
    `The load cannot be told without ${listed(v.without)}. Known so far: at least ${up(v.amps)} A.`,
};
