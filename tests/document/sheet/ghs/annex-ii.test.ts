import { beforeAll, describe, expect, it } from 'vitest';
import sections from '../../../../hazard-data/eu-clp/sheet/sections.json' with { type: 'json' };
import un from '../../../../hazard-data/un-ghs/sheet/sections.json' with { type: 'json' };
import { isHealth } from '../../../../src/document/sheet/hazards.ts';
import { type SheetInput, sheetDocument, sheetHtml, sheetJson } from '../../../../src/document/sheet.ts';
import { sheetKeys } from '../../../../src/record/sheet-keys.ts';
import law from '../appendix-d.json' with { type: 'json' };
import { inputAround, sheetInput, sheetTemplate } from '../sheet-input.ts';
import annex from './annex-ii.json' with { type: 'json' };

const eu = (parts: Record<string, unknown>) => inputAround(parts, {}, 'eu-clp');
const item = (input: SheetInput, section: number, key: string) =>
  sheetJson(input).sections[section - 1]!.items.find(each => each.key === key)!;
const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const caustic = { name: 'sodium hydroxide', cas: '1310-73-2', percent: 4 };

describe('a sheet to Annex II', () => {
  let html: string;
  beforeAll(async () => {
    const input = await sheetInput('templates/demo/patio-cleaner.yaml', {}, 'eu-clp');
    html = sheetHtml(sheetDocument(input, await sheetTemplate()));
  });

  it('has every heading of Part B, in its words and order, and no other with a number', () => {
    const shown = [...html.matchAll(/<h[23][^>]*>((?:SECTION )?\d[^<]*)</gu)].map(([, text]) => text!);
    const wanted = annex.headings.map(([number, heading]) =>
      number!.includes('.') ? `${number}. ${heading}` : `SECTION ${number}: ${heading}`,
    );
    expect(shown).toEqual(wanted);
  });

  it('has (a) to (r) in 9.1', () => {
    const letters = sections.sections[8]!.parts[0]!.items.map(each => 'letter' in each && each.letter);
    expect(letters).toEqual([...'abcdefghijklmnopqr'].map(letter => `(${letter})`));
  });

  // Annex II, 0.2.5: the first page has the date of compilation, of a revised sheet that of the revision.
  it('has its date at the head', async () => {
    expect(html).toMatch(/<p class="standing">[^<]*Date of compilation 2026-10-30/u);
    const later = await eu({ formula: [water], revision: '2', revised: '2026-11-02' });
    const page = sheetHtml(sheetDocument(later, await sheetTemplate()));
    expect(page).toMatch(/<p class="standing">[^<]*Revision: 2026-11-02/u);
  });

  it('asks only for keys that the record has', () => {
    for (const outline of [...sections.sections, ...un.sections])
      for (const each of outline.parts.flatMap(({ items }) => items as readonly { asks?: string }[]))
        if (each.asks) expect(sheetKeys).toContain(each.asks);
  });

  // The UN number is that of the UN list, which ADR shares.
  it('shows no rule of the United States', () => {
    expect(html).not.toMatch(/\bCFR\b|OSHA|NIOSH|ACGIH|EPCRA|CERCLA|Proposition 65/u);
  });
});

describe('measures', () => {
  // CLP Article 28(3) limits the label to six statements; sections 4 to 8 of Annex II are not bound to them.
  it('say also what the label leaves off for its number', async () => {
    const input = await sheetInput('templates/demo/degreaser.yaml', {}, 'eu-clp');
    const shown = (section: number) => JSON.stringify(sheetJson(input).sections[section - 1]);
    const label = input.elements.precautionaryStatements.map(({ code }) => code);
    expect(label).not.toContain('P333+P313');
    expect(shown(2)).not.toContain('P333');
    expect(shown(4)).toContain('If skin irritation or rash occurs');
    expect(shown(7)).toContain('Ground and bond container');
  });

  // Council Directive 80/181/EEC: degrees Celsius and metric units.
  it('are in metric units alone', async () => {
    const input = await sheetInput('templates/demo/degreaser.yaml', {}, 'eu-clp');
    const html = sheetHtml(sheetDocument(input, await sheetTemplate()));
    expect(input.record.packs.some(({ contents }) => /oz/u.test(contents.written))).toBe(true);
    expect(html).not.toMatch(/°F|fl oz/u);
    expect(html).toContain('-74 °C; water 0 °C');
    expect(item(input, 1, 'other-identification').text).toMatch(/\(5(?:00|01) mL\)|\(4\d\d mL\)/u);
    const us = await sheetInput('templates/demo/degreaser.yaml');
    expect(sheetHtml(sheetDocument(us, await sheetTemplate()))).toMatch(
      /47 °C \(117 °F\).*16\.9 fl oz|16\.9 fl oz.*47 °C \(117 °F\)/su,
    );
  });
});

describe('a sheet to the GHS', () => {
  // 29 CFR 1910.1200(g)(2) takes its headings from GHS 1.5.3.2.1.
  it('has the sixteen headings', async () => {
    const { sections: found } = sheetJson(await inputAround({ formula: [caustic, water] }, {}, 'un-ghs'));
    const plain = (text: string) => text.toLowerCase().replaceAll(/[^a-z]/gu, '');
    // The standard adds the date to the last of them.
    for (const [at, [heading]] of law.sections.entries())
      expect(plain(heading as string)).toMatch(new RegExp(`^${plain(found[at]!.title)}`, 'u'));
    expect(found).toHaveLength(16);
  });
});

describe('three states', () => {
  it('are told apart for what the Union asks and nobody can calculate', async () => {
    const open = await eu({ formula: [caustic, water] });
    for (const [section, key] of [
      [1, 'ufi'],
      [1, 'competent-person'],
      [1, 'advisory-body'],
      [2, 'pbt'],
      [2, 'endocrine'],
      [2, 'other-hazards'],
      [8, 'limits'],
      [11, 'endocrine-health'],
      [12, 'pbt-assessment'],
      [12, 'endocrine-environment'],
      [13, 'waste-codes'],
      [14, 'environmental-hazards'],
      [15, 'regulations'],
      [15, 'chemical-safety'],
    ] as const)
      expect(item(open, section, key), key).toMatchObject({ state: 'open' });
    const known = await eu({
      ufi: 'N1QV-R02N-J00M-WQD5',
      formula: [caustic, water],
      sds: {
        assessment: { pbt: { searched: 'supplier sheets, by the maker, 2026-03-02' } },
        'waste-codes': '20 01 29*, from the sheet of a supplier',
        adr: { 'un-number': 'UN 1824' },
      },
    });
    expect(item(known, 1, 'ufi')).toMatchObject({ state: 'filled', text: 'N1QV-R02N-J00M-WQD5' });
    expect(item(known, 12, 'pbt-assessment')).toMatchObject({ state: 'searched' });
    expect(item(known, 2, 'pbt').text).toContain('supplier sheets, by the maker');
    expect(item(known, 13, 'waste-codes')).toMatchObject({ state: 'filled' });
    expect(item(known, 14, 'un-number').text).toBe('UN 1824');
    expect(item(known, 14, 'shipping-name')).toMatchObject({ state: 'open' });
  });

  // Annex II, 6.2 names drains, surface and ground water for any spill; 14.7 holds for bulk cargo alone.
  it('fill what form, packs and directions say, and give way to the record', async () => {
    const parts = {
      formula: [caustic, water],
      packs: [{ id: 'pack', contents: '1 L' }],
      copy: { directions: ['Wet the surface.', 'Rinse well.'] },
    };
    const plain = await eu(parts);
    expect(item(plain, 6, 'environmental-precautions').list?.join()).toMatch(
      /drains, surface water, ground/u,
    );
    expect(item(plain, 7, 'end-uses').text).toContain('Wet the surface. Rinse well.');
    expect(item(plain, 8, 'thermal')).toMatchObject({ state: 'filled' });
    expect(item(await eu({ ...parts, form: 'aerosol' }), 8, 'thermal')).toMatchObject({ state: 'open' });
    expect(item(plain, 14, 'bulk').text).toMatch(/not carried in bulk by vessel: sold in packs \(1 L\)/iu);
    expect(item(plain, 16, 'training').text).toContain('98/24/EC');
    const sds = {
      'environmental-precautions': 'Dam it.',
      'end-uses': 'In a bath alone.',
      ppe: { thermal: 'Hot bath: lined gloves.', environment: 'Filter the exhaust air.' },
      transport: { bulk: 'Tank vessels carry it.' },
      training: 'A day of practice.',
    };
    const own = await eu({ ...parts, sds });
    for (const [section, key, text] of [
      [6, 'environmental-precautions', 'Dam it.'],
      [7, 'end-uses', 'In a bath alone.'],
      [8, 'thermal', 'Hot bath: lined gloves.'],
      [8, 'environment', 'Filter the exhaust air.'],
      [14, 'bulk', 'Tank vessels carry it.'],
      [16, 'training', 'A day of practice.'],
    ] as const)
      expect(item(own, section, key).text, key).toContain(text);
  });

  it('count endocrine properties as searched for only where health and environment both are', async () => {
    const searched = { searched: 'supplier sheets, 2026-03-02' };
    const of = (assessment: object) => eu({ formula: [caustic, water], sds: { assessment } });
    const half = await of({ 'endocrine-health': searched });
    expect(item(half, 2, 'endocrine')).toMatchObject({ state: 'open' });
    const both = await of({ 'endocrine-health': searched, 'endocrine-environment': searched });
    expect(item(both, 2, 'endocrine')).toMatchObject({ state: 'searched' });
  });

  // Annex II, 11.1: lack of data is not the same as criteria that are not met.
  it('say that criteria are not met only of a class that the classification decided so', async () => {
    const MET = 'Based on available data, the classification criteria are not met';
    for (const formula of [
      [caustic, water],
      [caustic, { name: 'blend', percent: 3 }, water],
      [{ name: 'blend', percent: 3 }, water],
    ]) {
      const input = await eu({ formula });
      const rows = item(input, 11, 'health-effects').table!;
      const decided = input.classification.otherClasses.filter(({ outcome }) => outcome === 'not-classified');
      const shown = rows.filter(row => row.Result === MET);
      expect(shown).toHaveLength(
        decided.filter(each => isHealth(each.class) && each.class !== 'ED HH').length,
      );
      expect(rows.length).toBeGreaterThanOrEqual(10);
    }
  });

  // Annex II, 9.1: where a property does not apply, the reason is given.
  it('give the reason where a property does not apply to the form', async () => {
    const solid = await eu({
      form: 'solid',
      formula: [{ name: 'sodium carbonate', cas: '497-19-8', percent: 100 }],
    });
    for (const key of ['flash-point', 'explosion-limits', 'auto-ignition', 'viscosity', 'vapor-density'])
      expect(item(solid, 9, key).text, key).toBe('Not applicable: the property is not one of a solid.');
    expect(item(solid, 9, 'particles')).toMatchObject({ state: 'open' });
    expect(item(await eu({ formula: [water] }), 9, 'particles').text).toContain('Not applicable');
  });
});

describe('section 3', () => {
  // CLP Annex VI, 011-002-00-6: EC 215-185-5, limits from 0.5 %.
  it('gives numbers, limits, M-factors and estimates of each substance', async () => {
    const input = await eu({
      formula: [
        caustic,
        { name: 'sodium hypochlorite', cas: '7681-52-9', percent: 5 },
        {
          name: 'amine',
          percent: 2,
          hazards: ['Acute Tox. 4 (oral)'],
          ate: { oral: '1064 mg/kg' },
          source: 'test',
        },
        water,
      ],
      sds: { ingredients: [{ of: 'amine', ec: '205-483-3', registration: '01-2119457892-27' }] },
    });
    const rows = item(input, 3, 'ingredients').table!;
    expect(rows.map(row => row.Substance)).toEqual(['sodium hypochlorite', 'sodium hydroxide', 'amine']);
    expect(rows[1]!.Numbers).toBe(
      'EC 215-185-5\nCAS 1310-73-2\nIndex 011-002-00-6\nRegistration not yet searched',
    );
    expect(rows[1]!.Classification).toBe('Skin Corr. 1A; H314');
    expect(rows[2]!.Numbers).toBe('EC 205-483-3\nRegistration 01-2119457892-27');
    const values = JSON.stringify(item(input, 3, 'values').table);
    expect(values).toContain('Skin Corr. 1B: 2 <= C < 5 %');
    expect(values).toContain('M = 10 (acute)');
    expect(values).toContain('Oral: 1064 mg/kg');
  });

  it('gives an EU supplier, the competent person and the advisory body', async () => {
    const input = await eu({
      formula: [water],
      maker: {
        name: 'Tallow Lane Batch Works',
        address: ['48 Tallow Lane'],
        telephone: '+1 216 555 0142',
        emergency: { telephone: '+1 216 555 0199', hours: '24 hours' },
        'eu-supplier': {
          name: 'Example Import Ltd',
          role: 'importer',
          address: ['1 Sample Street', 'Dublin'],
          telephone: '+353 1 555 0100',
          email: 'sds@import.example',
          emergency: [
            { body: 'Example centre', country: 'Ireland', telephone: '+353 1 555 0199', hours: '8 to 22' },
          ],
        },
      },
    });
    expect(item(input, 1, 'eu-supplier').text).toContain('Example Import Ltd (importer)');
    expect(item(input, 1, 'competent-person').text).toContain('sds@import.example');
    expect(item(input, 1, 'advisory-body').text).toBe(
      'Ireland, Example centre: +353 1 555 0199. Hours: 8 to 22',
    );
  });

  // CLP, Article 18(3)(b): skin corrosion is among the classes, aquatic toxicity and irritation are not.
  it('names on the label what contributes to the classes of Article 18(3)(b)', async () => {
    const input = await eu({
      formula: [
        caustic,
        {
          name: 'biocide',
          percent: 1,
          hazards: ['Aquatic Acute 1'],
          'm-factors': { acute: 100 },
          source: 'test',
        },
        water,
      ],
    });
    expect(item(input, 2, 'label-substances').list).toEqual(['sodium hydroxide']);
    const mild = await eu({
      formula: [{ name: 'acid', percent: 15, hazards: ['Eye Irrit. 2'], source: 'test' }, water],
    });
    expect(item(mild, 2, 'label-substances').text).toMatch(/none of the classes/u);
  });

  it('writes out in section 16 every statement that stands as a code', async () => {
    const input = await eu({ formula: [caustic, water] });
    expect(item(input, 16, 'statement-texts').list).toContain(
      'H314 Causes severe skin burns and eye damage.',
    );
  });
});
