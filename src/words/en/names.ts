/** What keys of the job and records without a title of their own are called when a person reads of them. */
const KEYS: Readonly<Record<string, string>> = {
  edition: 'code year',
  amendments: 'local amendment',
  va: 'load, VA',
  amps: 'breaker rating',
  serves: 'rooms it serves',
  hardWired: 'hard-wired or not',
  onPanel: 'on this panel or not',
  panelAreaFt2: 'floor area fed by this panel',
  floorAreaFt2: 'floor area of the house',
  smallApplianceCircuits: 'small-appliance circuits, number',
  laundryCircuits: 'laundry circuits, number',
  otherSource: 'generator, solar or battery',
  panelLit: 'light at the panel',
  occupied: 'lived in during the work',
  lugs: 'terminals, 60 or 75 °C',
  breakerAmps: 'breaker at its source',
  spaceFree: 'free space at its source',
  wires: 'three or four wires',
  raceway: 'raceway',
  wholeDwelling: 'feeds the whole dwelling or not',
  role: 'service or fed by a feeder',
  bonded: 'neutral bonded or not',
  busAmps: 'bus rating',
  mainAmps: 'main breaker',
  topHandle: 'height of the highest handle',
  doorHinge: 'door hinge',
  becomes: 'what becomes of it',
  pivot: 'last staple that can stay',
  tails: 'free conductor in the can',
  drawsBack: 'can be drawn back or not',
  wholeLength: 'whole length',
  moves: 'things to move',
  framing: 'joists',
  areas: 'rooms',
  underside: 'height to the joists',
  firstJoist: 'place of the first joist',
  direction: 'direction of the joists',
  build: 'how the wall is built',
  studSpacing: 'stud spacing',
  kind: 'kind',
  size: 'size',
  hots: 'hots, number',
};

export const nameWords = {
  /** A key of the job: its own word, or the key as words. */
  key: (key: string): string =>
    KEYS[key] ??
    key
      .replace(/Ft2$/, '')
      .replace(/([a-z])([A-Z])/g, '$1 $2')
      .toLowerCase(),
  /** An id where nothing better is known: its hyphens are spaces. */
  spoken: (id: string): string => id.replace(/[-_]+/g, ' '),
  wall: (v: { name: string; back: boolean }) => (v.back ? `${v.name}, back` : v.name),
  feeder: 'Feeder',
  house: 'House',
  site: 'Room',
  job: 'Job',
  circuit: (v: { number: string; label: string }) => [v.number, v.label].filter((text) => text !== '').join(' '),
  loadOf: (v: { kind: string }) => `Load: ${v.kind}`,
  oldPanel: (v: { id: string }) => `Old panel ${v.id}`,
  homeRun: (v: { tag: string }) => `Home run ${v.tag}`,
  group: (v: { id: string }) => `Cable group ${v.id}`,
} as const;
