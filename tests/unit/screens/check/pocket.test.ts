import { describe, expect, test } from 'vitest';
import type { CalcName } from '../../../../src/calculations/types';
import { CALC_NAMES } from '../../../../src/job/calcInput';
import { runCalc } from '../../../../src/plan/calc';
import { POCKET, POCKET_NAMES, UNASKED } from '../../../../src/screens/check/pocket/all';
import type { PocketField } from '../../../../src/screens/check/pocket/fields';
import { labelOfPath, readFields } from '../../../../src/screens/check/pocket/readFields';
import { pocketWords } from '../../../../src/words/en/pocket';

type Typed = Readonly<Record<string, string>>;
const answerOf = (name: CalcName, typed: Typed) => {
  const read = readFields(POCKET[name], typed, UNASKED[name]);
  if ('fault' in read) throw new Error(read.fault);
  return runCalc(name, read.json);
};
const textOf = (name: CalcName, typed: Typed): string => JSON.stringify(answerOf(name, typed));

test('every calculation of the command is on the sheet', () => {
  expect([...POCKET_NAMES].sort()).toEqual([...CALC_NAMES].sort());
});

/** Something else that may stand in a field. */
const others = (f: PocketField): string[] => {
  switch (f.kind) {
    case 'choice':
      return f.choices.map(String).filter((c) => c !== f.start);
    case 'number':
      return [String(Number(f.start) + 1), String(2 * Number(f.start) + 10), '-5', '3', '0.25', '5000'];
    case 'text':
      return ['4', '8', '2', '3/4', 'NM', '10/3 w/G'];
    case 'rooms':
      return ['', 'garage'];
    case 'numbers':
      return ['3000, 2000', '3, 2'];
    case 'counts':
      return ['3 x 12'];
    case 'insulated':
      return ['2 x 10 THHN'];
    case 'pieces':
      return ['2 x 10'];
    case 'coils':
      return ["100' at 50"];
    case 'circuits':
      return ['a 100\nb 250'];
  }
};
/** Where a field says nothing at the start, where it does: a load of another method, a tap, a notch. */
const BASES: Readonly<Partial<Record<CalcName, readonly Typed[]>>> = {
  load: [
    { method: 'optional' },
    { method: 'optional', wholeDwelling: 'true', heatVA: '9000', supplementVA: '4000' },
    { method: 'optional', wholeDwelling: 'true', heatVA: '9000' },
    { method: 'existing', wholeDwelling: 'true', heatVA: '9000' },
    { method: 'measured', peakVA: '9000' },
  ],
  feeder: [
    { 'tap.ahead': '200', 'tap.feet': '9' },
    { neutralAmps: '40' },
    { awg: '8', breakerAmps: '40' },
    { awg: '12', breakerAmps: '15', cable: 'SE-R', metal: 'Cu' },
  ],
  boring: [{ notchIn: '1' }, { notchIn: '1', notchBelow: 'true' }, { notchIn: '1', nominalIn: '4' }],
  afci: [{ outsideIn: '20', tailsIn: '60' }, { outsideIn: '100' }, { shortenedOnly: 'true' }],
  'dedicated-space': [{ structure: '200' }],
  'working-space': [{ 'free.height': '70' }, { 'free.depth': '30', voltsToGround: '277' }],
  ampacity: [{ togetherIn: '20' }],
};

describe.each(POCKET_NAMES)('%s', (name) => {
  const fields = POCKET[name];
  test('works out as it opens, each figure with its words, each step with its section', () => {
    const answer = answerOf(name, {});
    if (!answer.ok) throw new Error(answer.error.error.say);
    for (const key of Object.keys(answer.value.figures)) expect(pocketWords.figures).toHaveProperty(key);
    for (const step of answer.value.worked.steps) expect(step.section, step.say).not.toBe('');
  });
  test.each(fields.map((f) => [f.key, f] as const))('%s makes a difference', (_key, field) => {
    const bases: readonly Typed[] = [{}, ...(BASES[name] ?? [])];
    const differs = bases.some((base) =>
      others(field).some((value) => textOf(name, { ...base, [field.key]: value }) !== textOf(name, base)),
    );
    expect(differs).toBe(true);
  });
});

test('what is not read is told by the field, with an example; a fault of the calculation too', () => {
  expect(readFields(POCKET['cabinet-fill'], { conductors: '4 of 12' })).toEqual({
    fault: expect.stringContaining('“4 of 12” is not read. Write it as in 3 x 4 THHN'),
  });
  expect(readFields(POCKET.cut, { pieces: 'three' })).toEqual({ fault: expect.stringContaining('“three”') });
  const answer = answerOf('feeder', { 'tap.feet': '9' });
  if (answer.ok) throw new Error('a tap without the device ahead');
  expect(labelOfPath(POCKET.feeder, answer.error.error.path)).toBe('A tap: device ahead, A');
});

test('several in a line or in lines, lengths as the trade writes them', () => {
  const read = readFields(POCKET.cut, { coils: "250' at $128.50, 37' 6\" at 0 have 2", pieces: '3 x 42\' 6"\n2 x 96' });
  expect('json' in read && JSON.parse(read.json)).toMatchObject({
    coils: [
      { length: 3000, dollars: 128.5, have: null },
      { length: 450, dollars: 0, have: 2 },
    ],
    pieces: [
      { length: 510, count: 3 },
      { length: 96, count: 2 },
    ],
  });
  const legs = readFields(POCKET.arrangement, {
    circuits: 'hall 600 with bath\nbath 900 with hall\nrange 8000 2-pole',
  });
  expect('json' in legs && JSON.parse(legs.json).circuits).toEqual([
    { id: 'hall', va: 600, poles: 1, partner: 'bath' },
    { id: 'bath', va: 900, poles: 1, partner: 'hall' },
    { id: 'range', va: 8000, poles: 2, partner: null },
  ]);
});
