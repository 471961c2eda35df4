import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { Omission, PrecautionaryStatement } from '../label-elements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import { type FieldWords, fillStatement, joined } from '../statement-text.ts';
import { codeOf, type Precaution } from './_precaution.ts';

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
  const ofMaker = (piece: string) =>
    [code, piece, ...piece.split('+')].map(each => product.words?.[each]).find(words => words);
  const missing = { missing: { what: code, why: rules.missing, cite: labelData.allocation.cite } };
  const heads = precaution.parts.filter(part => rules.medical.routes.includes(part));
  const printed = printedCode(precaution.parts, labelData);
  const several = !printed && heads.length > 1;
  const actions = several ? precaution.parts.filter(part => !heads.includes(part)) : precaution.parts;
  const texts = several ? [routesText(heads, labelData)] : [];
  for (const piece of printed ? [printed] : piecesOf(actions, labelData)) {
    const text = statements.precautionary[piece];
    const words = { ...chosen(precaution, labelData, product), ...ofMaker(piece) };
    const open = rules.common.some(field => text?.text.includes(`{${field}}`) && words[field]?.length === 0);
    const filled = text && !open && fillStatement(text, words);
    if (!filled || 'missing' in filled) return missing;
    texts.push(filled.text);
  }
  return { statement: { code, text: texts.join(' '), group: precaution.group } };
}

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
  const { between, last } = rules.medical;
  const printed = heads.map(part => statements.precautionary[part]!.text);
  const [lead = ''] = /^if /i.exec(printed[0]!) ?? [];
  const names = printed.map(text => text.slice(lead.length).replace(/:$/, ''));
  return `${lead}${joined(names, between, last)}:`;
}

/** Alternatives of the rows; of dust, gas, mist and the like those that the form of the product can give off. */
function chosen(
  { parts, fields }: Precaution,
  { precautions: rules }: LabelData,
  { form }: LabelledProduct,
): FieldWords {
  const { codes, field, oneWord, stands, byForm } = rules.air;
  const air = fields[field];
  if (!air || !parts.some(part => codes.includes(part)) || (air.length === 1 && air[0] === oneWord))
    return fields;
  const words = air.flatMap(word => (word === oneWord ? stands : [word]));
  const fitting = words.filter(word => byForm[form].includes(word));
  return { ...fields, [field]: [...new Set(fitting.length > 0 ? fitting : words)] };
}
