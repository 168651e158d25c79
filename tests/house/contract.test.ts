import { expect, test } from 'vitest';
import type { z } from 'zod';
import { resultSchema } from '../../bin/resultSchema';
import type { CalcInput, CalcOutput } from '../../src/calculations/types';
import type { Output, Plan, Result } from '../../src/facts/result';
import type { Job } from '../../src/job/schema';
import { planJob } from '../../src/plan/planJob';
import { DEMOS, demoJob } from '../support/demos';
import type * as contract from './contract';

/** Readonly all the way down: the contract is written without it, the product with it. */
type Frozen<T> = T extends readonly [unknown, ...unknown[]]
  ? { readonly [K in keyof T]: Frozen<T[K]> }
  : T extends readonly (infer E)[]
    ? readonly Frozen<E>[]
    : T extends object
      ? { readonly [K in keyof T]: Frozen<T[K]> }
      : T;
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;

// Each line compiles only while the product's type and the contract's are assignable both ways.
const same: true[] = [
  true satisfies Same<z.infer<typeof resultSchema>, Result>,
  true satisfies Same<Job, Frozen<contract.Job>>,
  true satisfies Same<Plan, Frozen<contract.Plan>>,
  true satisfies Same<Result, Frozen<contract.Result>>,
  true satisfies Same<Output, Frozen<contract.Output>>,
  true satisfies Same<CalcOutput, Frozen<contract.CalcOutput>>,
  true satisfies Same<Frozen<CalcInput>, Frozen<contract.CalcInput>>,
];

test.each(DEMOS)('what the engine prints is of the published shape, every figure a number: %s', (name) => {
  const result = planJob(demoJob(name), { options: [demoJob(name).options[0]!.id] });
  const parsed = resultSchema.safeParse(JSON.parse(JSON.stringify(result)));
  expect(parsed.error?.issues ?? []).toEqual([]);
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
});

test('the job file, the result and the pocket calculations are typed as the contract has them', () => {
  expect(same).not.toContain(false);
});
