import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { sheetJson } from '../../../src/document/sheet.ts';
import { sheetJsonSchema } from '../../../src/generate/sheet-schema.ts';
import { es } from '../../../src/words/es/index.ts';
import { inputAround, sheetInput } from './sheet-input.ts';
import { tenProducts } from './ten-products.ts';

// ajv stands for a reader that knows the published schema alone.
const validate = new Ajv2020({ allErrors: true }).compile(JSON.parse(sheetJsonSchema()));
const faultsOf = (sheet: unknown) => (validate(JSON.parse(JSON.stringify(sheet))) ? [] : validate.errors);

describe('templates/sheet.schema.json', () => {
  it('is current', () => {
    expect(readFileSync('templates/sheet.schema.json', 'utf8')).toBe(sheetJsonSchema());
  });

  it.each(['patio-cleaner', 'degreaser', 'descaler'])('holds the sheet of %s', async name => {
    expect(faultsOf(sheetJson(await sheetInput(`templates/demo/${name}.yaml`)))).toEqual([]);
  });

  // A sheet of the European Union and one of the GHS have other sections, which the basis of the sheet decides.
  it.each(
    ['patio-cleaner', 'degreaser', 'descaler'].flatMap(name =>
      (['eu-clp', 'un-ghs'] as const).map(basis => [name, basis] as const),
    ),
  )('holds the sheet of %s under %s, and refuses it under another basis', async (name, basis) => {
    const sheet = sheetJson(await sheetInput(`templates/demo/${name}.yaml`, {}, basis));
    expect(faultsOf(sheet)).toEqual([]);
    expect(faultsOf({ ...sheet, basis: { ...sheet.basis, id: 'us-hcs' } })).not.toEqual([]);
  });

  it.each(Object.keys(tenProducts))('holds the sheet of %s', async name => {
    const sheet = sheetJson(await inputAround(tenProducts[name]!));
    expect(faultsOf(sheet)).toEqual([]);
    // What is printed with its code stands with the code apart too.
    const printed = JSON.stringify(sheet.sections[1]);
    for (const { code, text } of [...sheet.label.hazardStatements, ...sheet.label.precautionaryStatements]) {
      expect(printed).toContain(code);
      expect(printed).toContain(JSON.stringify(text).slice(1, -1));
    }
    expect(sheet.ingredients.map(each => each.name)).toEqual(
      (sheet.sections[2]!.items[0]!.table ?? []).map(row => row['Chemical name']),
    );
  });

  it.each(['us-hcs', 'eu-clp', 'un-ghs'] as const)('holds a sheet in Spanish, %s', async basis => {
    const sheet = sheetJson({ ...(await inputAround(tenProducts.bleach!, {}, basis)), words: es });
    expect(sheet.language).toBe('es');
    expect(faultsOf(sheet)).toEqual([]);
  });

  it('refuses a key that it does not know, a state that is none and a number as text', async () => {
    const sheet = sheetJson(await inputAround(tenProducts.bleach!));
    expect(faultsOf({ ...sheet, extra: 1 })).not.toEqual([]);
    const [first, ...others] = sheet.sections;
    const items = first!.items.map(each => ({ ...each, state: 'none' }));
    expect(faultsOf({ ...sheet, sections: [{ ...first!, items }, ...others] })).not.toEqual([]);
    const ingredients = sheet.ingredients.map(each => ({ ...each, percent: '6' }));
    expect(faultsOf({ ...sheet, ingredients })).not.toEqual([]);
  });
});
