import { createContext, useContext, useState } from 'react';
import type { Id, Pt3 } from '../../units/types';
import type { surveyWords } from '../../words/en/survey';
import type { Entry, OpeningKind } from './placing';
import type { Ref } from './ref';
import type { Leg } from './traverse';

export type Tool = keyof typeof surveyWords.tools;
export const TOOLS: readonly { readonly tool: Tool; readonly key: string }[] = [
  { tool: 'select', key: 'v' },
  { tool: 'walls', key: 'w' },
  { tool: 'rectangle', key: 'r' },
  { tool: 'partition', key: 'p' },
  { tool: 'opening', key: 'd' },
  { tool: 'area', key: 'a' },
  { tool: 'framing', key: 'j' },
  { tool: 'thing', key: 't' },
  { tool: 'panel', key: 'o' },
  { tool: 'cables', key: 'c' },
  { tool: 'house', key: 'h' },
];

/** Points taken one after the other for something that is not drawn yet. */
export interface Taken {
  readonly what: 'partition' | 'area' | 'framing' | 'bay' | 'cables' | 'feeder' | 'sleeve';
  readonly points: readonly Pt3[];
}

export interface SheetState {
  readonly tool: Tool;
  readonly selected: Ref | null;
  /** Walls typed one by one, not drawn yet. */
  readonly legs: readonly Leg[];
  readonly taken: Taken | null;
  readonly opening: OpeningKind;
  /** Kind of thing picked from the palette. */
  readonly thing: string | null;
  /** The can and its side a group that is being drawn comes out of. */
  readonly group: { readonly enclosure: Id; readonly entry: Entry };
  /** Height of the next point of a run, inches above the floor. */
  readonly height: number;
}

const START: SheetState = {
  tool: 'select',
  selected: null,
  legs: [],
  taken: null,
  opening: 'door',
  thing: null,
  group: { enclosure: '', entry: 'top' },
  height: 84,
};

export interface Sheet {
  readonly now: SheetState;
  readonly set: (patch: Partial<SheetState>) => void;
}
/** What was typed and not drawn yet outlives a look at another sheet; by job. */
const left = new Map<Id, SheetState>();

export const useSheetOf = (job: Id): Sheet => {
  const [now, setNow] = useState<SheetState>(() => left.get(job) ?? START);
  const set = (patch: Partial<SheetState>): void =>
    setNow((before) => {
      const next = { ...before, ...patch };
      left.set(job, next);
      return next;
    });
  return { now, set };
};

const SheetContext = createContext<Sheet | null>(null);
export const SheetProvider = SheetContext.Provider;
export const useSheet = (): Sheet => {
  const sheet = useContext(SheetContext);
  if (!sheet) throw new Error('No survey sheet around this part');
  return sheet;
};
