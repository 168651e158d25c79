import { z } from 'zod';
import { jobSchema } from '../../src/job/schema';

/**
 * Every place of a job that may hold 'unknown', found from the schema: walks schema and value together.
 * Places that already are unknown are left out.
 */
export const unknowablePlaces = (job: unknown): string[] => {
  const places: string[] = [];
  const walk = (schema: z.ZodType, value: unknown, path: string): void => {
    const inner = schema instanceof z.ZodReadonly ? (schema.unwrap() as z.ZodType) : schema;
    if (inner instanceof z.ZodNullable) {
      if (value !== null) walk(inner.unwrap() as z.ZodType, value, path);
    } else if (inner instanceof z.ZodUnion) {
      const members = inner.options as z.ZodType[];
      if (
        value !== 'unknown' &&
        inner.safeParse('unknown').success &&
        members.some((m) => m instanceof z.ZodLiteral && m.value === 'unknown')
      )
        places.push(path);
      const fits = members.find((m) => m.safeParse(value).success);
      if (fits) walk(fits, value, path);
    } else if (inner instanceof z.ZodArray) {
      (value as unknown[]).forEach((v, i) => {
        walk(inner.element as z.ZodType, v, `${path}/${i}`);
      });
    } else if (inner instanceof z.ZodObject) {
      for (const [key, field] of Object.entries(inner.shape))
        walk(field as z.ZodType, (value as Record<string, unknown>)[key], `${path}/${key}`);
    }
  };
  walk(jobSchema, job, '');
  return places;
};
