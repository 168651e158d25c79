import type { Pt } from '../units/types';

/**
 * The direction in which joists are counted from the origin to the first one (`firstJoist`), as a unit vector: across
 * the joists, toward +x or +y, whichever is nearer (+y where both are). Joists along y are counted in x, along x in y.
 */
export const acrossJoists = (direction: number): Pt => {
  const along = ((direction % 180) + 180) % 180;
  if (along === 0) return [0, 1];
  if (along === 90) return [1, 0];
  const radians = (along * Math.PI) / 180;
  const across: Pt = [-Math.sin(radians), Math.cos(radians)];
  return along > 45 ? [-across[0], -across[1]] : across;
};
