import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/classify/classification.ts';
import { run as check } from '../../src/cli/commands/check.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import type { LabelledProduct } from '../../src/labelling/labelled-product.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { en } from '../../src/words/en/index.ts';
import { demoWith, inProcess, put, workshop } from '../cli/_command.ts';
import { classified } from './_classified.ts';

const elements = async (basis: BasisId, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  labelElements(classified(basis, hazards), await loadLabelData(basis), { form: 'liquid', ...product });

const text = async (code: string, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  (await elements('us-hcs', hazards, product)).precautionaryStatements.find(each => each.code === code)?.text;

// 29 CFR 1910.1200 App. C, C.2.4.2 to C.2.4.5, C.2.4.9, C.2.2.2, read word for word.
describe('what the record says of statements', () => {
  it('words without a field go to the only one that lacks them', async () => {
    const words = { 'P370+P378': { '*': ['water spray'] }, P230: { '*': ['water'] } };
    expect(await text('P370+P378', ['Ox. Liq. 2'], { words })).toBe(
      'In case of fire: Use water spray to extinguish.',
    );
    expect(await text('P230', ['Desens. Expl. 1'], { words })).toContain('water');
  });

  it('settings that the label has no use for are told to whoever makes or checks it, in one note', async () => {
    const path = put(
      workshop(),
      'r.yaml',
      demoWith([
        'form: liquid',
        'form: liquid\nstatements: {keep: [P999], choose: {P372: [x]}, omit: [{code: P998, reason: r}]}',
      ]),
    );
    const { out } = await inProcess(check, [path, '--json']);
    const notes = JSON.parse(out).findings.filter(
      ({ code }: { code: string }) => code === 'statement-setting-unused',
    );
    expect(notes).toHaveLength(1);
    for (const code of ['P999', 'P372', 'P998']) expect(notes[0].message).toContain(code);
  });

  it('words that could be for several fields are asked for by field', async () => {
    const { missing, unused } = await elements('us-hcs', ['Self-heat. 1'], {
      words: { P413: { '*': ['50'] } },
    });
    expect(missing).toMatchObject([
      {
        what: 'P413',
        why: {
          kind: 'needs-words',
          key: 'statements.words.P413',
          fields: ['kilograms', 'pounds', 'celsius', 'fahrenheit'],
        },
      },
    ]);
    expect(unused).toEqual([{ block: 'words', code: 'P413', why: 'no-such-field' }]);
  });

  it('alternatives are chosen by their keys', async () => {
    expect(await text('P280', ['Skin Corr. 1'], { choose: { P280: ['gloves', 'eye'] } })).toBe(
      'Wear protective gloves and eye protection.',
    );
    const { unused } = await elements('us-hcs', ['Skin Corr. 1'], { choose: { P280: ['boots'] } });
    expect(unused).toEqual([{ block: 'choose', code: 'P280', why: 'no-such-alternative' }]);
  });

  it('a statement is omitted with the reason and C.2.4.9', async () => {
    const omit = [{ code: 'P240', reason: 'sold in bottles of a quart' }];
    const { precautionaryStatements, omitted } = await elements('us-hcs', ['Flam. Liq. 2'], { omit });
    expect(precautionaryStatements.map(({ code }) => code)).not.toContain('P240');
    expect(omitted).toContainEqual({
      what: 'P240',
      why: { kind: 'record', reason: 'sold in bottles of a quart' },
      cite: '29 CFR 1910.1200 App. C, C.2.4.9',
    });
  });

  it('a hazard statement is omitted under C.2.2.2 in the US, and nowhere else', async () => {
    const omit = [{ code: 'H290', reason: 'test on the packaging' }];
    const us = await elements('us-hcs', ['Met. Corr. 1'], { omit });
    expect(us.hazardStatements).toEqual([]);
    expect(us.omitted.map(({ cite }) => cite)).toContain('29 CFR 1910.1200 App. C, C.2.2.2');
    const eu = await elements('eu-clp', ['Met. Corr. 1'], { omit });
    expect(eu.hazardStatements.map(({ code }) => code)).toEqual(['H290']);
    expect(eu.unused).toEqual([{ block: 'omit', code: 'H290', why: 'no-ground' }]);
  });

  it('the maker adds a statement; one that the basis does not know is missing', async () => {
    const { precautionaryStatements, missing } = await elements('us-hcs', ['Skin Irrit. 2'], {
      add: ['P405', 'P998'],
    });
    expect(precautionaryStatements).toContainEqual({
      code: 'P405',
      group: 'storage',
      text: 'Store locked up.',
    });
    expect(missing).toMatchObject([{ what: 'P998', why: { kind: 'no-text' } }]);
  });

  it('nothing that the record says of statements is dropped in silence', async () => {
    const { unused } = await elements('us-hcs', ['Skin Irrit. 2'], {
      words: { P413: { celsius: ['30'] } },
      choose: { P260: ['mist'] },
      keep: ['P273'],
      omit: [{ code: 'P240', reason: 'no bulk' }],
    });
    expect(unused.map(({ block, code }) => `${block} ${code}`)).toEqual([
      'words P413',
      'choose P260',
      'keep P273',
      'omit P240',
    ]);
    for (const each of unused) expect(en.statements.unused(each)).toContain(each.code);
  });
});

// C.2.4.4: conditions in italics.
describe('conditions that nobody has answered', () => {
  it('are in one list, with the key that answers them', async () => {
    const { conditional } = await elements('us-hcs', ['Flam. Liq. 2', 'STOT RE 1']);
    const byNeed = (needs: string) =>
      conditional.filter(each => each.needs === needs).map(({ statement }) => statement);
    expect(byNeed('volatile')).toEqual(expect.arrayContaining(['P240', 'P241', 'P242', 'P243']));
    const lines = en.statements.conditionals(conditional);
    expect(lines.filter(line => line.includes('statements.conditions.volatile'))).toHaveLength(1);
  });

  it('are not in it once they are answered', async () => {
    for (const volatile of [true, false]) {
      const { conditional } = await elements('us-hcs', ['Flam. Liq. 2'], { volatile });
      expect(conditional.filter(({ needs }) => needs === 'volatile')).toEqual([]);
    }
  });

  it('what is sprayed gives off a mist; what is not sprayed is no spray', async () => {
    const { conditional } = await elements('us-hcs', ['Skin Corr. 1'], { sprayed: true });
    expect(conditional.filter(({ needs }) => needs === 'inhalable')).toEqual([]);
    expect(await text('P261', ['Skin Sens. 1'], { sprayed: false })).toBe('Avoid breathing mist or vapors.');
  });
});

describe('statements that are put together here', () => {
  // C.4 prints P308+P311 and not P308+P310; C.2.4.10(b) allows it.
  it('say so, with the paragraph', async () => {
    const { precautionaryStatements } = await elements('us-hcs', ['Skin Corr. 1', 'Carc. 2']);
    const marked = precautionaryStatements.filter(({ combinedUnder }) => combinedUnder);
    expect(marked.map(({ code }) => code)).toContain('P308+P310+P313');
    expect(marked.find(({ code }) => code.startsWith('P308'))?.combinedUnder).toBe(
      '29 CFR 1910.1200 App. C, C.2.4.10(b)',
    );
    const printed = precautionaryStatements.find(({ code }) => code === 'P303+P361+P353');
    expect(printed).toBeDefined();
    expect(printed).not.toHaveProperty('combinedUnder');
    expect(en.statements.combined(precautionaryStatements).join()).toContain('P308+P310+P313');
  });

  it('"If exposed or concerned" is said once', async () => {
    expect(await text('P308+P310+P313', ['Skin Corr. 1', 'Carc. 2'])).toBe(
      'If exposed or concerned: Immediately call a poison center or doctor. Get medical attention.',
    );
  });

  // C.4 prints P301+P310 and P331 for aspiration hazard, Category 1.
  it.each([
    [['Asp. Tox. 1', 'Eye Dam. 1']],
    [['Asp. Tox. 1', 'Skin Corr. 1B']],
    [['Asp. Tox. 1', 'STOT SE 3 (narcotic effects)']],
    [['Asp. Tox. 1', 'STOT SE 1']],
  ])('the call and "do NOT induce vomiting" stay one statement: %j', async hazards => {
    const { precautionaryStatements } = await elements('us-hcs', hazards);
    const swallowed = precautionaryStatements.filter(({ text: said }) => said.startsWith('If swallowed'));
    expect(swallowed).toHaveLength(1);
    expect(swallowed[0]!.text).toMatch(
      /^If swallowed: Immediately call a poison center or doctor\..*Do NOT induce vomiting\.$/,
    );
  });
});

// A reading: C.2.2.1 names no statement that may go; CLP Article 27 and UN GHS 1.4.10.5.3.3(d) let it go.
describe('H318 beside H314', () => {
  it.each([
    ['show', ['H314', 'H318']],
    ['conveyed', ['H314']],
    [null, ['H314']],
  ])('taken as %s', async (take, codes) => {
    const { hazardStatements } = await elements('us-hcs', ['Skin Corr. 1B', 'Eye Dam. 1'], {
      choice: id => (id === 'eye-damage-statement' ? take : null),
    });
    expect(hazardStatements.map(({ code }) => code)).toEqual(codes);
  });
});

// Note to Table A.6.1: the warning is optional on the label; App. D, Table D.1, 2 asks for it on the sheet.
describe('elements of the sheet', () => {
  it('keep what is optional on the label', async () => {
    const data = await loadLabelData('us-hcs');
    const { Exact } = await import('../../src/quantity/exact.ts');
    const base = classified('us-hcs', ['Carc. 2']);
    const because = {
      kind: 'ingredients',
      rule: 'at-cut-off',
      cites: [],
      comparisons: [
        {
          constituent: 0,
          amount: Exact.decimal(0.5),
          limit: Exact.decimal(0.1),
          reached: true,
          own: '2',
          result: '2',
          specific: false,
        },
      ],
    } as const;
    const carcinogen = { ...base, hazards: base.hazards.map(hazard => ({ ...hazard, because })) };
    const product = { form: 'liquid', choice: () => 'sheet-only' } as const;
    expect(labelElements(carcinogen, data, product).hazardStatements).toEqual([]);
    const sheet = labelElements(carcinogen, data, product, 'sheet');
    expect(sheet.hazardStatements.map(({ code }) => code)).toEqual(['H351']);
    expect(sheet.signalWord).toBe('Warning');
    expect(sheet.pictograms).toEqual(['GHS08']);
    expect(sheet.precautionaryStatements.length).toBeGreaterThan(3);
  });
});

// Regulation (EC) No 1272/2008, Article 28(3); the rows of Annex I, Tables of Parts 2 to 4.
describe('a set that covers every hazard in the EU', () => {
  const codes = async (hazards: string[], product: Partial<LabelledProduct> = {}) =>
    (await elements('eu-clp', hazards, product)).precautionaryStatements.map(({ code }) => code);
  const parts = async (hazards: string[]) => (await codes(hazards)).flatMap(code => code.split('+'));

  it('keeps skin first aid of a corrosive oxidizer', async () => {
    const found = await codes(['Ox. Liq. 1', 'Skin Corr. 1A']);
    expect(found).toEqual(expect.arrayContaining(['P301+P330+P331', 'P303+P306+P360', 'P305+P351+P338']));
    expect(found).toEqual(expect.arrayContaining(['P210', 'P220', 'P280']));
  });
  it.each([
    [['Flam. Liq. 2', 'Skin Corr. 1B', 'Acute Tox. 3 (oral)', 'STOT SE 1'], ['P210']],
    [
      ['Acute Tox. 1 (inhalation)', 'Skin Corr. 1A', 'Met. Corr. 1'],
      ['P260', 'P284', 'P234'],
    ],
    [
      ['Flam. Liq. 3', 'Skin Corr. 1B', 'Skin Sens. 1', 'Aquatic Chronic 2'],
      ['P210', 'P273', 'P280'],
    ],
    [
      ['Carc. 1B', 'Skin Corr. 1B', 'Aquatic Acute 1', 'Resp. Sens. 1'],
      ['P201', 'P273', 'P284'],
    ],
  ])('%j: %j', async (hazards, needed) => {
    expect(await parts(hazards)).toEqual(expect.arrayContaining(needed));
  });

  it('names all that it leaves off, and the record puts back or takes off by name', async () => {
    const hazards = ['Flam. Liq. 2', 'Eye Irrit. 2', 'STOT SE 3 (narcotic effects)'];
    const found = await elements('eu-clp', hazards);
    const beyond = found.omitted.filter(({ why }) => why.kind === 'beyond-proposal').map(({ what }) => what);
    expect(beyond).toContain('P240');
    expect(await codes(hazards, { keep: ['P240'] })).toContain('P240');
    const omit = [{ code: 'P210', reason: 'tested' }];
    const without = await elements('eu-clp', hazards, { omit });
    expect(without.precautionaryStatements.map(({ code }) => code)).not.toContain('P210');
    expect(without.omitted).toContainEqual(
      expect.objectContaining({ what: 'P210', why: { kind: 'record', reason: 'tested' } }),
    );
  });
});

// CLP Annex III, statements of Regulation (EU) 2023/707; Article 27 on evident redundancy.
describe('persistent, bioaccumulative and mobile', () => {
  it.each([
    [['PBT', 'vPvB'], ['EUH441']],
    [['PMT', 'vPvM'], ['EUH451']],
    [
      ['PBT', 'PMT'],
      ['EUH440', 'EUH450'],
    ],
    [
      ['vPvB', 'vPvM'],
      ['EUH441', 'EUH451'],
    ],
  ])('%j: %j', async (hazards, codes) => {
    const { hazardStatements } = await elements('eu-clp', hazards);
    expect(hazardStatements.map(({ code }) => code)).toEqual(codes);
  });
});
