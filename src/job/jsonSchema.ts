import { z } from 'zod';
import { jobSchema } from './schema';

/** The job file's JSON Schema as text; `docs/schema/job.schema.json` is this, written by `npm run generate`. */
export const jobSchemaText = (): string => {
  const schema = z.toJSONSchema(jobSchema, {
    target: 'draft-2020-12',
    override: ({ jsonSchema }) => {
      delete jsonSchema.readOnly; // says how the program holds it, not what a file may contain
      if (!jsonSchema.prefixItems) return;
      jsonSchema.items = false;
      jsonSchema.minItems = jsonSchema.prefixItems.length;
    },
  });
  return `${JSON.stringify({ title: 'Backboard job file, schema 1', ...schema }, null, 2)}\n`;
};
