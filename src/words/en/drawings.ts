/** Lettering of drawings: short, small letters; the painter capitalizes names of places. */
/** A length as lettered on a drawing: 2″, 1′-2 1/2″. */
const inches = (written: string): string => written.replace("'", '′').replace('"', '″');

export const drawingWords = {
  cover: { 'open joists': 'open joists', drywall: 'drywall ceiling', 'lay-in': 'lay-in ceiling' },
  coverUnknown: 'ceiling not known',
  useUnknown: 'use not known',
  after: (v: { cover: string }) => `${v.cover}, after`,
  over: (v: { thing: string }) => `${v.thing} over`,
  newPanel: (v: { spaces: number }) => `new panel, ${v.spaces} spaces`,
  newPanelSpacesUnknown: 'new panel',
  sixFeet: '6 ft',
  passes: (v: { circuits: string }) => `6 ft: ${v.circuits}`,
  wallOrCeiling: 'wall or ceiling',
  noRoom: 'no room',
  oldPanelStays: 'old panel stays',
  intrudes: (v: { thing: string; by: string }) => `${v.thing} ${inches(v.by)} in`,
  wallName: (v: { wall: string; side: string | null }) =>
    v.side === null ? v.wall.replaceAll('-', ' ') : `${v.wall.replaceAll('-', ' ')}, ${v.side}`,
  oldPanel: { removed: 'old panel out', 'splice can': 'old can, splices', stays: 'old panel stays' },
} as const;
