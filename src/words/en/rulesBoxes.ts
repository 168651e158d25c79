/** Sentences about splice boxes that hang beside each other. */
export const boxBankWords = {
  crowded: () => 'The box can be opened after the finishing, but no room was found to hang it beside the others.',
  crowdedLook: () => 'Find room on site to hang these boxes side by side, and measure the cables to each of them.',
};
