import { calcAfci } from '../calculations/afci';
import { calcAmpacity } from '../calculations/ampacity';
import { calcArrangement } from '../calculations/arrangement';
import { calcBend } from '../calculations/bend';
import { calcBoring } from '../calculations/boring';
import { calcBoxFill } from '../calculations/boxFill';
import { calcCabinetFill } from '../calculations/cabinetFill';
import { calcDedicatedSpace } from '../calculations/dedicatedSpace';
import { calcFeeder } from '../calculations/feeder';
import { calcLoad } from '../calculations/load';
import { calcPullBox } from '../calculations/pullBox';
import { calcRacewayFill } from '../calculations/racewayFill';
import { calcTerminalBend } from '../calculations/terminalBend';
import type { CalcName, CalcOutput } from '../calculations/types';
import { calcVoltageDrop } from '../calculations/voltageDrop';
import { calcWorkingSpace } from '../calculations/workingSpace';
import { calcCut } from '../cutlist/cut';
import { type CalcRead, readCalcInput } from '../job/calcInput';
import type { Fault } from '../units/fault';
import type { Result } from '../units/result';

const CALCULATIONS: { readonly [N in keyof CalcRead]: (input: CalcRead[N]) => Result<CalcOutput, Fault> } = {
  'box-fill': calcBoxFill,
  'cabinet-fill': calcCabinetFill,
  'pull-box': calcPullBox,
  ampacity: calcAmpacity,
  feeder: calcFeeder,
  'voltage-drop': calcVoltageDrop,
  load: calcLoad,
  afci: calcAfci,
  'working-space': calcWorkingSpace,
  boring: calcBoring,
  bend: calcBend,
  'raceway-fill': calcRacewayFill,
  'terminal-bend': calcTerminalBend,
  'dedicated-space': calcDedicatedSpace,
  arrangement: calcArrangement,
  cut: calcCut,
} satisfies Record<CalcName, unknown>;

/** One pocket calculation from JSON text: the same for the command line, the Check sheet and the reference checks. */
export const runCalc = <N extends CalcName>(name: N, json: string): Result<CalcOutput, Fault> => {
  const input = readCalcInput(name, json);
  return input.ok ? CALCULATIONS[name](input.value) : input;
};
