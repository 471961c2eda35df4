import { describe, expect, it } from 'vitest';
import { transportData } from '../../src/draft/draft-transport.ts';
import { Exact } from '../../src/quantity/exact.ts';
import type { FlashPoint } from '../../src/record/product-record.ts';
import type { TableEntry } from '../../src/reference/transport/table-entry.ts';
import { hazardLabels } from '../../src/transport/hazard-labels.ts';
import { hazardLabelLines, labelNames } from '../../src/words/en/hazard-labels.ts';
import { type Material, ship } from './_ship.ts';

const data = transportData();
const noPack = { flashPoint: null, pack: null, form: 'liquid' as const };

/** Labels of an entry carried beyond limited quantities. */
function ofEntry(entry: TableEntry, subsidiary = entry.subsidiary, flashPoint: FlashPoint | null = null) {
  const outcome = {
    answer: 'regulated' as const,
    entry,
    name: entry.names[0]!,
    technical: [],
    class: entry.hazardClass,
    subsidiary,
    packingGroup: entry.packingGroup,
    because: [],
  };
  return hazardLabels(outcome, null, { ...noPack, flashPoint }, data);
}
const entry = (id: string, group: string | null = null): TableEntry =>
  data.table.byId(id).find(each => group === null || each.packingGroup === group)!;

// The table of 49 CFR 172.400(b), row by row, each with an entry of 172.101 that has the class alone in Column 6.
// Class 7 is left out: its labels go by activity.
describe('the table of 172.400(b)', () => {
  it.each([
    ['1.1', 'UN0160', 'EXPLOSIVES 1.1', '172.411'],
    ['1.2', 'UN0281', 'EXPLOSIVES 1.2', '172.411'],
    ['1.3', 'UN0161', 'EXPLOSIVES 1.3', '172.411'],
    ['1.4', 'UN0336', 'EXPLOSIVES 1.4', '172.411'],
    ['1.5', 'UN0331', 'EXPLOSIVES 1.5', '172.411'],
    ['1.6', 'UN0486', 'EXPLOSIVES 1.6', '172.411'],
    ['2.1', 'UN1978', 'FLAMMABLE GAS', '172.417'],
    ['2.2', 'UN1066', 'NON-FLAMMABLE GAS', '172.415'],
    ['2.3', 'UN1062', 'POISON GAS', '172.416'],
    ['3', 'UN1170', 'FLAMMABLE LIQUID', '172.419'],
    ['4.1', 'UN1350', 'FLAMMABLE SOLID', '172.420'],
    ['4.2', 'UN1361', 'SPONTANEOUSLY COMBUSTIBLE', '172.422'],
    ['4.3', 'UN1402', 'DANGEROUS WHEN WET', '172.423'],
    ['5.1', 'UN1942', 'OXIDIZER', '172.426'],
    ['5.2', 'UN3105', 'ORGANIC PEROXIDE', '172.427'],
    ['6.1', 'UN1547', 'POISON', '172.430'],
    ['6.2', 'UN2814', 'INFECTIOUS SUBSTANCE', '172.432'],
    ['8', 'UN1791', 'CORROSIVE', '172.442'],
    ['9', 'UN3082', 'CLASS 9', '172.446'],
  ])('%s, %s: %s', (division, id, name, design) => {
    const found = ofEntry(entry(id))!;
    expect(found.status).toBe('due');
    expect(entry(id).hazardClass).toMatch(new RegExp(`^${division.replace('.', '\\.')}`));
    expect(found.labels[0]).toMatchObject({ name, hazard: 'primary' });
    expect(found.labels[0]!.cite).toBe(`49 CFR 172.400(b), ${design}`);
  });

  // Materials poisonous by inhalation (171.8): UN1092, special provision 1, Column 6 "6.1, 3".
  it('6.1 by inhalation: POISON INHALATION HAZARD', () => {
    const found = ofEntry(entry('UN1092'))!;
    expect(found.labels.map(({ name }) => name)).toEqual(['POISON INHALATION HAZARD', 'FLAMMABLE LIQUID']);
    expect(found.labels[0]!.cite).toContain('172.429');
  });

  it('combustible liquid: none', () => {
    const combustible = data.table.byId('NA1993').find(each => each.hazardClass === 'Comb liq')!;
    expect(ofEntry(combustible)).toMatchObject({ status: 'none', labels: [] });
  });

  // Column 6 of UN1941 prints None.
  it('Column 6 of None: none', () => {
    expect(ofEntry(entry('UN1941'))).toMatchObject({ status: 'none', labels: [] });
  });

  it('gives each entry of the table a name, but labels of radioactive materials and of explosive peroxides', () => {
    const nameless = data.table.entries
      .filter(({ id, hazardClass }) => id !== '' && /^[1-689]/.test(hazardClass))
      .flatMap(each => ofEntry(each)?.labels.filter(({ name }) => name === null) ?? [])
      .map(label => label.class);
    expect([...new Set(nameless)].sort()).toEqual(['1', '7']);
  });
});

// 172.402(a)(2): its table asks for a label of every subsidiary hazard of 3, 4.1, 4.2, 4.3, 5.1, 6.1 and 8; Class 3 in
// packing group III not by highway and rail from a flash point of 38 °C.
describe('subsidiary labels', () => {
  const acid = entry('UN3264', 'III');
  const at = (celsius: number, cup: 'closed' | 'open' | null = 'closed'): FlashPoint => ({
    kind: 'temperature',
    celsius: Exact.decimal(celsius),
    cup,
  });

  it.each(['4.1', '4.2', '4.3', '5.1', '6.1'])('of %s', division => {
    const found = ofEntry(acid, [division])!;
    expect(found.labels.map(({ class: each, hazard }) => [each, hazard])).toEqual([
      ['8', 'primary'],
      [division, 'subsidiary'],
    ]);
    expect(found.labels[1]!.cite).toMatch(/^49 CFR 172\.402\(a\)/);
  });

  it.each([
    [37.9, 'closed', true],
    [38, 'closed', false],
    [38.1, 'closed', false],
    // An open cup says nothing of the limit.
    [45, 'open', true],
  ] as const)('of Class 3 at %d °C, %s cup: %s', (celsius, cup, due) => {
    const found = ofEntry(acid, ['3'], at(celsius, cup))!;
    expect(found.labels.some(label => label.class === '3')).toBe(due);
    expect(found.leftOff.map(({ why }) => why)).toEqual(due ? [] : ['flash-point']);
  });

  // UN2734, Column 6 "8, 3": the column asks for it at any flash point (172.402(a)(1)).
  it('of Class 3 in Column 6 at any flash point', () => {
    const found = ofEntry(entry('UN2734', 'II'), ['3'], at(50))!;
    expect(labelNames(found)).toBe('CORROSIVE and FLAMMABLE LIQUID');
  });

  it('of Division 4.1 not beside 4.2 (172.400a(c))', () => {
    expect(ofEntry(entry('UN1361'), ['4.1'])!.leftOff).toMatchObject([{ class: '4.1', why: 'beside-4.2' }]);
  });

  it('POISON on a corrosive may fall away (172.400a(c))', () => {
    expect(ofEntry(entry('UN2922', 'II'))!.toxicByCorrosion).toBe('49 CFR 172.400a(c)');
    expect(ofEntry(entry('UN1791'))!.toxicByCorrosion).toBeNull();
  });
});

describe('labels of a pack', () => {
  const acid: Material = {
    flash: 'none',
    boil: 100,
    density: 1.3,
    formula: [{ name: 'phosphoric acid', cas: '7664-38-2', percent: 50 }],
    tests: [{ class: 'Skin Corr.', result: 'Skin Corr. 1C' }],
  };

  // 173.154(b)(2): Class 8, packing group III, inner packagings up to 5 L, package up to 30 kg: no labels
  // (172.400a(b)); 172.400(a)(2): bulk packagings (over 450 L, 171.8) unless placarded.
  it.each([
    ['5 L', 4, 'excepted', false],
    ['5.1 L', 4, 'due', false],
    ['450 L', 1, 'due', false],
    ['451 L', 1, 'due', true],
  ])('of %s: %s', async (contents, count, status, placarded) => {
    const { hazardLabels: found } = await ship({ ...acid, contents, count });
    expect(found?.status).toBe(status);
    expect(found?.unlessPlacarded !== null).toBe(placarded);
    expect(hazardLabelLines(found!).join('\n')).toContain('CORROSIVE');
  });

  it('of a product that is not regulated: none named', async () => {
    const { hazardLabels: found } = await ship({
      flash: 'none',
      boil: 100,
      pH: 7,
      formula: [{ name: 'citric acid', cas: '77-92-9', percent: 0.1 }],
    });
    expect(found).toBeNull();
  });
});
