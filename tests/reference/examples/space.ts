import { headroomNeeded } from '../../../src/calculations/spaceJudge';
import { type SpaceAsk, searchSpace } from '../../../src/calculations/spaceSearch';
import type { SpaceBlocker } from '../../../src/calculations/spaceZone';
import { ASSOCIATED_PROJECTION_IN } from '../../../src/standards/workingSpace';
import { also, asker, calc, code, holds, type Row } from './asking';

const space = asker('working-space', {
  edition: 2023,
  size: { width: 14.5, depth: 4, height: 30 },
  bottom: 42,
  topHandle: 68,
  free: { left: 20, right: 20, depth: 40, height: 84 },
  existingDwelling: false,
  amps: 200,
  voltsToGround: 120,
});
const free = (left: number, right: number, depth: number, height: number) => ({ left, right, depth, height });

const rect = (id: string, x0: number, x1: number, y0: number, y1: number, z0 = 0, z1 = 96): SpaceBlocker => ({
  id,
  outline: [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
  fromZ: z0,
  toZ: z1,
  blocksSpace: true,
  foreign: false,
  stored: false,
});
/** The search the rules use: a 14-1/2 in panel, 4 in deep, at 60 in along a bare face. */
const around = (blockers: SpaceBlocker[], over: Partial<SpaceAsk> = {}) =>
  searchSpace({
    panel: { left: 60, right: 74.5, bottom: 42, top: 72, out: 4, depth: 4 },
    faceLength: 144,
    blockers,
    structureZ: 96,
    hinge: 'lift-off',
    existingDwelling: false,
    amps: 200,
    ...over,
  });
const clear = (a: ReturnType<typeof around>): boolean =>
  [a.depth, a.width, a.height, a.above, a.below, a.body].every((v) => v.outcome === 'holds');
const SEARCH = 'search of the working space';
const found = (expect: Row['expect'], ...blockers: SpaceBlocker[]): Row =>
  code(expect, SEARCH, () => clear(around(blockers)));

const headroom = (height: number): Row[] => {
  const low = { free: free(20, 20, 40, height), existingDwelling: true };
  return [
    calc('ok', space(low), (a) => a.height === 'holds'),
    also('told as an exception, not passed in silence', true, space(low), 'headroomException'),
    also('over 200 A', 'fails', space({ ...low, amps: 225 }), 'height'),
    also('not in a new dwelling', 'fails', space({ ...low, existingDwelling: false }), 'height'),
  ];
};
const TALL = { size: { width: 20, depth: 6, height: 64 }, bottom: 20, topHandle: 79 };

export const spaceExamples: Readonly<Record<string, readonly Row[]>> = {
  'WS-01': [code('ok', 'working space rule', () => [6, 6.01].map((inches) => inches <= ASSOCIATED_PROJECTION_IN))],
  'WS-02': [
    also('panel at 84 in of headroom', 'holds', space({ ...TALL, free: free(20, 20, 40, 84) }), 'height'),
    also('at a hundredth less', 'fails', space({ ...TALL, free: free(20, 20, 40, 83.99) }), 'height'),
    calc('handle_ok', space({ ...TALL, free: free(20, 20, 40, 84) }), (a) => a.handle === 'holds'),
    code('panel_workspace_height_in', 'working space rule', () => headroomNeeded(20 + 64)),
    code('disconnect_workspace_height_in', 'working space rule', () => headroomNeeded(72)),
  ],
  'WS-05': [
    calc('ok', space({ free: free(-2, 40, 40, 84) }), holds),
    found({ what: 'ok, found from the plan', is: false }, rect('jamb', 50, 62, 6, 10)),
  ],
  'WS-06': [
    // ducts across the whole front, underside at 74 in, none over the panel itself
    calc('working_space_ok', space({ free: free(20, 20, 40, 74) }), (a) => a.height === 'holds'),
    calc('dedicated_space_ok', duct(), (a) => a.inZone === false),
    code({ what: 'both, found from the plan', is: [false, true] }, SEARCH, () => {
      const a = around([{ ...rect('duct', 0, 144, 6, 20, 74, 84), foreign: true }]);
      return [a.height.outcome === 'holds', a.above.outcome === 'holds'];
    }),
  ],
  'WS-07': headroom(54),
  'WS-08': headroom(60),
  'WS-09': [found('ok', rect('cleanout', 62, 66, 10, 14, -4, 0)), also('clear around it', 'holds', space(), 'outcome')],
  'WS-12': [
    calc('ok', space({ free: free(20, 20, 0, 84) }), holds),
    found({ what: 'ok, found from the plan', is: false }, rect('dryer', 55, 82, 4, 34, 0, 38)),
  ],
  // a closet door that opens is no barrier: its jambs, 30 in apart, are what is measured
  'WS-13': [
    calc('ok', space({ free: free(8, 7.5, 36, 84) }), holds),
    found(
      { what: 'ok, found from the plan', is: true },
      rect('jamb a', 40, 52, 5.5, 10),
      rect('jamb b', 82, 94, 5.5, 10),
    ),
  ],
  'WS-14': [
    calc('ok', space({ free: free(7, 7.5, 36, 84) }), holds),
    found(
      { what: 'ok, found from the plan', is: false },
      rect('jamb a', 40, 53, 22, 27),
      rect('jamb b', 82, 94, 22, 27),
    ),
  ],
  'WS-16': [
    calc('ok', space({ free: free(7, 7.5, 40, 84) }), holds),
    found({ what: 'ok, found from the plan', is: false }, rect('frame a', 50, 53, 0, 5), rect('frame b', 82, 85, 0, 5)),
    found(
      { what: 'frames flush with the panel', is: true },
      rect('frame a', 50, 53, 0, 4),
      rect('frame b', 82, 85, 0, 4),
    ),
  ],
};

function duct() {
  return asker('dedicated-space', {
    edition: 2023,
    size: { width: 14.5, depth: 4, height: 30 },
    bottom: 42,
    structure: 96,
    thing: { left: -60, right: 84, out: 6, outTo: 20, from: 74, to: 84 },
  })();
}
