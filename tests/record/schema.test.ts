import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { productJsonSchema } from '../../src/generate/record-schema.ts';
import { product } from './_example.ts';

describe('templates/product.schema.json', () => {
  it('is what the schemas of the record give', () => {
    expect(readFileSync('templates/product.schema.json', 'utf8')).toBe(productJsonSchema());
  });

  it('describes every key, and knows those of the example', () => {
    const schema = JSON.parse(productJsonSchema());
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.additionalProperties).toBe(false);
    for (const key of Object.keys(parse(product))) expect(schema.properties).toHaveProperty([key]);
    const bare: string[] = [];
    const walk = (node: Record<string, unknown>, path: string): void => {
      for (const [key, inner] of Object.entries(
        (node.properties ?? {}) as Record<string, Record<string, unknown>>,
      )) {
        if (inner.description === undefined && inner.$ref === undefined) bare.push(`${path}.${key}`);
        walk(inner, `${path}.${key}`);
      }
    };
    walk(schema, '');
    expect(bare).toEqual([]);
  });
});
