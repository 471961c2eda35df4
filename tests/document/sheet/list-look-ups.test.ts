import { describe, expect, it } from 'vitest';
import { sheetJson } from '../../../src/document/sheet.ts';
import { inputAround } from './sheet-input.ts';

type Line = {
  name: string;
  cas?: string;
  percent: number;
  hazards?: string[];
  source?: string;
  'trade-secret'?: 'percent';
};
type Item = {
  heading: string;
  text?: string;
  list?: string[];
  groups?: { title: string; list: string[] }[];
  notes?: string[];
  table?: Record<string, string>[];
};

const WATER: Omit<Line, 'percent'> = { name: 'water', cas: '7732-18-5' };

/** The items of a sheet for ingredients and water up to 100 %. */
async function sheetOf(lines: Line[], more: Record<string, unknown> = {}) {
  const rest = 100 - lines.reduce((sum, { percent }) => sum + percent, 0);
  const formula = rest > 0 ? [{ ...WATER, percent: rest }, ...lines] : lines;
  const input = await inputAround({ formula, ...more });
  const { sections } = sheetJson(input) as unknown as {
    sections: { number: number; items: Item[] }[];
  };
  return (section: number, heading: string): Item =>
    sections.find(({ number }) => number === section)!.items.find(item => item.heading === heading)!;
}

/** Lines of the lists of an item, each with the title of its list before it. */
const linesOf = ({ groups }: Item): string[] =>
  groups!.flatMap(({ title, list }) => list.map(line => `${title}: ${line}`));

const INGREDIENTS = 'Chemical name, CAS number or other unique identifier, and concentration';
const PEL = 'OSHA permissible exposure limit (PEL)';
const LISTS = 'Listed carcinogens: NTP, IARC, OSHA';
const REGULATIONS = 'Safety, health and environmental regulations specific for the product';

/** An ingredient that section 3 lists, whatever the harmonised list says of it. */
const irritant = (name: string, cas: string | undefined, percent = 20): Line => ({
  name,
  ...(cas ? { cas } : {}),
  percent,
  hazards: ['Skin Irrit. 2; H315'],
  source: 'test',
});

describe('section 8', () => {
  // 29 CFR 1910.1000 Table Z-1; 1910.1025(c) and 1910.1026(c): 50 and 5 micrograms per cubic meter.
  it.each([
    ['ammonium bifluoride', '1341-49-7', 'Fluorides (as F)', '2.5 mg/m³'],
    ['copper sulfate', '7758-98-7', 'Copper, dusts and mists (as Cu)', '1 mg/m³'],
    ['m-xylene', '108-38-3', 'Xylenes (o-, m-, p-isomers)', '100 ppm; 435 mg/m³'],
    ['ammonium hydroxide', '1336-21-6', 'Ammonia', '50 ppm; 35 mg/m³'],
    ['nickel sulphate', '7786-81-4', 'Nickel, soluble compounds (as Ni)', '1 mg/m³'],
    ['m-cresol', '108-39-4', 'Cresol, all isomers', '5 ppm; 22 mg/m³ (skin)'],
    ['chromium trioxide', '1333-82-0', 'Chromium (VI) compounds (as Cr)', '0.005 mg/m³'],
    ['lead acetate', '301-04-2', 'Lead (as Pb)', '0.05 mg/m³'],
    ['silver nitrate', '7761-88-8', 'Silver, metal and soluble compounds (as Ag)', '0.01 mg/m³'],
    ['white mineral oil', '8042-47-5', 'Oil mist, mineral', '5 mg/m³'],
  ])('gives the limit of the group for %s', async (name, cas, entry, twa) => {
    for (const number of [cas, undefined]) {
      const item = (await sheetOf([irritant(name, number)]))(8, PEL);
      const row = item.table!.find(({ Ingredient }) => Ingredient === `${name} [${entry}]`);
      expect(row?.['8-hour TWA'], `${name} ${number}`).toBe(twa);
      expect(JSON.stringify(item)).not.toMatch(/None (?:established|found)/u);
    }
  });

  it('gives the dust limit for a powder, and no dust limit for a liquid', async () => {
    const lines = [irritant('sodium carbonate', '497-19-8', 60), irritant('citric acid', '77-92-9', 40)];
    const powder = (await sheetOf(lines, { form: 'solid' }))(8, PEL).table!;
    // Table Z-1, PNOR: total dust 15 mg/m3, respirable fraction 5 mg/m3.
    expect(powder.map(row => row['8-hour TWA'])).toEqual(['15 mg/m³', '5 mg/m³', '15 mg/m³', '5 mg/m³']);
    const [row] = (await sheetOf([irritant('citric acid', '77-92-9')]))(8, PEL).table!;
    expect(row!['8-hour TWA']).toMatch(/^None found in Tables Z-1, Z-2, Z-3/u);
    expect(row!['Table or section']).toBe('looked up: CAS 77-92-9, name, groups');
  });

  it('shows an ingredient that a table names, and section 3 says why it is there', async () => {
    // Table Z-1: dipropylene glycol methyl ether 100 ppm, 600 mg/m3, skin.
    const ether = {
      name: 'dipropylene glycol methyl ether',
      cas: '34590-94-8',
      percent: 5,
      hazards: [],
      source: 'test',
    };
    const glycol = { name: 'propylene glycol', cas: '57-55-6', percent: 5, hazards: [], source: 'test' };
    const itemOf = await sheetOf([ether, glycol, irritant('d-limonene', '5989-27-5')]);
    const rows = itemOf(8, PEL).table!;
    expect(rows.find(({ Ingredient }) => Ingredient!.startsWith('dipropylene'))).toMatchObject({
      Ingredient: 'dipropylene glycol methyl ether',
      '8-hour TWA': '100 ppm; 600 mg/m³ (skin)',
    });
    expect(rows).toHaveLength(2);
    // Table D.1, 8 (a): limits are for the ingredients listed in section 3.
    const listed = itemOf(3, INGREDIENTS).table!;
    expect(listed.map(row => row['Chemical name'])).toEqual(rows.map(({ Ingredient }) => Ingredient));
    expect(Object.values(listed.find(row => row['CAS number'] === '34590-94-8')!)[3]).toBe(
      'Not classified in its data; named for its exposure limit (section 8)',
    );
  });

  it('adds the formula for mixtures where two limits are averages (1910.1000(d)(2))', async () => {
    const one = [irritant('acetone', '67-64-1')];
    const two = [...one, irritant('toluene', '108-88-3')];
    expect((await sheetOf(two))(8, PEL).notes!.join()).toContain('1910.1000(d)(2)');
    expect((await sheetOf(one))(8, PEL).notes!.join()).not.toContain('1910.1000(d)(2)');
  });
});

describe('section 11', () => {
  // Lists of IARC and NTP: see the entries without a CAS number.
  it.each([
    ['sulfuric acid', '7664-93-9', 'Acid mists, strong inorganic', /^Group 1 /u, 'Not listed'],
    [
      'chromium trioxide',
      '1333-82-0',
      'Chromium (VI) compounds',
      /^Group 1 /u,
      'Regulated: 29 CFR 1910.1026',
    ],
    ['nickel sulphate', '7786-81-4', 'Nickel compounds', /^Group 1 /u, 'Not listed'],
    ['lead acetate', '301-04-2', 'Lead compounds, inorganic', /^Group 2A /u, 'Not listed'],
  ])('names the group listing of %s', async (name, cas, entry, iarc, osha) => {
    const rows = (await sheetOf([irritant(name, cas)]))(11, LISTS).table!;
    const row = rows.find(({ Ingredient }) => Ingredient!.includes(`listed as: ${entry}`))!;
    expect(row.IARC).toMatch(iarc);
    expect(row.OSHA).toBe(osha);
  });

  it('does not list ethanol for its drinks, and says why', async () => {
    const item = (await sheetOf([{ name: 'ethanol', cas: '64-17-5', percent: 62 }]))(11, LISTS);
    expect(item.table).toBeUndefined();
    expect(item.text).toContain('1 ingredient looked up by CAS number, by name and by group');
    expect(item.notes![0]).toBe(
      'The entry "Ethanol in alcoholic beverages" does not concern ethanol: it is for drinks, not for a chemical product.',
    );
  });
});

describe('section 15', () => {
  it('tells the pounds of product that reach a reportable quantity (40 CFR 302.4: methanol 5,000 lb)', async () => {
    // 5,000 / 0.34 = 14,705.9
    const item = (await sheetOf([{ name: 'methanol', cas: '67-56-1', percent: 34 }]))(15, REGULATIONS);
    const list = linesOf(item);
    expect(list.join('\n')).toContain('reportable quantity 5,000 lb; about 14,706 lb of this product');
    expect(list.join('\n')).toContain('subject to the reporting requirements of section 313');
  });

  it('gives no formula away where concentrations are withheld', async () => {
    // 29 CFR 1910.1200(i)(1)(iv): the narrowest range that holds 34 % is 15 % to 40 %; 5,000 / 0.4 = 12,500
    const methanol: Line = { name: 'methanol', cas: '67-56-1', percent: 34, 'trade-secret': 'percent' };
    const text = JSON.stringify((await sheetOf([methanol]))(15, REGULATIONS));
    expect(text).not.toMatch(/\b34 %|14,706/u);
    expect(text).toContain('12,500 lb');
  });

  it('says what was looked up where nothing is found, and what was not looked up', async () => {
    const item = (await sheetOf([irritant('d-limonene', '5989-27-5')]))(15, REGULATIONS);
    const list = linesOf(item);
    for (const title of ['CERCLA section 103', 'EPCRA section 313', 'California Proposition 65'])
      expect(list.find(line => line.startsWith(title))).toMatch(
        /None found\. Looked up by .*: 1 ingredient in /u,
      );
    for (const programme of ['EPCRA section 302', 'Clean Air Act section 112(r)', 'TSCA Inventory'])
      expect(list.some(line => line.startsWith(`Not yet looked up: ${programme}`))).toBe(true);
  });

  it('names the hazard types of 40 CFR 370.66 from the classification', async () => {
    const item = (await sheetOf([irritant('d-limonene', '5989-27-5')]))(15, REGULATIONS);
    const list = linesOf(item);
    expect(list.find(line => line.includes('Health: '))).toContain('skin corrosion or irritation');
  });
});
