import {
  barredBy,
  type Expect,
  type Extreme,
  extreme,
  hang,
  must,
  partition,
  type Raw,
  relocated,
  stopped,
} from './extreme';

/** Panels where no one would hang one, and roles no one told. */

const noBlock = { now: { build: 'poured', insulated: true }, after: { build: 'finished studs', insulated: true } };
const corner = (id: string, at: number[]) => ({ id, at, face: noBlock, studSpacing: null, thickness: 'unknown' });
/** Cables that stay on the old panel: no breaker is bought for them, and it is neither stripped nor taken down. */
const leftBehind =
  (complete: boolean): Expect =>
  ({ plans }) =>
    plans.flatMap((p) => {
      const items = p.price.lines.map((l) => l.item);
      return [
        ...must(
          p.runs.every((r) => r.way === 'stays on old panel'),
          `${p.option}: a cable moves`,
        ),
        ...must(
          p.directory.every((d) => d.circuit === null),
          `${p.option}: a circuit in the new panel`,
        ),
        ...items.filter((i) => /^breaker:[12]p 1|strip|remove old panel/.test(i)).map((i) => `${p.option}: ${i}`),
        // a new feeder waits for its way outside the room, whatever becomes of the old panel
        ...must(
          p.price.missing.every((id) => id === '/feeder/outside') === complete,
          `${p.option}: missing is ${p.price.missing.join(', ')}`,
        ),
      ];
    });
/** The room's walls drawn anew; the things of the old room go. */
const room = (j: Raw, corners: number[][], more: Raw = {}) => {
  j.site.outline = corners.map((at, i) => corner(['west', 'north', 'east', 'south', 'fifth', 'sixth'][i]!, at));
  j.site.openings = [];
  j.site.obstacles = [];
  Object.assign(j.site, more);
};

export const PANELS: readonly Extreme[] = [
  extreme(
    'an old panel that no option replaces',
    (j) => {
      for (const o of j.options) o.replaces = [];
    },
    leftBehind(true),
  ),
  ...(['front', 'back'] as const).map((face) =>
    extreme(`a panel on the ${face} of a partition`, (j) => {
      j.site.partitions = [partition('p', [150, 20], [150, 110])];
      hang(j, 'p', 30, 43, face);
    }),
  ),
  extreme('a panel on a partition that stands only after', (j) => {
    j.site.partitions = [partition('p', [150, 20], [150, 110], { exists: { now: false, after: true } })];
    hang(j, 'p', 30);
  }),
  extreme(
    'a panel on a partition that stands only now',
    (j) => {
      j.site.partitions = [partition('p', [150, 20], [150, 110], { exists: { now: true, after: false } })];
      hang(j, 'p', 30);
    },
    stopped,
  ),
  extreme(
    'a panel on a partition that never stands',
    (j) => {
      j.site.partitions = [partition('p', [150, 20], [150, 110], { exists: { now: false, after: false } })];
      hang(j, 'p', 30);
    },
    stopped,
  ),
  extreme('a panel on a waist-high partition', (j) => {
    j.site.partitions = [partition('p', [150, 20], [150, 110], { height: 40 })];
    hang(j, 'p', 30);
  }),
  extreme('a partition thicker than the room, through everything', (j) => {
    j.site.partitions = [partition('p', [-50, 72], [400, 72], { thickness: 300 })];
  }),
  extreme('the old panel on a partition', (j) => {
    j.site.partitions = [partition('p', [90, 130], [200, 130])];
    j.enclosures[0].on = { wall: 'p', face: 'front', left: 20, bottom: 50 };
  }),
  ...[45, 30, 71].map((degrees) =>
    extreme(`a panel on a wall at ${degrees}°`, (j) => {
      const cut = 60;
      const rise = cut * Math.tan((degrees * Math.PI) / 180);
      room(j, [
        [0, 0],
        [0, 144],
        [216 - cut, 144],
        [216, Math.round(144 - Math.min(rise, 120))],
        [216, 0],
      ]);
      hang(j, 'east', 10);
    }),
  ),
  extreme(
    'a room smaller than the working space',
    (j) => {
      room(j, [
        [90, 120],
        [90, 144],
        [130, 144],
        [130, 120],
      ]);
      j.enclosures[0].on.left = 4;
      for (const o of j.options) o.enclosure.on = { ...o.enclosure.on, wall: 'north', left: 10 };
    },
    stopped,
  ),
  extreme('a room of three walls', (j) => {
    room(j, [
      [0, 0],
      [0, 144],
      [216, 144],
    ]);
    j.enclosures[0].on.left = 100;
    hang(j, 'west', 60);
  }),
  extreme('a room with a wall an inch long', (j) => {
    room(j, [
      [0, 0],
      [0, 144],
      [216, 144],
      [216, 1],
      [215, 0],
    ]);
  }),
  extreme('a room 900 ft long', (j) => {
    room(j, [
      [0, 0],
      [0, 144],
      [10800, 144],
      [10800, 0],
    ]);
  }),
  extreme('a sloped wall a thousand feet long', (j) => {
    room(j, [
      [0, 0],
      [0, 144],
      [216, 12_000],
      [216, 0],
    ]);
    hang(j, 'north', 200);
    j.enclosures[0].on.wall = 'west';
    j.options[0].enclosure.on.wall = 'west';
    for (const c of [j.enclosures[0], j.options[0].enclosure]) c.on.left = 60;
  }),
  extreme('a room far from the origin', (j) => {
    const far = ([x, y, ...z]: number[]) => [x! + 11_000, y! - 11_000, ...z];
    for (const c of j.site.outline) c.at = far(c.at);
    for (const a of j.site.areas) a.outline = a.outline.map(far);
    for (const o of j.site.obstacles) o.corner = far(o.corner);
    for (const g of j.cableGroups) g.path = g.path.map(far);
    j.feeder.entersAt = far(j.feeder.entersAt);
    j.feeder.path = j.feeder.path.map(far);
  }),
  extreme('a panel over the old one, half aside', (j) => hang(j, 'north', 106, 55)),
  extreme('a panel exactly where the old one hangs, as a relocation', (j) => {
    relocated(j).enclosure.on = { ...j.enclosures[0].on };
    relocated(j).enclosure.size = { ...j.enclosures[0].size };
  }),
  extreme('a panel higher than the ceiling', (j) => hang(j, 'east', 62, 90), stopped),
  extreme('a panel half above the ceiling', (j) => hang(j, 'east', 62, 70), stopped),
  extreme('a panel below the floor', (j) => hang(j, 'east', 62, -60), stopped),
  extreme('a panel as tall as the room', (j) => {
    hang(j, 'east', 62, 0);
    relocated(j).enclosure.size = { width: 14.5, depth: 4, height: 84 };
  }),
  extreme('a panel as wide as its wall', (j) => {
    hang(j, 'east', 0);
    relocated(j).enclosure.size = { width: 144, depth: 4, height: 30 };
  }),
  extreme('a panel the size of a stamp', (j) => {
    relocated(j).enclosure.size = { width: 0.25, depth: 0.25, height: 0.25 };
  }),
  extreme(
    'a panel deeper than the room',
    (j) => {
      relocated(j).enclosure.size = { width: 14.5, depth: 400, height: 30 };
    },
    stopped,
  ),
  extreme(
    'a panel over a door',
    (j) => hang(j, 'south', 155),
    (v) => [...stopped(v), ...barredBy('stair-door', 9)(v)],
  ),
  extreme('a recessed panel upside down', (j) => {
    Object.assign(relocated(j).enclosure, { mount: 'recessed', upright: false, mainAt: 'bottom' });
  }),
  ...['service', 'feeder-fed', 'unknown'].map((role) =>
    extreme(`an old panel of role ${role}`, (j) => {
      j.enclosures[0].role = role;
      for (const o of j.options) o.enclosure.role = role;
    }),
  ),
  ...[0, 1, 400].map((n) =>
    extreme(`a new panel of ${n} spaces, knockouts and terminals`, (j) => {
      for (const o of j.options)
        Object.assign(o.enclosure, { spaces: n, knockouts: n, neutralTerminals: n, groundTerminals: n });
    }),
  ),
  extreme('ratings of zero', (j) => {
    for (const o of j.options) Object.assign(o.enclosure, { busAmps: 0, mainAmps: 0 });
    for (const c of j.circuits) Object.assign(c, { amps: 0, va: 0 });
    Object.assign(j.feeder.from, { breakerAmps: 0 });
    Object.assign(j.house, { floorAreaFt2: 0, panelAreaFt2: 0, smallApplianceCircuits: 0, laundryCircuits: 0 });
  }),
  extreme('ratings of ten million', (j) => {
    for (const o of j.options) Object.assign(o.enclosure, { busAmps: 1e7, mainAmps: 1e7 });
    for (const c of j.circuits) Object.assign(c, { amps: 1e7, va: 1e7 });
    Object.assign(j.feeder.from, { breakerAmps: 1e7 });
    Object.assign(j.house, { floorAreaFt2: 1e7, panelAreaFt2: 1e7, smallApplianceCircuits: 1e4, laundryCircuits: 1e4 });
  }),
  extreme('ratings that no breaker has', (j) => {
    for (const [i, c] of j.circuits.entries()) c.amps = 13.7 + i;
    for (const o of j.options) Object.assign(o.enclosure, { busAmps: 111, mainAmps: 87.5 });
  }),
  extreme('a service disconnect on a wall', (j) => {
    relocated(j).serviceDisconnect = { on: { wall: 'west', face: 'front', left: 8, bottom: 48 }, amps: 100 };
  }),
  extreme('a service disconnect on the outside of a wall, of no amperes', (j) => {
    relocated(j).serviceDisconnect = { on: { wall: 'west', face: 'back', left: 800, bottom: -48 }, amps: 0 };
  }),
  ...['removed', 'splice can', 'subpanel', 'program chooses'].map((becomes) =>
    extreme(
      `every old panel becomes: ${becomes}`,
      (j) => {
        for (const o of j.options) o.replaces = [{ enclosure: 'old', becomes }];
      },
      becomes === 'subpanel' ? leftBehind(false) : undefined,
    ),
  ),
  ...[2017, 2020, 2023, 2026, 'unknown'].map((edition) =>
    extreme(`code year ${edition}`, (j) => (j.code.edition = edition)),
  ),
  extreme(
    'four options, three of them alike',
    (j) => {
      const o = j.options[1];
      j.options = [j.options[0], ...Array.from({ length: 3 }, (_, i) => ({ ...o, id: `o-${i}` }))];
    },
    ({ plans }) => must(plans.length === 4, 'an option is missing'),
  ),
];
