import { parseLength } from '../../../units/length';
import { pocketWords as say } from '../../../words/en/pocket';
import type { PocketField } from './fields';

const NUMBER = /^-?(\d+\.?\d*|\.\d+)$/;
const COUNT = /^(\d+)\s*[x×*]\s*(\S.*)$/i;
const INSULATED = /^(\S+)\s+(\S.*)$/;
const COIL = /^(.+?)\s+at\s+\$?(\d+\.?\d*|\.\d+)(?:\s+have\s+(\d+))?$/i;
const CIRCUIT = /^(.+?)\s+(\d+\.?\d*|\.\d+)(?:\s*VA)?(\s+2-pole)?(?:\s+with\s+(\S.*))?$/i;

type Read = { readonly value: unknown } | { readonly fault: string };

const inches = (typed: string): number | null => {
  const read = parseLength(typed);
  return read.ok ? read.value : null;
};

/** One thing of several, as the calculation takes it; null where it is not read. */
const ONE: Readonly<
  Record<'numbers' | 'counts' | 'insulated' | 'pieces' | 'coils' | 'circuits', (part: string) => unknown>
> = {
  numbers: (part) => (NUMBER.test(part) ? Number(part) : null),
  counts: (part) => {
    const read = COUNT.exec(part);
    return read && { awg: read[2], count: Number(read[1]) };
  },
  insulated: (part) => {
    const read = COUNT.exec(part);
    const wire = read && INSULATED.exec(read[2]!);
    return wire && { awg: wire[1], insulation: wire[2], count: Number(read[1]) };
  },
  pieces: (part) => {
    const read = COUNT.exec(part);
    const length = read && inches(read[2]!);
    return read && length !== null ? { length, count: Number(read[1]) } : null;
  },
  coils: (part) => {
    const read = COIL.exec(part);
    const length = read && inches(read[1]!);
    const have = read?.[3] === undefined ? null : Number(read[3]);
    return read && length !== null ? { length, dollars: Number(read[2]), have } : null;
  },
  circuits: (part) => {
    const read = CIRCUIT.exec(part);
    return read && { id: read[1], va: Number(read[2]), poles: read[3] ? 2 : 1, partner: read[4] ?? null };
  },
};
const AS_IN: Readonly<Record<keyof typeof ONE, string>> = {
  numbers: '2, 1.5',
  counts: '4 x 14, 2 x 12',
  insulated: '3 x 4 THHN, 1 x 8 bare',
  pieces: '3 x 42\' 6"',
  coils: "250' at 128.50, 37' at 0 have 2",
  circuits: 'kitchen 1500 · hall 600 with bath · range 8000 2-pole',
};

/** A typed field as the calculation takes it, or why it is not read. */
const readField = (field: PocketField, typed: string): Read => {
  const label = say.fields[field.label];
  const trimmed = typed.trim();
  const { kind } = field;
  if (kind === 'choice') return { value: field.choices.find((c) => String(c) === typed) ?? null };
  if (kind === 'rooms') return { value: trimmed === '' ? 'unknown' : trimmed.split(', ') };
  if (kind === 'text') return { value: trimmed === '' && field.empty ? null : trimmed };
  if (kind === 'number') {
    if (trimmed === '' && field.empty) return { value: null };
    return NUMBER.test(trimmed) ? { value: Number(trimmed) } : { fault: say.notANumber({ label, typed }) };
  }
  const parts = trimmed === '' ? [] : trimmed.split(/[,;\n]/).map((p) => p.trim());
  const values = parts.filter((p) => p !== '').map(ONE[kind]);
  const wrong = values.indexOf(null);
  return wrong < 0 ? { value: values } : { fault: say.notRead({ label, typed: parts[wrong]!, example: AS_IN[kind] }) };
};

type Tree = { [key: string]: unknown };
const put = (tree: Tree, key: string, value: unknown): void => {
  const [first, ...rest] = key.split('.');
  if (rest.length === 0) tree[first!] = value;
  else {
    tree[first!] ??= {};
    put(tree[first!] as Tree, rest.join('.'), value);
  }
};
/** Nothing of it was given: the whole is not there. */
const emptied = (value: unknown): unknown =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.keys(value).length > 0 &&
  Object.values(value).every((v) => v === null)
    ? null
    : value;

/** All fields as the JSON a calculation reads, or the first that is not read. */
export const readFields = (
  fields: readonly PocketField[],
  typed: Readonly<Record<string, string>>,
  unasked: Readonly<Record<string, unknown>> = {},
): { readonly json: string } | { readonly fault: string } => {
  const input: Tree = structuredClone(unasked);
  for (const field of fields) {
    const read = readField(field, typed[field.key] ?? field.start);
    if ('fault' in read) return read;
    const [outer] = field.key.split('.');
    if (field.omit && read.value === null) {
      if (outer !== field.key) input[outer!] ??= {};
      continue;
    }
    put(input, field.key, read.value);
  }
  return { json: JSON.stringify(Object.fromEntries(Object.entries(input).map(([k, v]) => [k, emptied(v)]))) };
};

/** Name of the field a fault's place in the input belongs to, else the place itself. */
export const labelOfPath = (fields: readonly PocketField[], path: string): string => {
  const key = path.slice(1).replaceAll('/', '.');
  const field =
    fields.find((f) => f.key === key) ?? fields.find((f) => key.startsWith(`${f.key}.`) || f.key.startsWith(`${key}.`));
  return field ? say.fields[field.label] : path;
};
