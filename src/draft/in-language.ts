import type { ForeignText } from '../document/foreign.ts';
import { labelElements } from '../labelling/elements.ts';
import { labelSubstances } from '../labelling/label-substances.ts';
import type { Place } from '../labelling/labelled-product.ts';
import { spokenRecord } from '../record/spoken-record.ts';
import { loadSpoken } from '../reference/label-data/load-spoken.ts';
import { readHow, type SpokenStatements, spokenLabelData } from '../reference/label-data/spoken.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { Words } from '../words/words.ts';
import { type ClassifiedProduct, sheetMeasures } from './classified-product.ts';
import { labelledProduct } from './labelled-product.ts';

/** A product as a document in another language says it. */
export interface SpokenProduct<P extends ClassifiedProduct> {
  readonly product: P;
  /** Texts of the maker and of the law that stay in another language, longest first. */
  readonly foreign: readonly ForeignText[];
  readonly findings: readonly Diagnostic[];
}

/**
 * The product with statements and texts of the record in the language of the words; in English, or in a language whose
 * statements are not held, as it is.
 */
export async function inLanguage<P extends ClassifiedProduct>(
  product: P,
  words: Words,
  place: Place = 'sheet',
): Promise<SpokenProduct<P>> {
  const spoken = await loadSpoken(words.language);
  if (!spoken) return { product, foreign: [], findings: [] };
  const { reference, classification } = product;
  const labelData = spokenLabelData(reference.labelData, spoken, words.decimalMark);
  const { record, untranslated } = spokenRecord(product.record, words.language);
  const shown = untranslated.filter(({ key }) => place === 'sheet' || /^(?:copy|packs)\./u.test(key));
  const elements = labelElements(classification, labelData, labelledProduct(record), place);
  const said: P = { ...product, record, reference: { ...reference, labelData }, elements };
  const own = product.record.language ?? 'en';
  const named = place === 'label' ? labelSubstances(classification) : null;
  const names =
    own === words.language
      ? []
      : classification.constituents.flatMap(({ name, cas, water }, at) => {
          const told = named === null || [...named.constituents, ...named.proposed].includes(at);
          const given = record.spokenNames?.[cas ?? ''] ?? record.spokenNames?.[name];
          return water || given || !told ? [] : [name];
        });
  const { statements } = labelData;
  const left = [statements.hazard, statements.supplemental ?? {}, statements.precautionary].flatMap(texts =>
    Object.values(texts).flatMap(({ text, language, fields }) =>
      language && !fields ? [{ text, language }] : [],
    ),
  );
  const foreign = [
    ...left,
    ...shown.map(({ text }) => ({ text, language: own })),
    ...names.map(text => ({ text, language: own })),
  ];
  return {
    product: said,
    foreign: [...foreign].sort((one, other) => other.text.length - one.text.length),
    findings: [
      ...textFindings(said, [...new Set(shown.map(({ key }) => key))], [...new Set(names)], words),
      ...statementFindings(
        place === 'sheet' ? { ...said, elements: sheetMeasures(said) } : said,
        spoken,
        words,
      ),
    ],
  };
}

/** Which texts of the record are to be translated. */
function textFindings(
  { record }: ClassifiedProduct,
  keys: readonly string[],
  names: readonly string[],
  { spoken, language }: Words,
): readonly Diagnostic[] {
  if (keys.length + names.length === 0) return [];
  return [
    {
      code: 'untranslated-text',
      severity: 'warning',
      message: spoken.untranslated(keys, names, language),
      hint: spoken.translationsHint(language),
      at: { file: record.file },
    },
  ];
}

/** Statements on the document whose text was not read, or that stay in English. */
function statementFindings(
  { elements, reference, record }: ClassifiedProduct,
  spokenTexts: SpokenStatements,
  { spoken, language }: Words,
): readonly Diagnostic[] {
  const codes = [
    ...elements.hazardStatements,
    ...elements.supplemental.filter(({ code }) => /^(?:EU)?H\d/u.test(code)),
    ...elements.precautionaryStatements,
  ].map(({ code }) => code);
  const of = (how: ReturnType<typeof readHow>): readonly string[] =>
    codes.filter(code => codeHow(code, reference.basis.id, spokenTexts) === how);
  const found = (code: string, severity: Diagnostic['severity'], message: string): Diagnostic => ({
    code,
    severity,
    message,
    at: { file: record.file },
  });
  const [none, memory, once] = [of('none'), of('memory'), of('once')];
  return [
    ...(none.length > 0 ? [found('statement-in-english', 'warning', spoken.inEnglish(none, language))] : []),
    ...(memory.length > 0
      ? [found('statement-from-memory', 'warning', spoken.fromMemory(memory, language))]
      : []),
    ...(once.length > 0 ? [found('statement-one-copy', 'note', spoken.oneCopy(once, language))] : []),
  ];
}

/** Of statements that are joined, the least sure of the parts where the whole has no text of its own. */
function codeHow(code: string, basis: string, spoken: SpokenStatements): ReturnType<typeof readHow> {
  const whole = readHow(code, basis, spoken);
  if (whole !== 'none' || !code.includes('+')) return whole;
  const order = ['none', 'memory', 'once', 'twice'] as const;
  const parts = code.split('+').map(part => readHow(part, basis, spoken));
  return order.find(how => parts.includes(how)) ?? 'none';
}
