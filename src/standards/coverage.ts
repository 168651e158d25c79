/** Rules that no check covers, each with the reason: none is passed in silence. */
export const NOT_COVERED: readonly { readonly rule: string; readonly why: string }[] = [];
