/**
 * npm run --silent calc -- NAME < in.json
 * stdout is one CalcOutput or Fault; everything else goes to stderr. Exit code 0 calculated, 2 bad input, 1 a bug.
 */
import { calcAfci } from '../src/calculations/afci';
import { calcAmpacity } from '../src/calculations/ampacity';
import { calcArrangement } from '../src/calculations/arrangement';
import { calcBend } from '../src/calculations/bend';
import { calcBoring } from '../src/calculations/boring';
import { calcBoxFill } from '../src/calculations/boxFill';
import { calcCabinetFill } from '../src/calculations/cabinetFill';
import { calcDedicatedSpace } from '../src/calculations/dedicatedSpace';
import { calcFeeder } from '../src/calculations/feeder';
import { calcLoad } from '../src/calculations/load';
import { calcPullBox } from '../src/calculations/pullBox';
import { calcRacewayFill } from '../src/calculations/racewayFill';
import { calcTerminalBend } from '../src/calculations/terminalBend';
import type { CalcName, CalcOutput } from '../src/calculations/types';
import { calcVoltageDrop } from '../src/calculations/voltageDrop';
import { calcWorkingSpace } from '../src/calculations/workingSpace';
import { calcCut } from '../src/cutlist/cut';
import { CALC_NAMES, type CalcRead, isCalcName, readCalcInput } from '../src/job/calcInput';
import type { Fault } from '../src/units/fault';
import { err, type Result } from '../src/units/result';
import { electricalWords as say } from '../src/words/en/calcElectrical';

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

const run = <N extends keyof CalcRead>(name: N, text: string): Result<CalcOutput, Fault> => {
  const input = readCalcInput(name, text);
  return input.ok ? CALCULATIONS[name](input.value) : input;
};

/** JSON has no infinite or missing numbers and would print null: that is a bug here, not an answer. */
const checkFinite = (output: CalcOutput): void => {
  const numbers = [...Object.values(output.figures), output.worked.value, ...output.worked.steps.map((s) => s.value)];
  for (const n of numbers) if (typeof n === 'number' && !Number.isFinite(n)) throw new Error(`a figure is ${n}`);
};

const readInput = async (): Promise<string> => {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks).toString('utf8');
};

const name = process.argv[2] ?? '';
const answer = isCalcName(name)
  ? run(name, await readInput())
  : err<Fault>({
      error: {
        type: 'no-such-calculation',
        path: '',
        say: say.noSuchCalculation({ found: name, known: CALC_NAMES.join(', ') }),
      },
    });
if (answer.ok) checkFinite(answer.value);
process.stdout.write(`${JSON.stringify(answer.ok ? answer.value : answer.error, null, 2)}\n`);
process.exitCode = answer.ok ? 0 : 2;
