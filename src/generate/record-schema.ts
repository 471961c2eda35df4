import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod/mini';
import { productSchema } from '../record/product-schema.ts';

/** The JSON Schema (2020-12) of a product record, for editors. */
export function productJsonSchema(): string {
  const schema = z.toJSONSchema(productSchema, {
    io: 'input',
    target: 'draft-2020-12',
    // What several keys share stands once.
    reused: 'ref',
    // Leaves are read by a function; what they are written as stands in their metadata.
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      // Examples of schemas that convert are left out by default, as if they were of the converted type.
      const examples = z.globalRegistry.get(zodSchema)?.examples;
      if (Array.isArray(examples)) jsonSchema.examples = examples.map(asWritten);
      // A function could make something of a key that is absent; ours find it missing.
      const { def } = zodSchema._zod;
      if (def.type !== 'object') return;
      const required = Object.entries(def.shape).filter(([, value]) => value._zod.def.type !== 'optional');
      if (required.length > 0) jsonSchema.required = required.map(([key]) => key);
    },
  });
  const { $schema, ...rest } = schema;
  return `${JSON.stringify({ $schema, title: 'labelwright product record', ...rest }, null, 2)}\n`;
}

// An example that is a plain number is shown as one.
const asWritten = (example: string): string | number =>
  /^(0|[1-9]\d*)(\.\d+)?$/.test(example) ? Number(example) : example;

/** Writes `templates/product.schema.json` below the project folder. */
export function generateRecordSchema(root: string): void {
  writeFileSync(join(root, 'templates', 'product.schema.json'), productJsonSchema());
}
