import { TERMS, type TermKey } from '../../words/en/terms';

const KEYS = Object.keys(TERMS) as TermKey[];
/** One alternative a term, the longer ones first, whole words only. */
const MET = new RegExp(
  [...KEYS]
    .sort((a, b) => TERMS[b].met.length - TERMS[a].met.length)
    .map((key) => `(?<${key}>(?<![\\w-])(?:${TERMS[key].met})(?![\\w-]))`)
    .join('|'),
  'g',
);

export interface TextPart {
  readonly part: string;
  /** The trade word this part is, where it is met for the first time. */
  readonly term: TermKey | null;
  readonly at: number;
}

/** A text cut at the trade words in it; joined again, the parts are the text. */
export const splitTerms = (text: string): TextPart[] => {
  const parts: TextPart[] = [];
  const seen = new Set<TermKey>();
  let at = 0;
  for (const match of text.matchAll(MET)) {
    const term = KEYS.find((key) => match.groups?.[key] !== undefined)!;
    if (seen.has(term)) continue;
    seen.add(term);
    if (match.index > at) parts.push({ part: text.slice(at, match.index), term: null, at });
    parts.push({ part: match[0], term, at: match.index });
    at = match.index + match[0].length;
  }
  if (at < text.length) parts.push({ part: text.slice(at), term: null, at });
  return parts;
};

export const termsIn = (text: string): TermKey[] =>
  splitTerms(text).flatMap(({ term }) => (term === null ? [] : [term]));
