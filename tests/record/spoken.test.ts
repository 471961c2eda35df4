import { readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { productOf } from '../../src/draft/open-product.ts';
import { spokenRecord } from '../../src/record/spoken-record.ts';
import { recordAround } from '../document/sheet/sheet-input.ts';

// No outside source: a record says what it says, in each of its languages.

const env = {
  statFile: (path: string) => {
    const found = statSync(path, { throwIfNoEntry: false });
    return found ? ({ kind: 'file', bytes: found.size } as const) : ({ kind: 'missing' } as const);
  },
  readFile: (path: string) => readFileSync(path),
};

const own = {
  use: 'Cleaner',
  'advised-against': ['Not on marble.', 'Not with bleach.'],
  appearance: { color: 'blue' },
  sds: { stability: 'Stable.', spill: 'Use sand.' },
  formula: [
    { name: 'citric acid', cas: '77-92-9', percent: 3 },
    { name: 'water', amount: 'balance' },
  ],
};

function read(more: Record<string, unknown>) {
  const product = productOf(recordAround({ ...own, ...more }), env);
  if (!product.ok) throw new Error(JSON.stringify(product.diagnostics));
  return product.value.record;
}

describe('a record in Spanish', () => {
  it('takes what it gives, and names what it leaves', () => {
    const es = {
      use: 'Limpiador',
      'advised-against': ['No usar sobre mármol.'],
      sds: { stability: 'Estable.' },
      ingredients: { '77-92-9': 'ácido cítrico' },
    };
    const { record, untranslated } = spokenRecord(read({ translations: { es } }), 'es');
    expect(record.use).toBe('Limpiador');
    expect(record.sheet).toMatchObject({ stability: 'Estable.', spill: 'Use sand.' });
    expect(record.spokenNames).toEqual({ '77-92-9': 'ácido cítrico' });
    // One text for two would drop one.
    expect(record.advisedAgainst).toEqual(own['advised-against']);
    expect(untranslated.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['advised-against', 'appearance.color', 'sds.spill']),
    );
    expect(untranslated.map(({ text }) => text)).not.toContain('Stable.');
  });

  it('stays as it is where Spanish is its own language', () => {
    const record = read({ language: 'es' });
    expect(spokenRecord(record, 'es')).toEqual({ record, untranslated: [] });
    expect(spokenRecord(record, 'en').untranslated).not.toEqual([]);
  });

  it('refuses a language that no document has', () => {
    expect(() => read({ translations: { fr: { use: 'Nettoyant' } } })).toThrow(/translations/u);
  });

  it.each([
    [{ 'advised-against': ['a', 'b', 'c'] }, 'advised-against', 2, 'has 2 texts in the record, and here 3'],
    [{ copy: { tagline: 'x' } }, 'copy', null, 'the record has no `copy`'],
    [{ sds: { spill: 'x', handling: 'y' } }, 'sds.handling', null, 'the record has no `sds.handling`'],
    [{ appearance: { odor: 'x' } }, 'appearance.odor', null, 'the record has no `appearance.odor`'],
  ])('refuses a translation of what it does not say: %o', (es, key, at, message) => {
    const opened = productOf(recordAround({ ...own, translations: { es } }), env);
    const path = `translations.es.${key}${at === null ? '' : `[${at}]`}`;
    expect(opened.diagnostics).toMatchObject([{ severity: 'error', path }]);
    expect(opened.diagnostics[0]!.message).toContain(message);
  });
});
