/** How many cases a property looks at: `npm run hard` looks at far more than `npm test`. */
export const cases = (usual: number, hard: number): number => (process.env.EFFORT === 'hard' ? hard : usual);
