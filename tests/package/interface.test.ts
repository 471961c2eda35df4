import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exportedBy, namedIn } from '../../src/generate/_declarations.ts';
import { publicTypes, publicTypesText } from '../../src/generate/public-types.ts';

const types = 'out/dist/types';
const byHand = exportedBy(`${types}/index.d.ts`);
const generated = exportedBy(`${types}/public-types.d.ts`);

describe('the public interface', () => {
  it('exports functions and types, headroom among them', () => {
    for (const name of ['classify', 'openProduct', 'headroom', 'Headroom', 'ProductRecord', 'Diagnostic'])
      expect(byHand.has(name)).toBe(true);
  });

  it('exports every type that its exports name', () => {
    const hidden = [...byHand.values(), ...generated.values()]
      .filter(({ file }) => !file.endsWith('/fraction.d.ts'))
      .flatMap(each =>
        namedIn(each)
          .filter(({ name }) => !byHand.has(name) && !generated.has(name))
          .map(({ file, name }) => `${each.name} names ${name} of ${file}`),
      );
    expect(hidden).toEqual([]);
  });

  it('has a list of types that is current', () => {
    expect(readFileSync('src/public-types.ts', 'utf8')).toBe(publicTypesText(publicTypes('.')));
  });

  it('is read by this test: a type that is named is found', () => {
    expect(namedIn(byHand.get('ProductRecord')!).map(({ name }) => name)).toContain('Pack');
  });
});
