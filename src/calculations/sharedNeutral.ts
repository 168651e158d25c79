/** Current in a neutral that two loads share, A: the difference on opposite legs, the sum on the same leg. */
export const neutralAmps = (legOne: number, legTwo: number, opposite: boolean): number =>
  opposite ? Math.abs(legOne - legTwo) : legOne + legTwo;

/** Resistance of a load from its rating, ohms. */
export const loadOhms = (watts: number, volts: number): number => (volts * volts) / watts;

/** Voltages over two loads of a shared-neutral circuit when the neutral opens: they stand in series across the legs. */
export const openNeutralVolts = (ohmsOne: number, ohmsTwo: number, legToLeg: number): readonly [number, number] => [
  (legToLeg * ohmsOne) / (ohmsOne + ohmsTwo),
  (legToLeg * ohmsTwo) / (ohmsOne + ohmsTwo),
];
