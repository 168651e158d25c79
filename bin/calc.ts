/**
 * npm run --silent calc -- NAME < in.json
 * stdout is one CalcOutput or Fault; everything else goes to stderr. Exit code 0 calculated, 2 bad input, 1 a bug.
 */
import type { CalcOutput } from '../src/calculations/types';
import { CALC_NAMES, isCalcName } from '../src/job/calcInput';
import { runCalc } from '../src/plan/calc';
import type { Fault } from '../src/units/fault';
import { err } from '../src/units/result';
import { electricalWords as say } from '../src/words/en/calcElectrical';

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
  ? runCalc(name, await readInput())
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
