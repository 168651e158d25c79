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
/** Single conductors and an EGC in a raceway, by the foot of raceway: size / insulated conductors. */
const IN_RACEWAY: Readonly<Record<string, number>> = {
  '8/3 Cu in raceway': 2.5,
  '6/3 Cu in raceway': 3.6,
  '4/3 Cu in raceway': 5.6,
  '3/3 Cu in raceway': 6.8,
  '2/3 Cu in raceway': 8.4,
  '1/3 Cu in raceway': 10.9,
  '1/0/3 Cu in raceway': 13,
  '2/0/3 Cu in raceway': 15.9,
  '3/0/3 Cu in raceway': 19.8,
  '4/0/3 Cu in raceway': 24.4,
  '6/3 Al in raceway': 1.6,
  '4/3 Al in raceway': 2,
  '2/3 Al in raceway': 2.6,
  '1/3 Al in raceway': 3.5,
  '1/0/3 Al in raceway': 4.1,
  '2/0/3 Al in raceway': 4.8,
  '3/0/3 Al in raceway': 5.9,
  '4/0/3 Al in raceway': 7,
};
/** Copper, bare or insulated. */
const ELECTRODE: Readonly<Record<string, number>> = {
  '8': 0.8,
  '6': 1.15,
  '4': 1.8,
  '2': 2.75,
  '1/0': 4.2,
  '2/0': 5.2,
  '3/0': 6.4,
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

/** Cable by the foot (`cable:12/2 NM`), as coils (`cable:12/2 NM@250`) and electrode conductors. */
export const cableMaterials: readonly Material[] = [
  ...byTheFoot('cable', { ...COILED, ...BY_THE_FOOT, ...IN_RACEWAY }),
  ...Object.entries(COILED).flatMap(([name, dollars]) =>
    Object.entries(coilsOf(name)).map(([feet, factor]) => ({
      id: `cable:${name}@${feet}`,
      unit: 'each',
      dollars: cents(Number(feet) * dollars * factor),
      source: INVENTED,
    })),
  ),
  ...byTheFoot('electrode', ELECTRODE),
];
