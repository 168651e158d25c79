/** Lettering of drawings: short, small letters; the painter capitalizes names of places. */
export const drawingWords = {
  cover: { 'open joists': 'open joists', drywall: 'drywall ceiling', 'lay-in': 'lay-in ceiling' },
  coverUnknown: 'ceiling not known',
  useUnknown: 'use not known',
  after: (v: { cover: string }) => `${v.cover}, after`,
  over: (v: { thing: string }) => `${v.thing} over`,
  newPanel: (v: { spaces: number }) => `new panel, ${v.spaces} spaces`,
  newPanelSpacesUnknown: 'new panel',
  oldPanel: { removed: 'old panel out', 'splice can': 'old can, splices', stays: 'old panel stays' },
} as const;
