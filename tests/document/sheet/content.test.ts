import { beforeAll, describe, expect, it } from 'vitest';
import type { SheetJson } from '../../../src/document/sheet/json.ts';
import { type SheetInput, sheetDocument, sheetHtml, sheetJson } from '../../../src/document/sheet.ts';
import type { Template } from '../../../src/document/template.ts';
import law from './appendix-d.json' with { type: 'json' };
import { inputAround, sheetInput, sheetTemplate } from './sheet-input.ts';

const RECORDS = ['patio-cleaner', 'degreaser', 'descaler'] as const;
const inputs = new Map<string, SheetInput>();
let template: Template;

beforeAll(async () => {
  template = await sheetTemplate();
  for (const name of RECORDS) inputs.set(name, await sheetInput(`templates/demo/${name}.yaml`));
});

const item = (sheet: SheetJson, section: number, heading: string) => {
  const found = sheet.sections[section - 1]!.items.find(each => each.heading === heading);
  if (!found) throw new Error(`section ${section} has no ${heading}`);
  return found;
};

describe.each(RECORDS)('the sheet of %s', name => {
  it('has the headings of 29 CFR 1910.1200(g)(2) in order', () => {
    const { sections } = sheetJson(inputs.get(name)!);
    expect(sections.map(({ title }) => title)).toEqual(law.sections.map(([heading]) => heading));
    expect(sections.map(({ number }) => number)).toEqual([...Array(16).keys()].map(at => at + 1));
  });

  it('has every subheading of Table D.1 in its section', () => {
    const { sections } = sheetJson(inputs.get(name)!);
    for (const [at, [heading, words]] of law.sections.entries()) {
      const headings = sections[at]!.items.map(each => each.heading.toLowerCase()).join('\n');
      for (const word of words!) expect(headings, `${heading}`).toContain(word.toLowerCase());
    }
  });

  // 1910.1200(g)(3): a subheading without information is marked so, never left blank.
  it('leaves nothing blank', () => {
    for (const { items } of sheetJson(inputs.get(name)!).sections) {
      for (const { heading, text, list, groups, table } of items) {
        const grouped = (groups ?? []).flatMap(group => group.list);
        const texts = [
          text ?? '',
          ...(list ?? []),
          ...grouped,
          ...(table ?? []).flatMap(row => Object.values(row)),
        ];
        expect(texts.join('').trim(), heading).not.toBe('');
        for (const cell of texts.slice(text === undefined ? 1 : 0)) expect(cell.trim(), heading).not.toBe('');
      }
    }
  });

  it('prints no trace of missing values and no verdict', () => {
    const html = sheetHtml(sheetDocument(inputs.get(name)!, template));
    expect(html).not.toMatch(/undefined|\bnull\b|\[object|NaN|\{[a-z]+\}/u);
    expect(html).not.toMatch(/compliant|approved/iu);
  });
});

describe('what the record and the calculation know', () => {
  it('gives the properties with method and source, and both temperature scales', () => {
    const sheet = sheetJson(inputs.get('degreaser')!);
    // 47 C = 116.6 F
    expect(item(sheet, 9, 'Flash point').text).toMatch(/^47 °C \(117 °F\), closed cup; method: ASTM D93/u);
    expect(item(sheet, 9, 'pH')).toMatchObject({ state: 'open', source: 'none' });
  });

  it('repeats response statements under the route that they speak of', () => {
    const sheet = sheetJson(inputs.get('degreaser')!);
    const swallowed = item(sheet, 4, 'Ingestion').list!;
    expect(swallowed).toContain(
      'If swallowed: Immediately call a poison center or doctor. Do NOT induce vomiting.',
    );
    expect(item(sheet, 4, 'Eye contact').list!.some(text => text.startsWith('If in eyes: Rinse'))).toBe(true);
    expect(item(sheet, 5, 'Suitable extinguishing media').list!.join()).toMatch(/^In case of fire: Use/u);
  });

  it('names the ingredients at or above their cut-offs and sums up the others', () => {
    const listed = item(
      sheetJson(inputs.get('patio-cleaner')!),
      3,
      'Chemical name, CAS number or other unique identifier, and concentration',
    );
    const names = listed.table!.map(row => row['Chemical name']);
    expect(names).toContain('sodium hydroxide');
    expect(names).not.toContain('water');
    expect(listed.notes![0]).toMatch(/% in total, including water\.$/u);
    const uncoded = listed.table!.find(row => row['CAS number']!.startsWith('Not available'));
    expect(uncoded!['Chemical name']).toContain('amine oxide');
  });

  it('states every acute toxicity estimate of the calculation', () => {
    const input = inputs.get('patio-cleaner')!;
    const table = item(
      sheetJson(input),
      11,
      'Numerical measures of toxicity (such as acute toxicity estimates)',
    ).table!;
    const oral = table.find(row => row.Route === 'Oral')!;
    const value = Number(/^([\d.]+) mg\/kg/u.exec(Object.values(oral)[1]!)![1]);
    expect(value).toBeCloseTo(Number(input.classification.ateMix.oral!.toPrecision(3)), 6);
    const routes = table.flatMap(row => row.Route!.split('; '));
    expect(routes).toEqual([
      'Oral',
      'Dermal',
      'Inhalation, gas',
      'Inhalation, vapor',
      'Inhalation, dust or mist',
    ]);
  });

  it('gives the unknown acute toxicity in percent', () => {
    const text = item(
      sheetJson(inputs.get('patio-cleaner')!),
      2,
      'Ingredient(s) of unknown acute toxicity',
    ).text;
    expect(text).toMatch(/3\s?% of the mixture consists of ingredient\(s\) of unknown acute/u);
  });
});

describe('limits and lists of the ingredients', () => {
  const solvents = () =>
    inputAround({
      properties: {
        density: '0.9 g/mL',
        'flash-point': '10 C (closed cup)',
        'initial-boiling-point': '60 C',
      },
      formula: [
        { name: 'acetone', cas: '67-64-1', percent: 20 },
        { name: 'toluene', cas: '108-88-3', percent: 10 },
        { name: '2-butoxyethanol', cas: '111-76-2', percent: 10 },
        { name: 'formaldehyde', cas: '50-00-0', percent: 0.5 },
        { name: 'water', amount: 'balance' },
      ],
    });

  it('gives the OSHA limits of every ingredient of section 3', async () => {
    const sheet = sheetJson(await solvents());
    const rows = item(sheet, 8, 'OSHA permissible exposure limit (PEL)').table!.map(row =>
      Object.values(row),
    );
    // 29 CFR 1910.1000 Tables Z-1 and Z-2; 29 CFR 1910.1048(c).
    expect(rows).toEqual(
      expect.arrayContaining([
        ['acetone', '1000 ppm; 2400 mg/m³', '–', 'Z-1'],
        ['toluene', '200 ppm', 'ceiling 300 ppm; peak 500 ppm for 10 min', 'Z-2'],
        ['2-butoxyethanol', '50 ppm; 240 mg/m³ (skin)', '–', 'Z-1'],
        ['formaldehyde', '0.75 ppm', 'STEL 2 ppm over 15 min', '1910.1048'],
      ]),
    );
    expect(rows).toHaveLength(4);
  });

  it('tells what NTP, IARC and OSHA list', async () => {
    const listed = item(sheetJson(await solvents()), 11, 'Listed carcinogens: NTP, IARC, OSHA');
    // NTP 15th Report on Carcinogens; IARC volume 100F; 29 CFR 1910.1048.
    expect(listed.table).toEqual([
      {
        Ingredient: 'formaldehyde',
        NTP: 'Known to be a human carcinogen',
        IARC: 'Group 1 (volume Sup 7, 62, 88, 100F; 2009)',
        OSHA: 'Regulated: 29 CFR 1910.1048',
      },
    ]);
  });

  it.each(['solid', 'gas', 'aerosol'])('drafts a sheet for a %s', async form => {
    const input = await inputAround({
      form,
      formula: [{ name: 'carbon dioxide', cas: '124-38-9', percent: 100 }],
    });
    const html = sheetHtml(sheetDocument(input, template));
    expect(html.match(/<h2>/gu)).toHaveLength(16);
    expect(html).not.toMatch(/undefined|\bnull\b|\[object|NaN/u);
  });
});

describe('choices of the maker', () => {
  it('takes the maker’s own texts before its own', async () => {
    const input = inputs.get('patio-cleaner')!;
    const sheet = { 'first-aid.inhalation': 'Bring into fresh air.', 'ppe.hands': 'Nitrile gloves, 0.4 mm.' };
    const changed = sheetJson({
      ...input,
      record: { ...input.record, sheet: { ...input.record.sheet, ...sheet } },
    });
    expect(item(changed, 4, 'Inhalation').text).toBe('Bring into fresh air.');
    expect(item(changed, 8, 'Hand protection').text).toBe('Nitrile gloves, 0.4 mm.');
  });

  it('says that it is a draft until it is signed', () => {
    const input = inputs.get('descaler')!;
    const drafted = sheetDocument(input, template);
    const signed = sheetDocument({ ...input, draft: false }, template);
    expect(sheetHtml(drafted)).toContain('DRAFT for qualified review');
    expect(sheetHtml(signed)).not.toMatch(/DRAFT/u);
    expect(signed.running.draft).toBeNull();
  });

  it('escapes markup in the texts of the record', () => {
    const input = inputs.get('descaler')!;
    const html = sheetHtml(
      sheetDocument({ ...input, record: { ...input.record, name: 'A <b>&"c"' } }, template),
    );
    expect(html).toContain('<h1>A &lt;b&gt;&amp;&quot;c&quot;</h1>');
    expect(html).not.toContain('<b>');
  });
});

describe('the web page', () => {
  it('stands alone: no file, script or address is fetched', () => {
    const html = sheetHtml(sheetDocument(inputs.get('degreaser')!, template));
    expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en-US">/u);
    expect(html).toContain(
      '<title>Safety data sheet: Peelworks Citrus Degreaser, Product code CD-500, Revision 1, Date 2026-11-10</title>',
    );
    expect(html).not.toMatch(/<script|<link|\bsrc=|url\(|@import|https?:/u);
    // One drawing for each pictogram, each with a name for readers.
    const count = inputs.get('degreaser')!.elements.pictograms.length;
    expect(html.match(/<svg role="img" aria-label="GHS0\d [a-z ]+"/gu)).toHaveLength(count);
    expect(html.match(/<h2>/gu)).toHaveLength(16);
  });
});
