import { expect, test } from 'vitest';
import { coverageRows } from '../../src/documents/coverage';

/**
 * The ids of the published rule table this program is written against, in its order, and below them the ids that a
 * master electrician's and inspector's review added because silence would have been a pass.
 */
const TABLE = `AFCI-EXT AFCI-EXT-17 AFCI-AREA AFCI-RECP AFCI-LOCAL GFCI-NEW GFCI-RECP GFCI-OUT SPD-SVC SPD-FDR EMDISC
BARRIER SVC-SIX SVC-LOC SVC-TO-SUB OLD-3WIRE WS-DEPTH WS-WIDTH WS-HEIGHT WS-6IN WS-DOOR WS-FLOOR WS-STORE WS-LIGHT
DEDICATED HANDLE CLOSET BATH STAIRS DAMP ORIENT DIR OCPD-PANEL NEUTRAL-BAR MWBC TORQUE TEMP AL-CU CABLE-SEC SHEATH
CAB-FILL GUTS BREAKER-LIST SPLICE-BOX FREE-WIRE BOX-FILL BIG-BOX EGC UNGROUNDED NM-JOIST NM-BORE NM-PAR NM-SUP
NM-BUNDLE JOIST-HOLE FDR-2AL FDR-SIZE FDR-SER FDR-4W FDR-EGC FDR-TAP LOAD SAFE`;
const REVIEW = `SVC-GROUND GND-BOND OPENINGS DAMAGE ACCESS SCCR SOURCES BACKFED WIRE-BEND SURFACE CABLE-BEND FIRE-STOP
DUCT GROUP HANG FDR-N FLUSH NM-PRINT KNOB-TUBE AC-MC WIREWAY TEN-PERCENT DRYER-RANGE CARRY-OVER OLD-CAN WS-LIMITED
KNOCKOUTS SPACES`;

const ids = (text: string): string[] => text.split(/\s+/);
const rows = coverageRows();

test.each([...ids(TABLE), ...ids(REVIEW)])('%s is judged, reminded of, or named with the reason why not', (id) => {
  const row = rows.find((r) => r.rule === id);
  expect(row, 'it has an id').toBeDefined();
  if (row?.status === 'not covered') expect(row.why).toMatch(/\w+ \w+ \w+/);
});
