import { describe, expect, it } from 'vitest';
import eu from '../../hazard-data/eu-clp/sheet/sections.json' with { type: 'json' };
import classes from '../../hazard-data/hazard-classes.json' with { type: 'json' };
import reactiveGroups from '../../hazard-data/reactivity/groups.json' with { type: 'json' };
import pairs from '../../hazard-data/reactivity/pairs.json' with { type: 'json' };
import forms from '../../hazard-data/sheet/forms.json' with { type: 'json' };
import un from '../../hazard-data/un-ghs/sheet/sections.json' with { type: 'json' };
import us from '../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import type { SheetSection } from '../../src/document/sheet/content.ts';
import { sheetHtml } from '../../src/document/sheet/html.ts';
import { sheetDocument, sheetJson, sheetSections } from '../../src/document/sheet.ts';
import { labelledProduct } from '../../src/draft/labelled-product.ts';
import { sheetFacts } from '../../src/draft/sheet-facts.ts';
import { labelElements, withEveryPrecaution } from '../../src/labelling/elements.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { loadBasis } from '../../src/reference/basis.ts';
import { loadLabelData } from '../../src/reference/label-data/load-label-data.ts';
import { loadSpoken } from '../../src/reference/label-data/load-spoken.ts';
import { spokenLabelData } from '../../src/reference/label-data/spoken.ts';
import { es } from '../../src/words/es/index.ts';
import { reactive } from '../../src/words/es/reactions.ts';
import { tellAll } from '../../src/words/telling.ts';
import symbols from '../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import { DATE, inputAround, sheetTemplate } from '../document/sheet/sheet-input.ts';
import { pseudo, unsaid } from './_pseudo.ts';

// No outside source: what a Spanish sheet says is Spanish, or a text of the record, or a name.

const { terms } = es.sheet;
const spoken = (await loadSpoken('es'))!;
const bases: readonly BasisId[] = ['us-hcs', 'eu-clp', 'un-ghs'];

describe('Spanish has a word for', () => {
  it('every heading of every sheet', () => {
    const headings = [
      ...[...eu.sections, ...un.sections].flatMap(({ heading, parts }) => [
        heading,
        ...parts.flatMap(part => [part.heading, ...part.items.map(item => item.heading)]),
      ]),
      ...us.sections.flatMap(({ heading, subheadings }) => [
        heading,
        ...subheadings.map(subheading => subheading.heading),
      ]),
      ...Object.values(forms.sheets).flatMap(({ sectionHead }) => sectionHead ?? []),
    ];
    expect(headings.filter(heading => heading !== '' && !(heading in terms.headings))).toEqual([]);
  });

  it('every class, symbol and text of law', async () => {
    expect(classes.classes.filter(each => !(each.class in terms.classes))).toEqual([]);
    const names = Object.keys(symbols.symbols).map(name => name.replaceAll('-', ' '));
    expect(names.filter(name => !(name in terms.pictograms))).toEqual([]);
    for (const id of bases) {
      const basis = await loadBasis(id, DATE.slice(0, 10));
      expect(basis.ok && basis.value.title in terms.bases, id).toBe(true);
    }
  });

  it('every reaction, and what must not be mixed', () => {
    const sides = { left: [], right: [], advice: 'does-not-hold', pH: null } as const;
    for (const { id, below } of pairs.pairs as { id: string; below?: object }[])
      for (const dilute of below ? [true, false] : [false]) {
        const found = { id: 'reactive-constituents', pair: id, dilute, ...sides } as never;
        expect(reactive(found, tellAll({ constituents: [] })), id).not.toMatch(/undefined/u);
      }
    const alone = reactiveGroups.groups.flatMap(group =>
      'alone' in group ? [group.alone as { with: string; gives: string }] : [],
    );
    const said = alone.flatMap(each => [each.with, each.gives]);
    expect(said.filter(term => !(term in terms.mixing))).toEqual([]);
  });
});

/** Records in Greek, so that Latin letters are not the maker's. */
const maker = {
  name: 'Αλφα',
  address: ['Οδος 1'],
  telephone: '+1 216 555 0142',
  emergency: { telephone: '+1 216 555 0199', hours: '24' },
};
const around = { name: 'Ωμεγα', code: '1', use: 'Χρηση', maker };
const water = { name: 'water', cas: '7732-18-5', amount: 'balance' };
const records: Readonly<Record<string, Record<string, unknown>>> = {
  solvent: {
    properties: { 'flash-point': '10.5 C (closed cup)', 'initial-boiling-point': '65 C' },
    formula: [{ name: 'μεθανολη', cas: '67-56-1', percent: 40.5 }, water],
  },
  'alkali with claims': {
    properties: { pH: 13, density: '1.1 g/mL' },
    formula: [
      { name: 'σοδα', cas: '1310-73-2', percent: '2-4', 'trade-secret': ['percent'] },
      { name: 'χλωρινη', cas: '7681-52-9', percent: 5 },
      { name: 'αγνωστο', percent: 3 },
      water,
    ],
  },
  'acid beside bleach': {
    properties: { pH: 1 },
    formula: [
      { name: 'οξυ', cas: '7647-01-0', percent: 9 },
      { name: 'χλωρινη', cas: '7681-52-9', percent: 3 },
      water,
    ],
  },
  sensitizer: {
    form: 'solid',
    formula: [{ name: 'νικελιο', cas: '7786-81-4', percent: 100 }],
  },
  aerosol: {
    form: 'aerosol',
    formula: [{ name: 'προπανιο', cas: '74-98-6', percent: 30 }, water],
  },
  peroxide: { formula: [{ name: 'υπεροξειδιο', cas: '7722-84-1', percent: 34 }, water] },
  'water alone': { formula: [{ name: 'water', cas: '7732-18-5', percent: 100 }] },
};

async function spanishInput(name: string, basis: BasisId, words = es) {
  const input = await inputAround({ ...around, ...records[name] }, { words }, basis);
  const { record, classification } = input;
  const labelData = spokenLabelData(await loadLabelData(basis), spoken, ',');
  const facts = sheetFacts({
    record,
    classification,
    reference: { lookup: () => ({ entry: null, others: [] }), labelData } as never,
  });
  return {
    ...input,
    elements: labelElements(classification, labelData, labelledProduct(record), 'sheet'),
    measures: labelElements(classification, withEveryPrecaution(labelData), labelledProduct(record), 'sheet'),
    statementText: facts.statementText,
  };
}

const textsOf = ({ title, note, items }: SheetSection): readonly string[] => [
  title,
  note ?? '',
  ...items.flatMap(item => [
    item.heading,
    item.part ?? '',
    ...item.text,
    ...item.list,
    ...item.notes,
    ...item.groups.flatMap(group => [group.title, ...group.list]),
    ...(item.table?.columns ?? []),
    ...(item.table?.rows.flat() ?? []),
  ]),
];

/** Words that English sentences are made of and Spanish ones are not. */
const ENGLISH =
  /(?<![\p{L}\p{N}])(?:the|and|with|from|which|are|is|not|this|that|for|of|at|by|or|if|an|was|were|has|have|be|in|on|to|as)(?![\p{L}\p{N}])/giu;

/** Names in English that stay: lists and their editions, handbooks, notation of CLP Annex VI, statements not held. */
const NAMES = [
  /\[[^\]]*\]/gu,
  /Perry's Handbook|CRC Handbook|NIST WebBook/gu,
  /(?:Búsqueda|Listas:|figura como|Identificador|Salud:|Físicos:).*/gsu,
  // Titles of works, and synonyms that the lists hold.
  /(?<=sección 9: ).*/gsu,
  /(?<=^οξυ: ).*/gsu,
];

describe.each(Object.keys(records))('a Spanish sheet of a product: %s', name => {
  it.each(bases)('has no English word of ours, %s', async basis => {
    const words = pseudo(es);
    const input = await spanishInput(name, basis, words);
    const known = [
      ...Object.values(input.elements.hazardStatements),
      ...input.measures.precautionaryStatements,
      ...input.elements.supplemental,
    ].map(({ text }) => text);
    for (const section of sheetSections(input))
      for (const text of textsOf(section)) {
        let rest = known.reduce((sofar, each) => sofar.replaceAll(each, ' '), unsaid(text));
        for (const each of NAMES) rest = rest.replaceAll(each, ' ');
        expect(rest.match(ENGLISH) ?? [], `section ${section.number}: ${text}`).toEqual([]);
      }
  });

  it.each(bases)('reads as Spanish from head to foot, %s', async basis => {
    const input = await spanishInput(name, basis);
    const english = input.measures.precautionaryStatements.filter(({ language }) => language === 'en');
    for (const section of sheetSections(input))
      for (const text of textsOf(section)) {
        let rest = english.reduce((sofar, each) => sofar.replaceAll(each.text, ' '), text);
        for (const each of NAMES) rest = rest.replaceAll(each, ' ');
        expect(rest.match(ENGLISH) ?? [], `section ${section.number}: ${text}`).toEqual([]);
        // The decimal comma; paragraphs of laws and versions of lists keep their points.
        expect(rest, text).not.toMatch(/\d\.\d+ (?:%|g\/mL|°C|mm²|kPa|mg)/u);
      }
  });
});

describe('a Spanish document', () => {
  it('names its language on the page and in the data', async () => {
    const input = await spanishInput('solvent', 'eu-clp');
    const model = sheetDocument(input, await sheetTemplate());
    expect(model.language).toBe('es');
    expect(sheetHtml(model)).toContain('<html lang="es">');
    expect(sheetJson(input).language).toBe('es');
  });

  it('of the United States says that the English sheet is the one of the law', async () => {
    const html = async (basis: BasisId) =>
      sheetHtml(sheetDocument(await spanishInput('solvent', basis), await sheetTemplate()));
    // 29 CFR 1910.1200(g)(2): the sheet is in English, although copies in other languages may be maintained.
    expect(await html('us-hcs')).toContain('prevalece la inglesa');
    expect(await html('eu-clp')).not.toContain('prevalece la inglesa');
  });

  it('marks what stands in another language, the block where it is all of it', async () => {
    const input = await spanishInput('solvent', 'eu-clp');
    const foreign = [
      { text: 'Χρηση', language: 'el' },
      { text: 'μεθανολη', language: 'el' },
    ];
    const html = sheetHtml(sheetDocument({ ...input, foreign }, await sheetTemplate()));
    expect(html).toContain('<p lang="el">Χρηση</p>');
    expect(html).toMatch(/<th scope="row" lang="el">μεθανολη<\/th>/u);
    expect(html).toMatch(/<span lang="el">μεθανολη<\/span>/u);
  });

  it('has a notice on its label for each open point', () => {
    const notices = (undecided: string[], stale: string[], phMissing: boolean) =>
      es.draftNotices({ undecided, stale, phMissing });
    expect(notices([], [], false)).toEqual([]);
    expect(notices([], [], true)[0]).toContain('pH sin medir');
    expect(notices([], ['flash-point'], false)[0]).toContain('punto de inflamación');
    const [whole, , least] = notices(['Met. Corr.'], ['pH'], true);
    expect(whole).toMatch(/Met\. Corr\..*pH\. pH sin medir/u);
    expect(least).toBe('BORRADOR: 3 puntos de peligro abiertos');
  });
});
