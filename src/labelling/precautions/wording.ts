import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { StatementText } from '../../reference/label-data/statements.ts';
import type { Omission, PrecautionaryStatement } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import { capitalized, type FieldWords, fillStatement, joined, spokenIn } from '../statement-text.ts';
import { codeOf, type Precaution } from './_precaution.ts';
import { fieldsOfMaker, givenWords } from './given-words.ts';

/**
 * The text of a statement: as printed where the law has the combination, else the texts of its parts one after the
 * other (C.2.4.6); fields filled with the maker's words, else the alternatives of the rows.
 */
export function wordPrecaution(
  precaution: Precaution,
  labelData: LabelData,
  product: LabelledProduct,
): { readonly statement: PrecautionaryStatement } | { readonly missing: Omission } {
  const { statements, precautions: rules } = labelData;
  const code = codeOf(precaution);
  const heads = precaution.parts.filter(part => rules.medical.routes.includes(part));
  const printed = printedCode(precaution.parts, labelData);
  const several = !printed && heads.length > 1;
  const actions = several ? precaution.parts.filter(part => !heads.includes(part)) : precaution.parts;
  const texts = several ? [routesText(heads, labelData)] : [];
  let foreign: { readonly language?: string } = {};
  const { cite } = labelData.allocation;
  for (const piece of printed ? [printed] : piecesOf(actions, labelData)) {
    const text = statements.precautionary[piece];
    if (!text) return { missing: { what: code, why: { kind: 'no-text' }, cite } };
    foreign = { ...foreign, ...spokenIn(text) };
    if (!text.fields) {
      texts.push(capitalized(text.text));
      continue;
    }
    const given = givenWords(text, [code, piece, ...piece.split('+')], labelData, product);
    const words = { ...chosen(precaution, labelData, product), ...given };
    const open = fieldsOfMaker(text, labelData).filter(
      field => (words[field]?.length ?? 0) === 0 && text.text.includes(`{${field}}`),
    );
    // `P370+P380+P375[+P378]` names an agent only where the maker gives one.
    const filled =
      open.length === 0 || isOptional(text, words) ? fillStatement(text, words) : { missing: open };
    if ('missing' in filled) {
      const why = { kind: 'needs-words', key: `statements.words.${piece}`, fields: filled.missing } as const;
      return { missing: { what: code, why, cite } };
    }
    texts.push(filled.text);
  }
  const text = texts.join(' ');
  const lead = several ? texts[0]! : leadOf(precaution, labelData);
  const combinedUnder = isPrinted(precaution, labelData) ? null : combinationCite(precaution, labelData);
  return {
    statement: {
      code,
      text,
      group: precaution.group,
      ...foreign,
      ...(lead && text.startsWith(`${lead} `) && { lead }),
      ...(combinedUnder && { combinedUnder }),
    },
  };
}

/** The condition with which a statement begins, by the text of its first part, which ends with a colon: `If in eyes:`. */
function leadOf({ parts }: Precaution, { statements }: LabelData): string | null {
  const first = statements.precautionary[parts[0]!];
  return first?.text.endsWith(':') && !first.fields ? capitalized(first.text) : null;
}

/** A bracketed end of a statement that nobody has asked for. */
const isOptional = ({ fields = {} }: StatementText, words: FieldWords): boolean =>
  'extinguish' in fields && (words.extinguish?.length ?? 0) === 0;

/** Whether the law prints these codes as one statement, or it is a single one. */
const isPrinted = ({ parts }: Precaution, labelData: LabelData): boolean =>
  parts.length === 1 || printedCode(parts, labelData) !== undefined;

/** The paragraph under which statements are combined: that on medical response where one calls for help. */
const combinationCite = ({ parts }: Precaution, { precautions: rules, basis }: LabelData): string =>
  parts.some(part => rules.medical.levels.some(level => level.includes(part)))
    ? rules.cites.medicalCombination[basis]
    : rules.cites.consolidated[basis];

/** The key under which the law prints this combination: `P301+P310`, or with a bracketed end `P380+P375[+P378]`. */
function printedCode(parts: readonly string[], { statements }: LabelData): string | undefined {
  const plain = parts.join('+');
  const bracketed = `${parts.slice(0, -1).join('+')}[+${parts[parts.length - 1]}]`;
  return [plain, bracketed].find(code => statements.precautionary[code]);
}

/** The longest printed combinations that make up the parts in their order. */
function piecesOf(parts: readonly string[], { statements }: LabelData): string[] {
  const pieces: string[] = [];
  for (let at = 0; at < parts.length; ) {
    let end = parts.length;
    while (end > at + 1 && !statements.precautionary[parts.slice(at, end).join('+')]) end--;
    pieces.push(parts.slice(at, end).join('+'));
    at = end;
  }
  return pieces;
}

/** "If on skin or in eyes:" from the IF statements of the routes. */
function routesText(heads: readonly string[], { statements, precautions: rules }: LabelData): string {
  const { between, last, lead: begins = 'If ' } = rules.medical;
  const printed = heads.map(part => statements.precautionary[part]!.text);
  const [first] = printed;
  const lead = first!.toLowerCase().startsWith(begins.toLowerCase()) ? first!.slice(0, begins.length) : '';
  const names = printed.map(text => text.slice(lead.length).replace(/:$/, ''));
  return `${lead}${joined(names, between, last)}:`;
}

/** Alternatives of the rows; of dust, gas, mist and the like those that the form of the product can give off. */
function chosen(
  { parts, fields }: Precaution,
  { precautions: rules }: LabelData,
  { form, sprayed }: LabelledProduct,
): FieldWords {
  const { codes, field, oneWord, stands, byForm, spray } = rules.air;
  const air = fields[field];
  if (!air || !parts.some(part => codes.includes(part)) || (air.length === 1 && air[0] === oneWord))
    return fields;
  const words = air.flatMap(word => (word === oneWord ? stands : [word]));
  const fitting = words.filter(word => byForm[form].includes(word) && !(word === spray && sprayed === false));
  return { ...fields, [field]: [...new Set(fitting.length > 0 ? fitting : words)] };
}
