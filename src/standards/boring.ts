import { nec, type Source, type Standing } from './source';

const irc = (section: string, standing: Standing = 'confirmed'): Source => ({
  document: 'International Residential Code',
  edition: '2018/2021',
  section: `IRC ${section}`,
  standing,
});

/** Sawn lumber only. Fractions are of the actual depth. */
export interface BoringRule {
  readonly holeShare: number;
  /** Wood left between a hole and the edge, in. */
  readonly edgeIn: number;
  /** Wood left between a hole and the next hole or notch, in; null = no figure. */
  readonly betweenIn: number | null;
  readonly notchShare: number;
  readonly endNotchShare: number;
  readonly hole: Source;
  readonly notch: Source;
}
export type Member = 'joist' | 'bearing stud' | 'other stud';
export const MEMBERS: readonly Member[] = ['joist', 'bearing stud', 'other stud'];

export const BORING: Readonly<Record<Member, BoringRule>> = {
  joist: {
    holeShare: 1 / 3,
    edgeIn: 2,
    betweenIn: 2,
    notchShare: 1 / 6,
    endNotchShare: 1 / 4,
    hole: irc('R502.8.1'),
    notch: irc('R502.8.1'),
  },
  'bearing stud': {
    holeShare: 0.4,
    edgeIn: 5 / 8,
    betweenIn: null,
    notchShare: 0.25,
    endNotchShare: 0.25,
    hole: irc('R602.6'),
    notch: irc('R602.6'),
  },
  'other stud': {
    holeShare: 0.6,
    edgeIn: 5 / 8,
    betweenIn: null,
    notchShare: 0.4,
    endNotchShare: 0.4,
    hole: irc('R602.6', 'one source'),
    notch: irc('R602.6'),
  },
};
/** A notch of a joist is not longer than this share of its depth, and never in the middle third of the span. */
export const NOTCH_LENGTH_SHARE = 1 / 3;
/** Joists of this nominal thickness and more take no notch on the tension side but at their ends, in. */
export const NO_TENSION_NOTCH_FROM_IN = 4;
/** Engineered joists, trusses, LVL: only as their maker or an engineer allows. */
export const ENGINEERED = irc('R502.8.2');

/** Cable in wood: hole edge, or cable along framing, at least this far from the nail face, else a steel plate. */
export const NAIL_SETBACK = {
  edgeIn: 1.25,
  plateThicknessIn: 1 / 16,
  bored: nec({ 2017: '300.4(A)(1)', 2020: '300.4(A)(1)', 2023: '300.4(A)(1)', 2026: '300.6(A)' }),
  parallel: nec({ 2017: '300.4(D)', 2020: '300.4(D)', 2023: '300.4(D)', 2026: '300.6(D)' }),
} as const;

/** Bits a crew carries, in: common practice. */
export const BITS_IN: readonly number[] = [0.75, 1, 1.125, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3];
/** Hole centers in one joist at least this far apart, in: common practice, so that 2 in of wood stays between. */
export const HOLE_CENTERS_IN = 3;
