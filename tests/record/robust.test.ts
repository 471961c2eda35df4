import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { noFiles } from '../../src/record/files.ts';
import { parseRecordText, parseRecordValue } from '../../src/record/load.ts';
import type { Outcome } from '../../src/report/diagnostic.ts';
import { renderText } from '../../src/report/render.ts';
import { pieces } from '../support/pieces.ts';
import { env, product } from './_example.ts';

// An outcome is a value, or at least one error that can be shown.
const sound = (outcome: Outcome<unknown>): void => {
  const errors = outcome.diagnostics.filter(({ severity }) => severity === 'error');
  expect(outcome.ok).toBe(errors.length === 0);
  for (const { message, code } of outcome.diagnostics) {
    expect(message).not.toMatch(/undefined|\[object|Invalid input|expected/);
    expect(code).toMatch(/^[a-z0-9-]+$/);
  }
  expect(renderText(outcome.diagnostics)).not.toContain('undefined');
};

describe('reading never throws', () => {
  it('on any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), text =>
        sound(parseRecordText(text, 'f.yaml', noFiles)),
      ),
    );
  });

  it('on the example with pieces cut out, doubled or replaced', () => {
    const cut = fc.tuple(fc.nat(product.length), fc.nat(12), fc.constantFrom(...pieces));
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), cuts => {
        let text = product;
        for (const [at, length, piece] of cuts) text = text.slice(0, at) + piece + text.slice(at + length);
        sound(parseRecordText(text, 'cleaner.yaml', env()));
      }),
      { numRuns: 150 },
    );
  });

  it('on any JSON value, also in place of any part of the example', () => {
    fc.assert(fc.property(fc.jsonValue(), value => sound(parseRecordValue(value, noFiles))));
    const keys = Object.keys(parse(product));
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.jsonValue(), (key, value) => {
        sound(parseRecordValue({ ...parse(product), [key]: value }, env(), 'cleaner.yaml'));
      }),
    );
    fc.assert(
      fc.property(
        fc.nat(5),
        fc.constantFrom('name', 'cas', 'use', 'percent', 'amount', 'hazards', 'ate', 'unknown'),
        fc.jsonValue(),
        (line, key, value) => {
          const record = parse(product);
          record.formula[line][key] = value;
          sound(parseRecordValue(record, env(), 'cleaner.yaml'));
        },
      ),
    );
  });

  it('on keys that every object has', () => {
    const record = JSON.parse(
      JSON.stringify(parse(product)).replace('"code"', '"__proto__":{"name":"x"},"constructor":1,"code"'),
    );
    const outcome = parseRecordValue(record, env(), 'cleaner.yaml');
    expect(outcome.diagnostics.map(({ code }) => code)).toEqual(['unknown-key', 'unknown-key']);
    const text = `__proto__: {name: x}\nconstructor: 1\n${product}`;
    expect(parseRecordText(text, 'cleaner.yaml', env()).ok).toBe(false);
    expect(({} as { name?: string }).name).toBeUndefined();
  });
});
