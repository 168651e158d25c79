/** A length of nothing is said in words. */
const isNothing = (clear: string): boolean => clear === '0"';

/** Sentences of the rules about where a panel may hang. Lengths arrive as feet and inches; `things` are kinds of obstacles or walls. */
export const placeWords = {
  noWall: () => 'The wall this panel hangs on does not stand after the finishing.',
  aWall: () => 'a wall',
  aCabinet: () => 'a cabinet that stays',
  aCeiling: () => 'the ceiling',
  move: (v: { thing: string }) => `Move the ${v.thing}.`,
  shift: () => 'Shift the panel along the wall.',
  unmeasured: () =>
    'It depends on something not measured: a wall thickness, a ceiling, the joists, a thing that stands there.',
  unmeasuredLook: () => 'Measure what stands near the panel, ceiling height, wall thickness and joist underside.',

  depthHolds: (v: { clear: string | null }) =>
    v.clear === null ? 'Nothing stands in front of the panel.' : `${v.clear} clear in front of the panel.`,
  depthFails: (v: { clear: string; things: string }) =>
    isNothing(v.clear)
      ? `Nothing clear in front of the panel: ${v.things} in the way.`
      : `Only ${v.clear} clear in front of the panel: ${v.things} in the way.`,

  widthHolds: (v: { clear: string | null }) =>
    v.clear === null ? 'Wide enough beside the panel.' : `${v.clear} clear in width at full depth.`,
  widthFails: (v: { clear: string; things: string }) =>
    isNothing(v.clear)
      ? `No clear width around the panel: ${v.things} in the way.`
      : `Only ${v.clear} clear in width around the panel: ${v.things} in the way.`,
  doorFails: (v: { things: string }) => `The panel door cannot open to 90°: ${v.things} in the way.`,
  doorUnknown: () => 'Whether the panel door opens to 90° depends on its hinge side, which is not known.',
  doorLook: () => 'Choose the hinge side; open the door of the panel where it will hang.',
  roomDoor: (v: { door: string }) =>
    `The room door ${v.door} swings into the working space: a worker there could be struck.`,
  roomDoorLook: () => 'Ask the inspector; swing the door the other way or lock it while working.',
  roomDoorUnknown: (v: { door: string }) =>
    `Which way the room door ${v.door} swings is not known; it may swing into the working space.`,

  heightHolds: (v: { clear: string | null }) => (v.clear === null ? 'Headroom is free.' : `${v.clear} of headroom.`),
  heightException: (v: { clear: string }) =>
    `${v.clear} of headroom: allowed only because the house exists and the panel is not over 200 A.`,
  heightLook: () => 'Ask the inspector whether the headroom exception holds for a panel in a new spot.',
  heightFails: (v: { clear: string; things: string }) =>
    isNothing(v.clear)
      ? `No headroom in front of the panel: ${v.things}.`
      : `Only ${v.clear} of headroom in front of the panel: ${v.things}.`,
  heightUnknown: () => 'The headroom exception hangs on the rating of the panel, which is not known.',

  sixHolds: (v: { out: string }) => `Electrical equipment above or below stands out ${v.out} past the front.`,
  sixFails: (v: { out: string }) => `Electrical equipment above or below stands out ${v.out} past the front.`,
  sixRemedy: () => 'Take the old cabinet away, or set the new front further out.',

  wayHolds: () => 'With the panel door open there is still room to pass.',
  wayTight: (v: { left: string }) =>
    isNothing(v.left)
      ? 'With the panel door open there is no room left to pass.'
      : `With the panel door open, ${v.left} is left to pass.`,
  wayUnknown: () => 'Whether there is room to pass with the panel door open cannot be told from what was measured.',
  wayLook: () => 'Is this the way out of the room? Stand there with the door open.',

  storeHolds: () => 'Nothing is stored in the working space.',
  storeFails: (v: { things: string }) => `Stored in the working space: ${v.things}. To be carried away and kept away.`,

  litYes: () => 'The panel is lit by a light that is not automatic only.',
  litNo: () => 'There is no light at the panel; one is added.',
  litUnknown: () => 'Whether the panel is lit is not known.',
  litLook: () => 'Switch the light on: is it near enough, and does a hand switch it?',

  floor: () => 'The floor in front of the panel must be clear, level and flat.',
  floorLook: () => 'Look for a ledge, a drain, a slope.',

  zoneHolds: () => 'The space above and below the panel is free of foreign pipes and ducts.',
  zoneFails: (v: { things: string }) => `Over or under the panel, in the space kept for it: ${v.things}.`,
  bodyFails: (v: { things: string }) => `The panel does not fit where it is drawn: ${v.things}.`,
  bodyEdge: () => 'it reaches past the wall, the floor or the joists',
  anOpening: (v: { kind: string }) => `a ${v.kind}`,

  handleHolds: (v: { height: string }) => `Highest handle ${v.height} above the floor.`,
  handleFails: (v: { height: string }) => `Highest handle ${v.height} above the floor: too high.`,
  handleUnknown: () => 'How high the highest handle is in the panel is not known.',
  handleLook: () => 'Read the distance from can bottom to the highest handle in the panel data sheet.',
  handleRemedy: () => 'Hang the panel lower.',

  roomUnknown: () => 'What the room at the panel is used for after the finishing is not known.',
  roomLook: () => 'Ask the owner what the room will be.',
  stairHolds: () => 'No steps of a stair under the panel or before it.',
  likeForLike: (v: { use: string }) =>
    `The room is ${v.use}; a panel replaced where it hangs is allowed here, like for like.`,
  closetHolds: (v: { use: string }) =>
    `Not a clothes closet (the room is for: ${v.use}): by this the panel may hang here.`,
  closetFails: () => 'A clothes closet is no place for breakers.',
  closetAsk: () => 'A closet for other things: the inspector says whether breakers may be in it.',
  bathHolds: (v: { use: string }) => `Not a bathroom (the room is for: ${v.use}): by this the panel may hang here.`,
  bathFails: () => 'A bathroom is no place for breakers.',
  bathRelief: () => 'A bathroom: only a panel that was lawfully there before may stay.',
  stairFails: () => 'Breakers may not be over the steps of a stair.',
  askLook: () => 'Ask the inspector before the price is fixed.',
  otherPlace: () => 'Choose another place.',

  dampOutdoors: () => 'Outdoors and not weatherproof.',
  dampRemedy: () => 'Take a weatherproof cabinet, or a place indoors.',
  dampOutdoorsUnknown: () => 'Outdoors, and whether the panel is weatherproof is not known.',
  dampMasonry: () => 'On masonry: the panel stands off the wall with air behind it.',
  dampLook: () => 'Look for seepage marks on the wall and a water line.',
  dampHolds: () => 'Not on masonry.',
  dampUnknown: () => 'What the wall behind the panel is made of is not known.',

  flushHolds: () => 'Recessed in a stud wall: the front comes flush with the finished surface.',
  flushNoCavity: () => 'This wall has no cavity to recess a panel into.',
  flushThin: () => 'Recessed in a furred wall: the cavity may be too thin.',
  flushAround: () =>
    'The wall is finished later around a surface-mounted panel: its front must come to the finished surface.',
  flushUnknown: () => 'What the wall is made of is not known, so a recessed panel cannot be judged.',
  flushLook: () => 'Measure the cavity and the finished surface; set the cabinet to it.',
} as const;
