/** What a panel of so many spaces, two columns, rows alternating legs, can take. Space 1 and 2 are on leg A, 3 and 4 on B. */
export interface PanelSlots {
  readonly legA: number;
  readonly legB: number;
  /** Most 2-pole breakers and shared-neutral pairs: two rows of one column each. */
  readonly doubles: number;
}

export const legOfSpace = (space: number): 'A' | 'B' => (Math.floor((space - 1) / 2) % 2 === 0 ? 'A' : 'B');

export const panelSlots = (spaces: number): PanelSlots => {
  let legA = 0;
  for (let space = 1; space <= spaces; space++) if (legOfSpace(space) === 'A') legA++;
  const rows = [Math.ceil(spaces / 2), Math.floor(spaces / 2)];
  return { legA, legB: spaces - legA, doubles: rows.reduce((n, r) => n + Math.floor(r / 2), 0) };
};
