import { type Job, jobSchema } from './schema';

/** One point a line, everything else one value a line. */
const isPoint = (value: unknown): value is readonly number[] =>
  Array.isArray(value) && value.length > 0 && value.every((v) => typeof v === 'number');

const write = (value: unknown, indent: string): string => {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (isPoint(value)) return `[${value.join(', ')}]`;
  const inner = `${indent}  `;
  const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}'];
  const parts = Array.isArray(value)
    ? value.map((entry) => write(entry, inner))
    : Object.entries(value).map(([key, entry]) => `${JSON.stringify(key)}: ${write(entry, inner)}`);
  if (parts.length === 0) return open + close;
  return `${open}\n${parts.map((part) => inner + part).join(',\n')}\n${indent}${close}`;
};

/** The text of a job file: keys in the schema's order, two spaces, a newline at the end; the same job gives the same bytes. */
export const saveJob = (job: Job): string => `${write(jobSchema.parse(job), '')}\n`;
