import { pocketWords as say } from '../../words/en/pocket';
import type { PocketField } from './pocketFields';

const NUMBER = /^-?(\d+\.?\d*|\.\d+)$/;
const COUNT = /^(\d+)\s*[x×*]\s*(\S+)$/i;

/** A typed field as the calculation takes it, or why it is not read. */
const readField = (field: PocketField, typed: string): { readonly value: unknown } | { readonly fault: string } => {
  const label = say.fields[field.label];
  const trimmed = typed.trim();
  if (field.kind === 'choice') return { value: field.choices.find((c) => String(c) === typed) ?? null };
  if (field.kind === 'text') return { value: trimmed === '' && field.empty ? null : trimmed };
  if (field.kind === 'number') {
    if (trimmed === '' && field.empty) return { value: null };
    return NUMBER.test(trimmed) ? { value: Number(trimmed) } : { fault: say.notANumber({ label, typed }) };
  }
  const parts = trimmed === '' ? [] : trimmed.split(',').map((p) => p.trim());
  if (field.kind === 'numbers')
    return parts.every((p) => NUMBER.test(p))
      ? { value: parts.map(Number) }
      : { fault: say.notANumber({ label, typed }) };
  const read = parts.map((p) => COUNT.exec(p));
  return read.every((r) => r !== null)
    ? { value: read.map((r) => ({ awg: r?.[2], count: Number(r?.[1]) })) }
    : { fault: say.notCounts({ label, typed }) };
};

/** All fields as the JSON a calculation reads, or the first that is not read. */
export const pocketInput = (
  fields: readonly PocketField[],
  typed: Readonly<Record<string, string>>,
): { readonly json: string } | { readonly fault: string } => {
  const input: Record<string, unknown> = {};
  for (const field of fields) {
    const read = readField(field, typed[field.key] ?? field.start);
    if ('fault' in read) return read;
    input[field.key] = read.value;
  }
  return { json: JSON.stringify(input) };
};
