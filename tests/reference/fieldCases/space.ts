import { expect } from 'vitest';
import { calcDedicatedSpace } from '../../../src/calculations/dedicatedSpace';
import { searchSpace } from '../../../src/calculations/spaceSearch';
import type { SpaceBlocker } from '../../../src/calculations/spaceZone';
import type { CalcInput } from '../../../src/calculations/types';
import { calcWorkingSpace } from '../../../src/calculations/workingSpace';
import { answerOf, type Check } from './case';

/** Room in front of, over and under a panel: 110.26(A) and (E), 240.24(A). */

type Input = CalcInput['working-space'];
/** A panel of 14-1/2 by 30 in with plenty of room, but for what a case says. */
const room = (more: Partial<Input> = {}, free: Partial<Input['free']> = {}) =>
  answerOf(
    calcWorkingSpace({
      edition: 2023,
      size: { width: 14.5, depth: 4, height: 30 },
      bottom: 42,
      topHandle: 66,
      existingDwelling: true,
      amps: 200,
      voltsToGround: 120,
      ...more,
      free: { left: 20, right: 20, depth: 60, height: 96, ...free },
    }),
  );

const thing = (id: string, along: [number, number], out: [number, number], z: [number, number]): SpaceBlocker => ({
  id,
  outline: [
    [along[0], out[0]],
    [along[0], out[1]],
    [along[1], out[1]],
    [along[1], out[0]],
  ],
  fromZ: z[0],
  toZ: z[1],
  blocksSpace: true,
  foreign: false,
  stored: false,
});
const search = (blockers: readonly SpaceBlocker[], structureZ = 96) =>
  searchSpace({
    panel: { left: 100, right: 114.5, bottom: 40, top: 70, out: 0, depth: 4 },
    faceLength: 240,
    blockers,
    structureZ,
    hinge: 'left',
    existingDwelling: true,
    amps: 150,
  });

export const spaceCases: Readonly<Record<string, Check>> = {
  'FC-35': (e) => {
    const pit = thing('pit', [95, 120], [24, 42], [0, 1]);
    expect(search([{ ...pit, blocksSpace: false }]).depth.outcome === 'holds').toBe(e.pass_if_walkable);
    expect(search([pit]).depth.outcome).toBe('fails');
  },
  'FC-36': (e) => {
    const { height, depth, workingSpace } = search([thing('pipe', [60, 160], [29, 33], [75, 78])], 88);
    expect(depth.outcome).toBe('holds');
    expect(height.requiredIn - height.measuredIn!).toBe(e.intrusion_height_in);
    expect(workingSpace.out[1] - 29).toBe(e.intrusion_depth_in);
    expect([height.outcome, height.exception]).toEqual(['holds', true]);
    expect(height.exception ? 'ask_ahj' : 'pass').toBe(e.verdict);
  },
  'FC-37': (e) => {
    const low = room({ bottom: 20, topHandle: 46, amps: 200 }, { height: 54 });
    expect(low.outcome === 'holds').toBe(e.text_pass);
    expect(low.figures.headroomException).toBe(true);
    expect(room({ bottom: 20, topHandle: 46, amps: 225 }, { height: 54 }).outcome).toBe('fails');
  },
  'FC-41': (e) => {
    const pipe = { left: -20, right: 40, out: 1, outTo: 1.5, from: 72 + 24, to: 72 + 24.5 };
    const { inZone } = answerOf(
      calcDedicatedSpace({
        edition: 2023,
        size: { width: 14.5, depth: 4, height: 30 },
        bottom: 42,
        structure: 99,
        thing: pipe,
      }),
    ).figures;
    expect(inZone === false).toBe(e.pass);
  },
  'FC-51': (e) => {
    // 42 spaces, 48 in tall, top at 72: the highest handle is under 79
    const tall = { size: { width: 14.5, depth: 4, height: 48 }, bottom: Number(e.bottom_in_at_top72), topHandle: 70 };
    expect(tall.bottom + tall.size.height).toBe(72);
    expect(room(tall, { height: 80 }).outcome).toBe('holds');
    expect(room({ ...tall, bottom: 34, topHandle: 80 }).figures.handle).toBe('fails');
  },
  'FC-54': (e) => {
    const boiler = room({}, { depth: 18 });
    expect(boiler.outcome === 'holds').toBe(e.pass);
    expect(boiler.figures.depth).toBe('fails');
  },
  'FC-56': (e) => {
    // a counter 24 in deep stands under the panel
    const counter = search([thing('counter', [60, 160], [0, 24], [0, 36])]);
    expect(counter.depth.outcome === 'holds').toBe(e.current_pass);
    expect(counter.depth.measuredIn).toBe(0);
  },
  'FC-82': (e) => {
    // washer and dryer, 27 in deep, stand right before the panel
    expect(search([thing('washer', [95, 122], [1, 28], [0, 39])]).depth.outcome === 'holds').toBe(e.in_place_legal);
  },
};
