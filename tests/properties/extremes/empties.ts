import { type Extreme, extreme, must } from './extreme';

/** Lists that are empty, one at a time and together. */
const nothing = ({ plans }: { plans: readonly { runs: readonly unknown[] }[] }) =>
  must(
    plans.every((p) => p.runs.length === 0),
    'there are runs',
  );
const untie = (j: { circuits: { partner: string | null }[] }) => {
  for (const c of j.circuits) c.partner = null;
};

export const EMPTIES: readonly Extreme[] = [
  extreme(
    'no options',
    (j) => (j.options = []),
    ({ plans }) => must(plans.length === 0, 'there are plans'),
  ),
  extreme(
    'no home runs',
    (j) => (j.homeRuns = []),
    (v) => nothing(v),
  ),
  extreme('no circuits', (j) => {
    j.circuits = [];
    for (const h of j.homeRuns) h.circuits = [];
  }),
  extreme('no circuits and no home runs', (j) => {
    j.circuits = [];
    j.homeRuns = [];
  }),
  extreme('no areas', (j) => (j.site.areas = [])),
  extreme('no framing', (j) => (j.site.framing = [])),
  extreme('no obstacles', (j) => (j.site.obstacles = [])),
  extreme('no openings', (j) => (j.site.openings = [])),
  extreme('no cable groups', (j) => {
    j.cableGroups = [];
    j.homeRuns = [];
  }),
  extreme('no old panel', (j) => {
    j.cableGroups = [];
    j.homeRuns = [];
    j.enclosures = [];
    for (const o of j.options) o.replaces = [];
  }),
  extreme('nothing at all but four walls', (j) => {
    for (const key of ['homeRuns', 'circuits', 'cableGroups', 'enclosures', 'options', 'stock']) j[key] = [];
    for (const key of ['openings', 'areas', 'framing', 'obstacles']) j.site[key] = [];
  }),
  extreme('a home run without circuits', (j) => (j.homeRuns[1].circuits = [])),
  extreme('a circuit without home run', (j) => {
    j.circuits.push({ ...j.circuits[2], id: 'c-extra', number: '99', partner: null });
  }),
  extreme('a circuit that comes in by three cables', (j) => {
    const h = j.homeRuns[1];
    j.homeRuns.push({ ...h, id: 'h-x2', group: 'g-cross' }, { ...h, id: 'h-x3' });
  }),
  extreme('a cable that carries every circuit', (j) => {
    untie(j);
    j.homeRuns = [{ ...j.homeRuns[0], circuits: j.circuits.map((c: { id: string }) => c.id) }];
  }),
  extreme('a shared-neutral pair on two cables', (j) => {
    const h = j.homeRuns[0];
    j.homeRuns = [
      { ...h, circuits: [h.circuits[0]] },
      { ...h, id: 'h-other', circuits: [h.circuits[1]] },
      ...j.homeRuns.slice(1),
    ];
  }),
  extreme('a feeder path of no points', (j) => (j.feeder.path = [])),
  extreme('a feeder path of one point', (j) => (j.feeder.path = [j.feeder.path[0]])),
  extreme('a feeder path of one place twice', (j) => (j.feeder.path = [j.feeder.path[0], j.feeder.path[0]])),
  extreme('a feeder that enters outside the room', (j) => (j.feeder.entersAt = [900, -300, 40])),
  extreme('a feeder that enters below the floor', (j) => (j.feeder.entersAt = [100, 140, -40])),
  extreme('a feeder that enters in the furnace', (j) => {
    j.feeder.entersAt = [30, 50, 20];
    j.feeder.path = [[30, 50, 20]];
  }),
  extreme('texts of no letters', (j) => {
    j.title = '';
    for (const c of j.circuits) Object.assign(c, { number: '', label: '' });
    for (const o of j.options) o.title = '';
  }),
];
