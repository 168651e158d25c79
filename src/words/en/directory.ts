/** What the directory inside a panel's door says. */
export const directoryWords = {
  spare: 'Spare',
  surge: 'Surge protective device',
  /** A label that says what, but not where, with the rooms the circuit serves. */
  where: (v: { label: string; rooms: readonly string[] }) => `${v.label}: ${v.rooms.join(', ')}`,
  /** Nothing is written, but the rooms are known. */
  rooms: (v: { rooms: readonly string[] }) => `Outlets: ${v.rooms.join(', ')}`,
  /** Two circuits with one label are told apart by their old numbers. */
  numbered: (v: { label: string; number: string }) => `${v.label} (old ${v.number})`,
  untraced: (v: { number: string }) => (v.number === '' ? 'To be traced' : `To be traced (old ${v.number})`),
  ratingUnknown: 'rating unknown',
} as const;
