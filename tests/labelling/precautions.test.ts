import { describe, expect, it } from 'vitest';
import type { BasisId } from '../../src/classify/classification.ts';
import { labelElements } from '../../src/labelling/elements.ts';
import type { LabelledProduct } from '../../src/labelling/labelled-product.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { classified } from './_classified.ts';

const elements = async (basis: BasisId, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  labelElements(classified(basis, hazards), await loadLabelData(basis), { form: 'liquid', ...product });

const codes = async (basis: BasisId, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  (await elements(basis, hazards, product)).precautionaryStatements.map(({ code }) => code);

const text = async (code: string, hazards: string[], product: Partial<LabelledProduct> = {}) =>
  (await elements('us-hcs', hazards, product)).precautionaryStatements.find(each => each.code === code)?.text;

// 29 CFR 1910.1200 App. C, C.2.4.10(a) and (b), read word for word.
describe('medical response', () => {
  it('the most urgent call once, with both routes', async () => {
    const found = await elements('us-hcs', ['Acute Tox. 4 (oral)', 'Eye Dam. 1']);
    const calls = found.precautionaryStatements.filter(each => each.text.includes('poison center'));
    expect(calls).toEqual([
      {
        code: 'P301+P305+P310',
        combinedUnder: '29 CFR 1910.1200 App. C, C.2.4.10(b)',
        lead: 'If swallowed or in eyes:',
        group: 'response',
        text: 'If swallowed or in eyes: Immediately call a poison center or doctor.',
      },
    ]);
    expect(found.omitted.map(({ what }) => what)).toContain('P301+P312');
  });

  it('three or more routes become "If exposed or concerned"', async () => {
    const three = ['Acute Tox. 3 (oral)', 'Acute Tox. 3 (dermal)', 'Acute Tox. 3 (inhalation)'];
    expect(await text('P308+P310', three)).toBe(
      'If exposed or concerned: Immediately call a poison center or doctor.',
    );
    expect((await codes('us-hcs', three)).filter(code => /P31[0-2]/.test(code))).toEqual(['P308+P310']);
  });

  it('a call for one route follows the first aid of that route', async () => {
    expect(await text('P304+P340+P312', ['STOT SE 3 (narcotic effects)'])).toBe(
      'If inhaled: Remove person to fresh air and keep comfortable for breathing. Call a poison center or doctor if you feel unwell.',
    );
  });

  it('symptoms are named in full beside a more urgent call', async () => {
    const found = await codes('us-hcs', ['Resp. Sens. 1', 'Skin Corr. 1']);
    expect(found).toContain('P342+P311');
    expect(found).toContain('P308+P310');
  });

  // C.2.4.10(c)
  it('medical attention stays beside a call', async () => {
    const found = await codes('us-hcs', [
      'STOT RE 1',
      'Acute Tox. 1 (oral)',
      'Carc. 2',
      'Press. Gas (Ref. Liq.)',
      'Eye Irrit. 2A',
    ]);
    expect(found).toEqual(expect.arrayContaining(['P314', 'P308+P313', 'P336+P315', 'P337+P313']));
  });

  it('Rev. 11 has its own statements', async () => {
    const found = await elements('un-ghs', ['Acute Tox. 4 (oral)', 'Asp. Tox. 1']);
    expect(found.precautionaryStatements.find(({ code }) => code.startsWith('P301'))?.text).toBe(
      'IF SWALLOWED: Get emergency medical help immediately. Rinse mouth. Do NOT induce vomiting.',
    );
    for (const { text } of found.precautionaryStatements) expect(text).not.toContain('POISON');
  });
});

// 29 CFR 1910.1200 App. C, C.2.4.8 and C.2.4.6.
describe('the most stringent of similar statements', () => {
  it.each([
    ['P260 over P261', ['STOT RE 1', 'Skin Sens. 1'], 'P260', 'P261'],
    ['P303+P361+P353 over P302+P352', ['Skin Irrit. 2', 'Flam. Liq. 2'], 'P303+P361+P353', 'P302+P352'],
    ['P361+P364 over P362+P364', ['Acute Tox. 3 (dermal)', 'Skin Irrit. 2'], 'P361+P364', 'P362+P364'],
    ['P333+P313 over P332+P313', ['Skin Sens. 1', 'Skin Irrit. 2'], 'P333+P313', 'P332+P313'],
    ['P234 over P406', ['Met. Corr. 1'], 'P234', 'P406'],
    ['P403+P233 over P403', ['Flam. Gas 2', 'STOT SE 3 (respiratory irritation)'], 'P403+P233', 'P403'],
    [
      'P363 for P362+P364 where clothes come off at once',
      ['Flam. Liq. 3', 'Skin Irrit. 2'],
      'P363',
      'P362+P364',
    ],
  ])('%s', async (_, hazards, stays, goes) => {
    const found = await elements('us-hcs', hazards);
    const all = found.precautionaryStatements.map(({ code }) => code);
    expect(all).toContain(stays);
    expect(all).not.toContain(goes);
    expect(found.omitted.find(({ what }) => what === goes)?.cite).toMatch(/C\.2\.4\.[468]$/);
  });

  // C.2.4.2 and its example.
  it('alternatives of several hazards stand in one sentence', async () => {
    expect(await text('P280', ['Skin Corr. 1'])).toBe(
      'Wear protective gloves, protective clothing, eye protection and face protection.',
    );
    expect(await text('P280', ['Skin Irrit. 2'])).toBe('Wear protective gloves.');
    expect(await text('P280', ['Skin Irrit. 2', 'Eye Irrit. 2A'])).toBe(
      'Wear protective gloves, eye protection and face protection.',
    );
    expect(await text('P280', ['Skin Corr. 1'], { words: { P280: { equipment: ['eye'] } } })).toBe(
      'Wear eye protection.',
    );
  });

  // C.4 prints "Use … to extinguish": the words are the maker's, whatever the hazard.
  it.each([['Ox. Liq. 2'], ['Flam. Liq. 2'], ['Org. Perox. D']])(
    'an extinguishing agent for %s is named by the maker, never by default',
    async hazard => {
      const { missing, precautionaryStatements } = await elements('us-hcs', [hazard]);
      expect(missing).toContainEqual({
        what: 'P370+P378',
        why: { kind: 'needs-words', key: 'statements.words.P370+P378', fields: ['media'] },
        cite: expect.stringContaining('C.4'),
      });
      expect(precautionaryStatements.map(({ text }) => text).join()).not.toMatch(/extinguish/);
    },
  );

  it('and is printed once it is named', async () => {
    const hazards = ['Ox. Liq. 2'];
    const words = { 'P370+P378': { media: ['flooding amounts of water'] } };
    expect(await text('P370+P378', hazards, { words })).toBe(
      'In case of fire: Use flooding amounts of water to extinguish.',
    );
  });

  it('what stays takes over the alternatives of what goes', async () => {
    expect(await text('P260', ['Skin Corr. 1', 'Skin Sens. 1'])).toBe(
      'Do not breathe mist, vapors or spray.',
    );
  });

  // P306+P360 of Ox. Liq. 1 says to rinse before clothes come off, P303+P361+P353 of corrosives to take them off at once.
  it('contradictions are removed', async () => {
    const found = await codes('us-hcs', ['Ox. Liq. 1', 'Skin Corr. 1']);
    expect(found.some(code => code.includes('P361'))).toBe(false);
    expect(await text('P303+P306+P360', ['Ox. Liq. 1', 'Skin Corr. 1'])).toBe(
      'If on skin (or hair) or on clothing: Rinse immediately contaminated clothing and skin with plenty of water before removing clothes.',
    );
  });

  it('storage statements that share a part stand as one', async () => {
    const hazards = ['Press. Gas (Comp.)', 'Flam. Liq. 1'];
    expect(await text('P410+P403+P235', hazards)).toBe(
      'Protect from sunlight. Store in a well-ventilated place. Keep cool.',
    );
  });

  it('vomiting is not induced, with the mouth rinsed, in one statement', async () => {
    expect(await text('P301+P310+P330+P331', ['Acute Tox. 4 (oral)', 'Asp. Tox. 1'])).toBe(
      'If swallowed: Immediately call a poison center or doctor. Rinse mouth. Do NOT induce vomiting.',
    );
  });
});

// 29 CFR 1910.1200 App. C, C.2.4.4 and C.2.4.5.
describe('conditions of use', () => {
  it('an unknown fact keeps the statement, a known one takes it off with a reason', async () => {
    expect(await codes('us-hcs', ['Flam. Liq. 3'])).toContain('P241');
    expect(await codes('us-hcs', ['Flam. Liq. 3'], { volatile: null })).toContain('P241');
    const { omitted } = await elements('us-hcs', ['Flam. Liq. 3'], { volatile: false });
    expect(omitted.find(({ what }) => what === 'P241')).toMatchObject({
      cite: '29 CFR 1910.1200 App. C, C.2.4.4',
    });
    expect(await codes('us-hcs', ['Flam. Liq. 1'], { volatile: false })).toContain('P403+P235');
  });

  it('a reference to a specific treatment needs one', async () => {
    expect(await codes('us-hcs', ['Skin Sens. 1'])).not.toContain('P321');
    expect(await codes('us-hcs', ['Skin Sens. 1'], { specificTreatment: 'calcium gluconate gel' })).toContain(
      'P321',
    );
  });

  it('what is breathed follows the form', async () => {
    expect(await text('P261', ['Skin Sens. 1'])).toBe('Avoid breathing mist, vapors or spray.');
    expect(await text('P261', ['Skin Sens. 1'], { form: 'solid' })).toBe('Avoid breathing dust or fume.');
    expect(await text('P260', ['Skin Corr. 1'])).toBe('Do not breathe dusts or mists.');
  });

  it('bracketed words follow the class', async () => {
    expect(await text('P302+P335+P334', ['Water-react. 1'])).toMatch(/Immerse in cool water\.$/);
    expect(await text('P302+P335+P334', ['Pyr. Sol. 1'])).toMatch(
      /Immerse in cool water or wrap in wet bandages\.$/,
    );
  });

  it('a statement without the words it needs is reported, and printed once they are given', async () => {
    const hazards = ['Self-heat. 1'];
    expect((await elements('us-hcs', hazards)).missing.map(({ what }) => what)).toEqual(['P413']);
    const words = { P413: { kilograms: ['50'], pounds: ['110'], celsius: ['30'], fahrenheit: ['86'] } };
    expect(await text('P413', hazards, { words })).toBe(
      'Store bulk masses greater than 50 kg/110 lbs at temperatures not exceeding 30 °C/86 °F.',
    );
  });
});

// Regulation (EC) No 1272/2008, Article 28(2) and (3).
describe('number of statements in the EU', () => {
  const solvent = ['Flam. Liq. 3', 'Skin Irrit. 2', 'Skin Sens. 1', 'Aquatic Chronic 2'];
  it('six, the rest named', async () => {
    const found = await elements('eu-clp', solvent);
    expect(found.precautionaryStatements).toHaveLength(6);
    expect(found.omitted.filter(({ cite }) => cite === 'CLP Article 28(3)').length).toBeGreaterThan(5);
  });
  it('the public gets disposal and the children statement', async () => {
    const found = await codes('eu-clp', solvent, { consumer: true });
    expect(found).toEqual(expect.arrayContaining(['P102', 'P501']));
    expect(found).toHaveLength(6);
  });
  it('what the maker keeps stays', async () => {
    expect(await codes('eu-clp', solvent)).not.toContain('P243');
    expect(await codes('eu-clp', solvent, { keep: ['P243'] })).toContain('P243');
  });
  it('first aid and protection for a corrosive product stay beyond six', async () => {
    const found = await codes('eu-clp', ['Skin Corr. 1B', 'Met. Corr. 1', 'Aquatic Chronic 1'], {
      consumer: true,
    });
    expect(found).toEqual(
      expect.arrayContaining([
        'P102',
        'P280',
        'P301+P330+P331',
        'P303+P361+P353',
        'P305+P351+P338',
        'P308+P310',
        'P501',
      ]),
    );
  });
});
