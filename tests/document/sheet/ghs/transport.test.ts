import { describe, expect, it } from 'vitest';
import { type SheetInput, sheetJson } from '../../../../src/document/sheet.ts';
import { inputAround, sheetInput } from '../sheet-input.ts';

const section = (input: SheetInput) => {
  const { items } = sheetJson(input).sections[13]!;
  return (key: string) => items.find(item => item.key === key)!;
};
const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const four = ['un-number', 'shipping-name', 'transport-class', 'packing-group'];

// ADR 2017, 5.4.1.1.1, puts the same four first: number, name, label model numbers, packing group. UN1791 stands in
// 49 CFR 172.101 without the letter D (172.101(b)(3)), so it is an entry of the UN Model Regulations.
describe.each(['eu-clp', 'un-ghs'] as const)('section 14 of %s', basis => {
  it('has what the entry shares, with its source, and leaves the rest open', async () => {
    const of = section(await sheetInput('templates/demo/patio-cleaner.yaml', {}, basis));
    expect(four.map(key => of(key).state)).toEqual(four.map(() => 'filled'));
    expect(of('un-number').text).toContain('UN1791');
    expect(of('un-number').notes?.join(' ')).toMatch(/United States.*were not read.*shipper checks/);
    expect(['environmental-hazards', 'special-precautions'].map(key => of(key).state)).toEqual([
      'open',
      'open',
    ]);
  });

  it('takes the words of the record alone where it has any', async () => {
    const input = await sheetInput('templates/demo/patio-cleaner.yaml', {}, basis);
    const own = {
      ...input,
      record: { ...input.record, sheet: { 'adr.un-number': 'UN 3266' } },
    } as SheetInput;
    const of = section(own);
    expect(of('un-number').text).toBe('UN 3266');
    expect(of('un-number').source).toBe('product record');
    expect(four.slice(1).map(key => of(key).state)).toEqual(['open', 'open', 'open']);
  });

  // A product outside the rules of the United States is not said to be outside those of ADR.
  it('says nothing of a product that the United States do not regulate', async () => {
    const input = await inputAround(
      {
        properties: { pH: 7, 'flash-point': 'none', density: '1 g/mL', 'initial-boiling-point': '100 C' },
        formula: [{ name: 'citric acid', cas: '77-92-9', percent: 0.1 }, water],
      },
      {},
      basis,
    );
    const of = section(input);
    expect(input.transport.map(({ answer }) => answer.answer)).not.toContain('regulated');
    expect(four.map(key => of(key).state)).toEqual(four.map(() => 'open'));
  });
});
