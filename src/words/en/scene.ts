import { drawingWords } from './drawings';

/** Lettering of the 3-D view: what the plan is lettered with, and what only space shows. */
export const sceneLetters = {
  ...drawingWords,
  ofNeeded: (v: { measured: string; required: string }) => `${v.measured} of ${v.required} needed`,
  inTheWay: 'in the way',
} as const;

/** Sentences of the 3-D view. */
const COMPASS = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;

export const sceneWords = {
  title: (v: { bearing: number }) => `3-D, from the ${COMPASS[Math.round(v.bearing / 45) % 8]}`,
  titleInside: '3-D, standing in the room',
  subtitle: {
    out: 'walls toward the eye left out',
    inside: (v: { height: string }) => `eye ${v.height} over the floor`,
  },
  viewOf: (v: { option: string }) => `3-D view: ${v.option}`,
  how: 'Arrow keys turn the view, plus and minus bring it closer or farther, W shows the whole, E stands in the room, X cuts it.',
  tools: {
    title: 'How the 3-D view is seen',
    left: 'Turn left',
    right: 'Turn right',
    nearer: 'Closer',
    farther: 'Farther',
    fit: 'Whole',
    eye: 'Stand in room',
    section: 'Cut',
    short: {
      left: 'Left',
      right: 'Right',
      nearer: 'Closer',
      farther: 'Farther',
      fit: 'Whole',
      eye: 'Stand',
      section: 'Cut',
    },
  },
  section: {
    title: 'Where the view is cut',
    facing: 'Along the panel wall',
    across: 'Across it',
    level: 'Level',
    from: {
      facing: (v: { length: string }) => `${v.length} from the panel wall`,
      across: (v: { length: string }) => `${v.length} right of the middle of the panel`,
      acrossLeft: (v: { length: string }) => `${v.length} left of the middle of the panel`,
      level: (v: { length: string }) => `${v.length} over the floor`,
    },
  },
  lost: 'The 3-D picture is gone for a moment: the graphics of this device were taken away. It is drawn again when they come back. The other drawings are not touched by it.',
  noWebGl:
    'This browser does not offer WebGL 2, which the 3-D view is drawn with. The plan and the wall drawing show the same work.',
  failed: (v: { say: string }) =>
    `The 3-D view could not be drawn (${v.say}). The plan and the wall drawing show the same work.`,
  coming: 'The 3-D view is being loaded.',
  list: {
    title: 'What stands in the 3-D view',
    newPanel: (v: { name: string; wall: string; left: string; bottom: string }) =>
      `New panel ${v.name}: on wall ${v.wall}, ${v.left} from its left end, ${v.bottom} over the floor.`,
    oldPanel: (v: { name: string; becomes: string; wall: string; left: string; bottom: string }) =>
      `Old panel ${v.name}, ${v.becomes}: on wall ${v.wall}, ${v.left} from its left end, ${v.bottom} over the floor.`,
    becomes: { removed: 'taken out', 'splice can': 'kept as a can for splices', stays: 'stays' },
    box: (v: { name: string; size: string; x: string; y: string; z: string }) =>
      `Splice box ${v.name}, ${v.size}: ${v.x} east, ${v.y} north, ${v.z} up.`,
    thing: (v: { kind: string; id: string; low: string; high: string }) =>
      v.kind === v.id
        ? `${v.kind}, from ${v.low} to ${v.high} up.`
        : `${v.kind} (${v.id}), from ${v.low} to ${v.high} up.`,
    inTheWay: (v: { thing: string }) => `In the way: ${v.thing} stands in a space that must be kept clear.`,
    cables: (v: { count: number }) => `${v.count} home runs on a new course to the new panel.`,
    row: (v: { count: number; length: string }) => `${v.count} cables run together for ${v.length}.`,
    joists: 'Joists are drawn as measured.',
    noJoists: 'Joists were not measured and are not drawn.',
    stair: 'Which end of the stair is up is not in the survey: it is drawn rising to the right or to the back.',
  },
} as const;
