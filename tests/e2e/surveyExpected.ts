import { blankJob } from '../../src/job/blankJob';
import type { Job } from '../../src/job/schema';

const UNKNOWN_FACE = { build: 'unknown', insulated: 'unknown' } as const;
const BOTH = { now: true, after: true } as const;
const wall = (id: string, x: number, y: number): Job['site']['outline'][number] => ({
  id,
  at: [x, y],
  face: { now: UNKNOWN_FACE, after: UNKNOWN_FACE },
  studSpacing: 'unknown',
  thickness: 'unknown',
});

/** What the survey drawn in the test comes to as a file, written by hand: 20 ft by 14 ft with one of each in it. */
export const surveyedJob = ({ id, on }: { readonly id: string; readonly on: string }): Job => {
  const blank = blankJob({ id, on });
  return {
    ...blank,
    site: {
      ...blank.site,
      outline: [
        {
          ...wall('west', 0, 0),
          thickness: 8,
          face: { now: { build: 'poured', insulated: 'unknown' }, after: UNKNOWN_FACE },
        },
        wall('north', 0, 168),
        wall('east', 240, 168),
        wall('south', 240, 0),
      ],
      openings: [
        {
          id: 'door',
          kind: 'door',
          exists: BOTH,
          on: { wall: 'south', face: 'front', left: 24, bottom: 0 },
          width: 32,
          height: 80,
          sizes: 'unknown',
          hinge: 'left',
          swings: 'front',
        },
      ],
      framing: [
        {
          id: 'joists',
          outline: null,
          direction: 90,
          firstJoist: 8,
          spacing: 16,
          depth: 9.25,
          kind: 'sawn',
          underside: 90,
        },
      ],
      obstacles: [
        {
          id: 'washer',
          kind: 'washer',
          corner: [100, 140],
          turn: 0,
          size: { width: 27, depth: 28, height: 39 },
          sizes: 'unknown',
          bottom: 0,
          blocksCable: true,
          blocksSpace: true,
          foreign: false,
          clearance: 1,
          exists: BOTH,
          stored: false,
          moveCents: 25000,
        },
      ],
    },
    enclosures: [
      {
        id: 'old',
        on: { wall: 'north', face: 'front', left: 60, bottom: 48 },
        size: { width: 14.5, depth: 3.75, height: 24 },
        mount: 'surface',
        upright: true,
        mainAt: 'top',
        mainAmps: 'unknown',
        role: 'feeder-fed',
        bonded: 'unknown',
        electrodeLandsHere: 'unknown',
        busAmps: 100,
        spaces: 'unknown',
        knockouts: 'unknown',
        neutralTerminals: 'unknown',
        groundTerminals: 'unknown',
        lugs: 'unknown',
        topHandle: 'unknown',
        doorHinge: 'unknown',
        weatherproof: 'unknown',
        finish: '',
        trim: '',
        attached: [],
      },
    ],
    cableGroups: [
      {
        id: 'cables',
        enclosure: 'old',
        path: [
          [67.25, 168, 72],
          [67.25, 168, 88],
          [200, 168, 88],
        ],
        reachable: [[0, 100]],
        pivot: 30,
        drawsBack: 'unknown',
        entry: 'top',
        tails: { hot: 20, neutral: 22, ground: 18.5 },
      },
    ],
  };
};
