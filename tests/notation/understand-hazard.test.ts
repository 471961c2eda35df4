import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hazardClasses, hazardCode } from '../../src/notation/classes.ts';
import { printHazard } from '../../src/notation/print-hazard.ts';
import { understandHazard } from '../../src/notation/understand-hazard.ts';

const read = (text: string): string => {
  const understood = understandHazard(text);
  if (!understood.ok) return `? ${understood.message} -> ${understood.hint}`;
  return understood.value.hazards.map(printHazard).join(' + ');
};

// Headings as in 29 CFR 1910.1200 Appendices A, B and C.4, GHS Parts 2 to 4, and turned round as sheets print them.
describe('hazards as data sheets print them', () => {
  // Texts of 29 CFR 1910.1200 Appendix C, C.4, as section 2 of a sheet prints them beside no class.
  it.each([
    ['Harmful if swallowed', 'Acute Tox. 4 (oral)'],
    ['Harmful if swallowed (Category 4)', 'Acute Tox. 4 (oral)'],
    ['Highly flammable liquid and vapour.', 'Flam. Liq. 2'],
    ['Causes serious eye damage', 'Eye Dam. 1'],
    ['May cause respiratory irritation', 'STOT SE 3 (respiratory irritation)'],
    ['Very toxic to aquatic life', 'Aquatic Acute 1'],
    ['Fatal if swallowed (Category 2)', 'Acute Tox. 2 (oral)'],
    ['H314 (Category 1B)', 'Skin Corr. 1B'],
    ['May cause an allergic skin reaction, Category 1A', 'Skin Sens. 1A'],
  ])('reads the text of a statement: %s', (text, hazards) => {
    expect(read(text).replace(/; H\d+/g, '')).toBe(hazards);
  });

  it('asks where a statement and its category contradict each other, so that none is taken as the milder', () => {
    expect(read('Harmful if swallowed (Category 3)')).toMatch(/H302 is not the statement of category 3/);
    expect(read('H319 (Category 1)')).toMatch(/H319 is not the statement of category 1/);
    expect(read('Fatal if swallowed')).toMatch(/leaves open .*Acute Tox. 1, Acute Tox. 2/);
  });

  it('takes the texts of statements from the law', () => {
    const law = JSON.parse(readFileSync('hazard-data/un-ghs/statements.json', 'utf8'));
    const { statements } = JSON.parse(readFileSync('hazard-data/hazard-wordings.json', 'utf8'));
    const american = (text: string) => text.toLowerCase().replaceAll('vapour', 'vapor');
    for (const [text, code] of Object.entries<string>(statements))
      expect(american((law[code] ?? law.hazard[code]).text), code).toBe(text);
  });

  it.each([
    ['Serious eye damage (Category 1)', 'Eye Dam. 1'],
    ['Flammable liquids, Category 2', 'Flam. Liq. 2'],
    ['Flammable Liquids - Category 2', 'Flam. Liq. 2'],
    ['Flammable liquid Category 4', 'Flam. Liq. 4'],
    ['Corrosive to metals, Category 1', 'Met. Corr. 1'],
    ['Corrosive to metals', 'Met. Corr. 1'],
    ['Skin corrosion/irritation, Category 2', 'Skin Irrit. 2'],
    ['Skin corrosion/irritation: Category 1B', 'Skin Corr. 1B'],
    ['Skin Corrosion, Category 1, Sub-category 1A', 'Skin Corr. 1A'],
    ['Serious eye damage/eye irritation (Category 2A)', 'Eye Irrit. 2A'],
    ['SERIOUS EYE DAMAGE / EYE IRRITATION - CATEGORY 1', 'Eye Dam. 1'],
    ['Eye irritation 2B', 'Eye Irrit. 2B'],
    ['Acute toxicity, Oral (Category 4)', 'Acute Tox. 4 (oral)'],
    ['Acute toxicity (inhalation - vapors), Category 3', 'Acute Tox. 3 (inhalation: vapour)'],
    ['Acute toxicity, inhalation (dusts and mists), Cat. 4', 'Acute Tox. 4 (inhalation: mist)'],
    ['Acute oral toxicity 4', 'Acute Tox. 4 (oral)'],
    ['Acute toxicity (Oral, Dermal), Category 4', 'Acute Tox. 4 (oral) + Acute Tox. 4 (dermal)'],
    ['Skin sensitisation, Sub-category 1A', 'Skin Sens. 1A'],
    ['Sensitization, skin: Category 1', 'Skin Sens. 1'],
    ['Respiratory sensitizer (category 1)', 'Resp. Sens. 1'],
    ['Carcinogenicity, Category 2', 'Carc. 2'],
    ['Germ cell mutagenicity Category 1B', 'Muta. 1B'],
    ['Reproductive toxicity (Category 1B)', 'Repr. 1B'],
    ['Aspiration hazard, Category 1', 'Asp. Tox. 1'],
    [
      'Specific target organ toxicity (single exposure), Category 3, respiratory tract irritation',
      'STOT SE 3 (respiratory irritation)',
    ],
    [
      'Specific target organ toxicity - single exposure (Category 3), Narcotic effects',
      'STOT SE 3 (narcotic effects)',
    ],
    [
      'Specific target organ toxicity - repeated exposure (kidney, liver), Category 2',
      'STOT RE 2 (kidney, liver)',
    ],
    [
      'STOT RE Category 1 (central nervous system; inhalation)',
      'STOT RE 1 (central nervous system; inhalation)',
    ],
    ['Hazardous to the aquatic environment, acute hazard, Category 1', 'Aquatic Acute 1'],
    ['Hazardous to the aquatic environment - long-term hazard (Category 2)', 'Aquatic Chronic 2'],
    ['Chronic aquatic toxicity (Category 3)', 'Aquatic Chronic 3'],
    ['Oxidising liquids, Category 2', 'Ox. Liq. 2'],
    ['Organic peroxides, Type D', 'Org. Perox. D'],
    ['Explosives, Division 1.4', 'Expl. 1.4'],
    ['Gases under pressure: Compressed gas', 'Press. Gas (Comp.)'],
    ['Gases under pressure (Refrigerated liquefied gas)', 'Press. Gas (Ref. Liq.)'],
    ['Flammable aerosols, Category 1', 'Aerosol 1'],
    ['Combustible dust', 'Comb. Dust'],
    ['Flammable liquids, Category 2 (H225)', 'Flam. Liq. 2'],
    ['Flam. Liq. 2, H225', 'Flam. Liq. 2'],
    ['H314 (Skin Corr. 1B)', 'Skin Corr. 1B'],
    ['skin corr. 1b', 'Skin Corr. 1B'],
    ['Skin Corr 1B', 'Skin Corr. 1B'],
    ['FLAM. LIQ. 3', 'Flam. Liq. 3'],
    ['acute tox. 4 (oral)', 'Acute Tox. 4 (oral)'],
    ['stot se 3; h335', 'STOT SE 3 (respiratory irritation)'],
    ['Eye Dam.1', 'Eye Dam. 1'],
  ])('%s', (text, notation) => {
    expect(read(text)).toBe(notation);
  });

  it('in the notation stay as they are, and are not called reworded', () => {
    for (const { class: name, categories } of hazardClasses)
      for (const { category } of categories) {
        const code = hazardCode(name, category);
        const understood = understandHazard(code);
        expect(understood.ok && understood.value.reworded, code).toBe(false);
        const lower = understandHazard(code.toLowerCase());
        if (lower.ok) expect(lower.value.hazards[0]?.code).toBe(code);
      }
  });

  it('by the title of their class and a category are that class', () => {
    for (const { class: name, title, categories } of hazardClasses)
      for (const { category } of categories.filter(each => /^\d/.test(each.category))) {
        const understood = understandHazard(`${title}, Category ${category}`);
        // No wording for classes that no US or UN heading has.
        if (/^(ED|PBT|vP|PMT)/.test(name)) continue;
        expect(understood.ok && understood.value.hazards[0]?.code, title).toBe(hazardCode(name, category));
      }
  });
});

describe('H-codes alone', () => {
  it.each([
    ['H225', 'Flam. Liq. 2'],
    ['h318', 'Eye Dam. 1'],
    ['H319', 'Eye Irrit. 2'],
    ['H302', 'Acute Tox. 4 (oral)'],
    ['H335', 'STOT SE 3 (respiratory irritation)'],
    ['H411: Toxic to aquatic life with long lasting effects', 'Aquatic Chronic 2'],
    ['H225 Highly flammable liquid and vapour', 'Flam. Liq. 2'],
    ['H302+H312', 'Acute Tox. 4 (oral) + Acute Tox. 4 (dermal)'],
  ])('%s leaves nothing open', (text, notation) => expect(read(text)).toBe(notation));

  it.each([
    ['H314', /Skin Corr\. 1, Skin Corr\. 1A, Skin Corr\. 1B, Skin Corr\. 1C/],
    ['H317', /Skin Sens\. 1, Skin Sens\. 1A, Skin Sens\. 1B/],
    ['H300', /Acute Tox\. 1, Acute Tox\. 2/],
    ['H350', /Carc\. 1A, Carc\. 1B/],
    ['H280', /Press\. Gas/],
    ['H314 Causes severe skin burns and eye damage', /Skin Corr\. 1A|Eye Dam/],
    ['H999', /./],
    ['Flammable liquids, Category 2 (H314)', /H314 is no H-code of Flam\. Liq\. 2/],
    ['Skin Corr. 1B (Flam. Liq. 2)', /./],
  ])('%s asks', (text, answers) => {
    expect(read(text)).toMatch(/^\?/);
    expect(read(text)).toMatch(answers);
  });
});

describe('texts that leave something open or say nothing', () => {
  it.each([
    ['Flammable liquids', /Flam\. Liq\. 1, Flam\. Liq\. 2/],
    ['Skin corrosion/irritation', /category open/],
    ['Serious eye damage, Category 3', /no category/],
    ['Flammable liquids, Category 2 and 3', /several categories/],
    ['Flammable liquids, Category 2, sometimes', /sometimes/],
    ['harmful', /./],
    ['', /./],
    ['constructor', /./],
    ['toString 1', /./],
  ])('%s', (text, said) => {
    expect(read(text)).toMatch(/^\?/);
    expect(read(text)).toMatch(said);
  });
});
