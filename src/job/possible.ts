import { z } from 'zod';
import { fromPointer } from './pointer';
import { jobSchema } from './schema';

/** What an unknown field may turn out to be: every word, both truths, or the two ends of what is common. */

const bare = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodReadonly || schema instanceof z.ZodNullable ? bare(schema.unwrap() as z.ZodType) : schema;

/** The schema of what a pointer leads to; undefined where it leads nowhere, or through a union. */
const schemaAt = (pointer: string): z.ZodType | undefined =>
  fromPointer(pointer)?.reduce<z.ZodType | undefined>((at, step) => {
    const schema = at && bare(at);
    if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
    if (schema instanceof z.ZodObject) return (schema.shape as Record<string, z.ZodType>)[step];
    return undefined;
  }, jobSchema);

/** Least and most of what is common in houses, inches, amperes, years. Common practice, no source. */
const ENDS: Readonly<Record<string, readonly unknown[]>> = {
  wholeLength: [240, 960],
  pivot: [0, 120],
  tails: [
    { hot: 10, neutral: 10, ground: 8 },
    { hot: 30, neutral: 30, ground: 30 },
  ],
  amps: [15, 30],
  busAmps: [100, 200],
  mainAmps: [100, 200],
  breakerAmps: [60, 100],
  spaces: [20, 40],
  knockouts: [20, 60],
  ceiling: [80, 96],
  underside: [84, 100],
  thickness: [4.5, 10],
  height: [84, 100],
  studSpacing: [16, 24],
  depth: [7.25, 11.25],
  topHandle: [20, 34],
  yearBuilt: [1960, 2005],
  outside: [60, 720],
  serves: [['bedroom'], ['garage']],
  size: ['14', '10'],
};

const words = (schema: z.ZodType): readonly unknown[] => {
  const one = bare(schema);
  if (one instanceof z.ZodUnion) return (one.options as z.ZodType[]).flatMap(words);
  if (one instanceof z.ZodEnum) return one.options;
  if (one instanceof z.ZodLiteral) return [...one.values];
  return one instanceof z.ZodBoolean ? [true, false] : [];
};

/** Values to try at a field that is not known; empty where nobody could say what to try. */
export const possibleAt = (pointer: string): readonly unknown[] => {
  const schema = schemaAt(pointer);
  if (!schema) return [];
  const key = fromPointer(pointer)?.at(-1) ?? '';
  return ENDS[key] ?? words(schema).filter((value) => value !== 'unknown');
};
