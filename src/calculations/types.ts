import type { TempColumn } from '../standards/cable';
import type { Use } from '../standards/uses';
import type { Edition, Id, In, Size, U } from '../units/types';

/** A calculation shown step by step, each step with its section: like a worked example. */
export interface Worked {
  readonly id: Id;
  readonly value: number;
  readonly unit: string;
  readonly steps: readonly {
    readonly say: string;
    readonly value: number | string;
    readonly unit: string;
    readonly section: string;
  }[];
}

export interface CalcOutput {
  readonly outcome: 'holds' | 'fails' | 'cannot be told' | 'value';
  readonly figures: Readonly<Record<string, number | string | boolean>>;
  readonly worked: Worked;
}

export interface Count {
  readonly awg: string;
  readonly count: number;
}

type InsulatedCount = Count & { readonly insulation: string };

/** Inputs of the pocket calculations: `npm run --silent calc -- NAME < in.json`. */
export interface CalcInput {
  'box-fill': {
    edition: Edition;
    conductors: Count[];
    grounds: Count[];
    deviceYokes: Count[];
    clamps: boolean;
    fittings: number;
    boxIn3: number | null;
  };
  'cabinet-fill': { sectionIn2: number; conductors: InsulatedCount[]; splicesIn2: number };
  'pull-box': { pull: 'straight' | 'angle' | 'splice'; racewaysIn: number[] };
  ampacity: {
    edition: Edition;
    metal: 'Cu' | 'Al';
    awg: string;
    startColumn: TempColumn;
    terminals: U<TempColumn>;
    limitColumn: 60 | 75 | null;
    conductors: number;
    ambientF: number;
    togetherIn: number | null;
    inRaceway: boolean;
    breakerAmps: number | null;
  };
  feeder: {
    edition: Edition;
    metal: 'Cu' | 'Al';
    awg: string;
    cable: string;
    breakerAmps: number;
    terminals: U<60 | 75>;
    wholeDwelling: U<boolean>;
    continuousAmps: number;
    otherAmps: number;
    conductors: number;
    ambientF: number;
    upsizedFrom: string | null;
    /** Touching thermal insulation along its way. */
    insulated?: boolean;
    /** Load on the neutral, A; with it the smallest neutral is worked out. */
    neutralAmps?: number | null;
    /** Conductors tapped from a larger feeder: the device ahead of it, A, and the length of the tap, ft. */
    tap?: { ahead: number; feet: number } | null;
  };
  'voltage-drop': {
    volts: number;
    amps: number;
    feetOneWay: number;
    metal: 'Cu' | 'Al';
    awg: string;
    ohmPerKft: number | null;
    raceway: 'PVC' | 'aluminum' | 'steel';
    powerFactor: number;
  };
  load: {
    edition: Edition;
    method: 'standard' | 'optional' | 'existing' | 'measured';
    areaFt2: number;
    smallAppliance: number;
    laundry: number;
    fixedVA: number[];
    rangeVA: number[];
    dryerVA: number[];
    ovenVA: number[];
    cooktopVA: number[];
    wholeDwelling: boolean;
    newHvac: boolean;
    heatVA: number;
    /** Separately controlled heaters that make it up; 1 where absent. */
    heatUnits?: number;
    /** Heat that runs together with a heat pump, VA; 0 where absent. */
    supplementVA?: number;
    /** Of the fixed appliances, VA without a neutral; 0 where absent. */
    fixedNoNeutralVA?: number;
    coolVA: number;
    largestMotorVA: number;
    evVA: number;
    otherVA: number;
    peakVA: number | null;
  };
  afci: {
    edition: Edition;
    volts: number;
    amps: number;
    serves: U<Use[]>;
    outsideIn: number;
    tailsIn: number;
    addsOutlet: boolean;
    shortenedOnly: boolean;
    newHomeRun: boolean;
    amendments: Record<string, string>;
  };
  'working-space': {
    edition: Edition;
    size: Size;
    bottom: In;
    topHandle: In;
    free: { left: In; right: In; depth: In; height: In };
    existingDwelling: boolean;
    amps: number;
    voltsToGround: number;
  };
  boring: {
    member: 'joist' | 'bearing stud' | 'other stud';
    depthIn: number;
    holeIn: number | null;
    edgeIn: number | null;
    notchIn: number | null;
    /** Wood between this hole and the next hole or notch, in. */
    betweenIn?: number | null;
    /** Where along the span the notch is; an outer third where absent. */
    notchAt?: 'outer third' | 'middle third' | 'end';
    /** The notch is in the edge that is pulled, below in a joist between supports. */
    notchBelow?: boolean;
    /** Nominal thickness of the member, in; 2 where absent. */
    nominalIn?: number;
  };
  bend: { cable: string | null; diameterIn: number | null };
  'raceway-fill': {
    raceway: 'EMT' | 'PVC 40' | 'PVC 80';
    tradeSize: string;
    nipple: boolean;
    conductors: InsulatedCount[];
  };
  'terminal-bend': { awg: string; wires: number; wall: 'side' | 'opposite' };
  'dedicated-space': {
    edition: Edition;
    size: Size;
    bottom: In;
    structure: In;
    thing: { left: In; right: In; out: In; outTo: In; from: In; to: In };
  };
  arrangement: { spaces: number; circuits: { id: Id; poles: 1 | 2; va: number; partner: Id | null }[] };
  cut: {
    coils: { length: In; dollars: number; have: number | null }[];
    pieces: { length: In; count: number }[];
    keepFrom: In | null;
    remnantShare: number;
  };
}
export type CalcName = keyof CalcInput;
