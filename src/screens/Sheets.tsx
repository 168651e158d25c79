import { type ComponentType, useEffect, useMemo } from 'react';
import { screenWords as say } from '../words/en/screens';
import { Crash } from './Crash';
import { CheckSheet } from './check/CheckSheet';
import { CloseoutSheet } from './closeout/CloseoutSheet';
import { LayoutSheet } from './layout/LayoutSheet';
import { PriceSheet } from './price/PriceSheet';
import { SheetFrame } from './SheetFrame';
import { SlotsProvider } from './Slots';
import { useJob } from './selected';
import { useJobState, useRescue } from './session';
import { goToSheet, useSheetKey } from './sheetHash';
import { SHEET_KEYS, type SheetKey, sheetNumber } from './sheetKeys';
import { useShortcuts } from './shortcuts';
import { SurveySheet } from './survey/SurveySheet';

/*
 * How a sheet is plugged in.
 *
 * A sheet is one component without props in a folder of its own, named below; the frame around it (tool row, right
 * column, tally, title block, job string) is the same for all. The job and what is selected come from the hooks of
 * `selected.ts` and `session.tsx`: useJob, useSelected (option and plan, undefined without an option), useOptions,
 * useJobState, and useActions().edit for every change.
 *
 * - What it renders fills the work area, a flex column that scrolls: give a drawing `flex: 1; min-height: 0`. Below
 *   1200 px it is one column of the page, and what is wrapped in <AfterNotes> comes after the right column's notes.
 * - <InTools>, <InViews> (Slots.tsx) put buttons of class `parts.tool` into the tool row; the one that is on has
 *   aria-pressed. <InColumn> puts the thing selected into the right column in place of the new panel.
 * - useShortcuts({ v: … }) takes single keys; 1 to 5 are the sheets'. Make the object once (useMemo).
 * - What follows a slash in the address is the sheet's own: useSheetPart, goToSheet('closeout', 'crew').
 * - `small`: the sheet has no drawing, so the right column shows a small plan.
 */
interface Entry {
  readonly Sheet: ComponentType;
  readonly small: boolean;
}
const SHEETS: Readonly<Record<SheetKey, Entry>> = {
  survey: { Sheet: SurveySheet, small: false },
  layout: { Sheet: LayoutSheet, small: false },
  check: { Sheet: CheckSheet, small: false },
  price: { Sheet: PriceSheet, small: true },
  closeout: { Sheet: CloseoutSheet, small: true },
};

/** The open sheet of the job in its frame: the one in the address, else where the job stands. */
export const Sheets = () => {
  const { title, options } = useJob();
  const openKey = useJobState((s) => s.openKey);
  const key = useSheetKey() ?? (options.length > 0 ? 'layout' : 'survey');
  const { Sheet, small } = SHEETS[key];
  const keys = useMemo(
    () => Object.fromEntries(SHEET_KEYS.map((name) => [String(sheetNumber(name)), () => goToSheet(name)])),
    [],
  );
  const rescue = useRescue();
  useShortcuts(keys);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every sheet, and every job opened, is read from its top
  useEffect(() => {
    scrollTo(0, 0);
  }, [key, openKey]);
  return (
    <SlotsProvider>
      <title>{say.pageTitle({ number: sheetNumber(key), sheet: say.sheets[key], job: title || say.untitled })}</title>
      <SheetFrame sheet={key} small={small}>
        {/* a sheet that fails leaves the others usable */}
        <Crash key={key} rescue={rescue}>
          <Sheet />
        </Crash>
      </SheetFrame>
    </SlotsProvider>
  );
};
