/** Sentences about what stands in the working space today, its floor, and panels in places of limited access. */
export const spaceWords = {
  goneLater: (v: { things: string }) =>
    `In the working space today, and gone after the finishing: ${v.things}. See that it is gone before the panel is worked on and inspected.`,
  pit: (v: { things: string }) =>
    `A pit in the floor of the working space: ${v.things}. Whoever stands there needs a cover to walk on.`,
  pitLook: () => 'Is the pit covered flush and firm enough to stand on? Ask the inspector.',
  step: (v: { step: string }) => `The floor of the working space has a step of ${v.step}.`,
  stepLook: () =>
    'Stand where the panel will be worked on: the floor is to be clear and as level and flat as practical.',
  limited: (v: { width: number; length: number }) =>
    `A panel in a crawl space: its access opening is at least ${v.width} by ${v.length} in, and the door still opens to 90°.`,
  limitedLook: () =>
    'Measure the opening one climbs in by; breakers in a crawl space are seldom readily accessible: ask.',
} as const;
