/** Sizes of the summary's letter page in pixels, 96 to the inch. */
const COLUMN_CHARACTERS = 58; // of 11 px text in one of two columns, beside the number of the note
const LINE = 14;
const NOTE_GAP = 6;
const HEAD = 26; // a section's head and the gap above it
/** What the full drawings, their titles and the safety paragraph leave for notes on the first page. */
const ROOM = 140;
const PLAN = { most: 384, least: 270 } as const;
const WALL = { most: 232, least: 150 } as const;

/**
 * Heights in pixels of the two drawings of the summary: full, and less where the notes need the room, so that no page
 * is begun for a few lines. `sections` holds the sentences under each head. The height of text is an estimate.
 */
export const drawingHeights = (
  sections: readonly (readonly string[])[],
): { readonly plan: number; readonly wall: number } => {
  const sentences = sections.flat();
  const lines = sentences.reduce((sum, text) => sum + Math.ceil(text.length / COLUMN_CHARACTERS), 0);
  const heads = sections.filter((of) => of.length > 0).length;
  // two columns of even height, give or take a note that is not split
  const needs = (lines * LINE + sentences.length * NOTE_GAP + heads * HEAD) / 2 + 2 * LINE;
  const most = PLAN.most - PLAN.least + WALL.most - WALL.least;
  const given = Math.min(1, Math.max(0, (needs - ROOM) / most));
  return {
    plan: Math.round(PLAN.most - given * (PLAN.most - PLAN.least)),
    wall: Math.round(WALL.most - given * (WALL.most - WALL.least)),
  };
};
