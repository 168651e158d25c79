import type { PriceBook } from '../job/schema';

type Material = PriceBook['materials'][number];
export const INVENTED = 'invented for the default book';

/** Dollars a foot in a 250 ft coil. Invented; only the order of sizes is meant to be lifelike. */
const COILED: Readonly<Record<string, number>> = {
  '14/2 NM': 0.42,
  '14/3 NM': 0.62,
  '12/2 NM': 0.6,
  '12/3 NM': 0.88,
  '10/2 NM': 1.02,
  '10/3 NM': 1.38,
  '8/2 NM': 1.9,
  '8/3 NM': 2.6,
  '6/2 NM': 2.9,
  '6/3 NM': 3.9,
  '14/2 AC': 0.92,
  '14/3 AC': 1.24,
  '12/2 AC': 1.08,
  '12/3 AC': 1.5,
  '10/2 AC': 1.85,
  '10/3 AC': 2.4,
  '14/2 MC': 0.86,
  '14/3 MC': 1.18,
  '12/2 MC': 1,
  '12/3 MC': 1.42,
  '10/2 MC': 1.76,
  '10/3 MC': 2.3,
  '14/2 UF': 0.66,
  '12/2 UF': 0.84,
  '12/3 UF': 1.26,
  '10/2 UF': 1.34,
  '10/3 UF': 1.9,
};
/** Dollars a foot, sold by the foot only. Invented. */
const BY_THE_FOOT: Readonly<Record<string, number>> = {
  '4/3 NM': 6.8,
  '2/3 NM': 9.9,
  '8/3 AC': 4.1,
  '6/3 AC': 5.6,
  '8/3 MC': 3.9,
  '6/3 MC': 5.3,
  '4/3 MC': 8.4,
  '4-4-4-6 Al SER': 2.3,
  '2-2-2-4 Al SER': 2.9,
  '1-1-1-3 Al SER': 3.8,
  '1/0-1/0-1/0-2 Al SER': 4.4,
  '2/0-2/0-2/0-1 Al SER': 5.2,
  '3/0-3/0-3/0-1/0 Al SER': 6.3,
  '4/0-4/0-4/0-2/0 Al SER': 7.4,
  '8-8-8-8 Cu SER': 5.2,
  '6-6-6-6 Cu SER': 7.1,
  '4-4-4-6 Cu SER': 10.4,
  '3-3-3-5 Cu SER': 12.6,
  '2-2-2-4 Cu SER': 15.8,
  '1-1-1-3 Cu SER': 19.6,
  '1/0-1/0-1/0-2 Cu SER': 24.5,
  '2/0-2/0-2/0-1 Cu SER': 30.2,
};
const WIRE: Readonly<Record<string, number>> = {
  '14 Cu': 0.16,
  '12 Cu': 0.23,
  '10 Cu': 0.38,
  '8 Cu': 0.68,
  '6 Cu': 1.02,
  '4 Cu': 1.62,
  '3 Cu': 2.02,
  '2 Cu': 2.52,
  '1 Cu': 3.3,
  '1/0 Cu': 3.95,
  '2/0 Cu': 4.9,
  '3/0 Cu': 6.1,
  '4/0 Cu': 7.6,
  '6 Al': 0.42,
  '4 Al': 0.52,
  '2 Al': 0.7,
  '1 Al': 0.98,
  '1/0 Al': 1.14,
  '2/0 Al': 1.34,
  '3/0 Al': 1.66,
  '4/0 Al': 1.96,
};
const ELECTRODE: Readonly<Record<string, number>> = {
  '8 Cu': 0.8,
  '6 Cu': 1.15,
  '4 Cu': 1.8,
  '2 Cu': 2.75,
  '1/0 Cu': 4.2,
  '2/0 Cu': 5.2,
  '3/0 Cu': 6.4,
};

/** Coil and spool lengths (ft) and what a foot costs in them, against the 250 ft coil. Lengths: common practice, no source. */
const SMALL_COILS = { 25: 1.55, 50: 1.35, 100: 1.15, 250: 1, 500: 0.97, 1000: 0.94 } as const;
const LARGE_COILS = { 25: 1.45, 50: 1.25, 125: 1.1, 250: 1, 500: 0.97 } as const;
const ARMORED_COILS = { 25: 1.5, 50: 1.3, 100: 1.12, 250: 1 } as const;
/** A foot put in the estimate pays for the foot thrown away. Common practice, no source. */
const WASTE = 1.1;

const fourDecimals = (dollars: number): number => Math.round(dollars * 10_000) / 10_000;
const cents = (dollars: number): number => Math.round(dollars * 100) / 100;

const coilsOf = (name: string): Readonly<Record<number, number>> =>
  /^[86]\//.test(name) ? LARGE_COILS : /(AC|MC)$/.test(name) ? ARMORED_COILS : SMALL_COILS;

const byTheFoot = (family: string, list: Readonly<Record<string, number>>): Material[] =>
  Object.entries(list).map(([name, dollars]) => ({
    id: `${family}:${name}`,
    unit: 'ft',
    dollars: fourDecimals(dollars * WASTE),
    source: INVENTED,
  }));

/** Cable by the foot (`cable:12/2 NM`), as coils (`cable:12/2 NM@250`), single conductors and electrode conductors. */
export const cableMaterials: readonly Material[] = [
  ...byTheFoot('cable', { ...COILED, ...BY_THE_FOOT }),
  ...Object.entries(COILED).flatMap(([name, dollars]) =>
    Object.entries(coilsOf(name)).map(([feet, factor]) => ({
      id: `cable:${name}@${feet}`,
      unit: 'each',
      dollars: cents(Number(feet) * dollars * factor),
      source: INVENTED,
    })),
  ),
  ...byTheFoot('wire', WIRE),
  ...byTheFoot('electrode', ELECTRODE),
];
