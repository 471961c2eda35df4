import { describe, expect, it } from 'vitest';
import eu from '../../hazard-data/eu-clp/sheet/sections.json' with { type: 'json' };
import un from '../../hazard-data/un-ghs/sheet/sections.json' with { type: 'json' };
import { statementCodes } from '../../src/document/sheet/ghs/classes.ts';
import { sheetSections } from '../../src/document/sheet/sections.ts';
import { type SheetInput, sheetDocument, sheetHtml } from '../../src/document/sheet.ts';
import { workSheetMarkdown } from '../../src/draft/work-sheet.ts';
import { hazardClasses } from '../../src/notation/classes.ts';
import { printHazard } from '../../src/notation/print-hazard.ts';
import { printLimit } from '../../src/notation/print-limit.ts';
import type { BasisId } from '../../src/reference/basis.ts';
import { en } from '../../src/words/en/index.ts';
import symbols from '../../templates/symbols/ghs-symbols.json' with { type: 'json' };
import law from '../document/sheet/appendix-d.json' with { type: 'json' };
import { inputAround, sheetTemplate } from '../document/sheet/sheet-input.ts';
import { pseudo, unsaid } from './_pseudo.ts';

// No outside source: what is not said by the language, is not law and is no datum must not be English.

const words = pseudo(en);

/** Records in Greek, so that Latin letters are not the maker's. */
const maker = {
  name: 'Αλφα',
  address: ['Οδος 1'],
  telephone: '+1 216 555 0142',
  emergency: { telephone: '+1 216 555 0199', hours: '24' },
};
const around = { name: 'Ωμεγα', code: '1', use: 'Χρηση', maker };
const water = { name: 'νερο', cas: '7732-18-5', amount: 'balance' };
const records: Record<string, Record<string, unknown>> = {
  'a flammable toxic solvent': {
    ...around,
    properties: { 'flash-point': '10 C (closed cup)', 'initial-boiling-point': '65 C' },
    formula: [{ name: 'μεθανολη', cas: '67-56-1', percent: 40 }, water],
  },
  'a corrosive with claims, ranges and an unknown': {
    ...around,
    properties: { pH: 13, density: '1.1 g/mL' },
    formula: [
      { name: 'σοδα', cas: '1310-73-2', percent: '2-4', 'trade-secret': ['identity', 'percent'] },
      { name: 'χλωρινη', cas: '7681-52-9', percent: 5 },
      { name: 'αγνωστο', percent: 3 },
      water,
    ],
  },
  'an acid beside bleach': {
    ...around,
    properties: { pH: 1 },
    formula: [
      { name: 'οξυ', cas: '7647-01-0', percent: 9 },
      { name: 'χλωρινη', cas: '7681-52-9', percent: 3 },
      water,
    ],
  },
  'a solid sensitizer': {
    ...around,
    form: 'solid',
    formula: [{ name: 'νικελιο', cas: '7786-81-4', percent: 100 }],
  },
  'water alone': { ...around, formula: [{ ...water, amount: undefined, percent: 100 }] },
};

const inputs = new Map<string, SheetInput>();
const inputOf = async (name: string, basis: BasisId = 'us-hcs'): Promise<SheetInput> => {
  const { amount: _, ...rest } = records[name]!;
  const key = `${basis} ${name}`;
  const input = inputs.get(key) ?? (await inputAround(rest, { words }, basis));
  inputs.set(key, input);
  return input;
};

/** Headings of Annex II to Regulation (EC) No 1907/2006 and of the GHS, with what stands beneath them. */
const headings = [...eu.sections, ...un.sections]
  .flatMap(({ heading, parts }) => [
    heading,
    ...parts.flatMap(part => [part.heading, ...part.items.map(item => item.heading)]),
  ])
  .filter(heading => heading !== '');

/** Texts of law and of the tables: headings, statements, classes, symbols. */
const lawTexts = ({ elements, measures, classification }: SheetInput): readonly string[] => [
  ...law.sections.flatMap(([heading, parts]) => [heading as string, ...(parts as string[])]),
  ...[...elements.hazardStatements, ...elements.precautionaryStatements, ...elements.supplemental].map(
    ({ text }) => text,
  ),
  ...measures.precautionaryStatements.map(({ text }) => text),
  ...(elements.signalWord ? [elements.signalWord] : []),
  ...hazardClasses.flatMap(({ title, class: name }) => [title, name]),
  ...classification.hazards.flatMap(({ organs }) => organs),
  // Effects of STOT SE 3, in the words of CLP Annex VI, also of ingredients.
  'respiratory irritation',
  'narcotic effects',
  classification.basis.title,
  ...Object.keys(symbols.symbols).map(title => title.replaceAll('-', ' ')),
];

/** Statements and notation of the ingredients, in the words of CLP Annexes III and VI. */
const statementTexts = ({ classification, statementText }: SheetInput): readonly string[] =>
  classification.constituents
    .flatMap(({ data }) => [
      ...data.hazards.flatMap(hazard => [
        printHazard(hazard),
        ...statementCodes(hazard).map(code => statementText(code) ?? ''),
      ]),
      ...data.limits.map(printLimit),
    ])
    .filter(text => text !== '');

const english = (text: string, known: readonly string[]): readonly string[] => {
  let rest = unsaid(text);
  // The longest first, so that no part of a statement is taken out before the whole.
  for (const each of [...known].sort((one, other) => other.length - one.length))
    rest = rest.replaceAll(new RegExp(each.replace(/[\\^$.*+?()[\]{}|]/gu, '\\$&'), 'giu'), ' ');
  return rest.match(/[A-Za-z]{4,}/gu) ?? [];
};

describe.each(Object.keys(records))('in a language of its own, %s', name => {
  it.each(['us-hcs', 'eu-clp', 'un-ghs'] as const)(
    'has a sheet without an English word of ours, %s',
    async basis => {
      const input = await inputOf(name, basis);
      const ghs = basis === 'us-hcs' ? [] : [...headings, ...statementTexts(input)];
      const known = [...lawTexts(input), ...ghs];
      for (const { number, title, note, items } of sheetSections(input)) {
        const texts = [
          title,
          note ?? '',
          ...items.flatMap(({ text, list, notes, groups, table }) => [
            ...text,
            ...list,
            ...notes,
            ...groups.flatMap(group => [group.title, ...group.list]),
            ...(table?.columns ?? []),
            ...(table?.rows.flat() ?? []),
          ]),
        ];
        for (const text of texts) expect(english(text, known), `section ${number}: ${text}`).toEqual([]);
      }
    },
  );

  it('has a page whose frame is told in it', async () => {
    const input = await inputOf(name);
    const html = sheetHtml(sheetDocument(input, await sheetTemplate()));
    for (const part of [
      /<title>[^<]*/u,
      /<p class="kind">[^<]*/u,
      /<p class="standing">[^<]*/u,
      /<footer>.*<\/p>/u,
    ]) {
      const text = part.exec(html)![0].replace(/<[^>]*>/gu, '');
      expect(english(text, [input.classification.basis.title]), text).toEqual([]);
    }
  });

  it('has a work sheet without an English word of ours', async () => {
    const { record, classification, elements } = await inputOf(name);
    // Identifiers and the notation of CLP Annex VI are the same in every language.
    const ids = [...classification.warnings, ...classification.readings, ...elements.omitted].flatMap(each =>
      'id' in each ? [each.id] : 'code' in each ? [each.code as string] : [],
    );
    const supplemental = elements.supplemental.map(({ code }) => code);
    // A rule of the data gives its own reason, and a reading its paragraphs.
    const leftOff = [
      ...elements.omitted.flatMap(({ what, why }) => ('text' in why ? [what, why.text] : [what])),
      ...classification.readings.map(({ cite }) => cite),
    ];
    const others = classification.otherClasses.map(other => other.class);
    const notation = [
      'oral',
      'dermal',
      'inhalation',
      'vapour',
      'mist',
      'respiratory irritation',
      'narcotic effects',
    ];
    const known = [
      ...others,
      ...leftOff,
      ...ids,
      ...supplemental,
      ...notation,
      ...lawTexts(await inputOf(name)),
    ];
    for (const line of workSheetMarkdown({ record, classification, elements, words }).split('\n'))
      expect(english(line, known), line).toEqual([]);
  });
});
