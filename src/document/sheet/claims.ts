import type { FormulaLine, ProductRecord, SubstanceLine } from '../../record/product-record.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import { percentText, prescribedRange } from './concentration.ts';
import { figure } from './fill.ts';
import { sheetForm } from './form.ts';
import { forbiddenFindings, ghsClaims } from './ghs/claims.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';
import { sheetSections } from './sections.ts';

/**
 * Findings on trade-secret claims: a concentration for which 29 CFR 1910.1200(i)(1)(iv) and (v) have no range, a
 * withheld name or number that a text of the record tells, a statement that tells the concentration by law; under the
 * law of the European Union a name that nobody allowed, and statements that deny hazards.
 */
export function claimFindings(input: SheetInput): readonly Diagnostic[] {
  const { identity, percent } = secretsOf(input);
  const forbidden = forbiddenFindings(input);
  if (identity.size + percent.size === 0) return forbidden;
  return [
    ...forbidden,
    ...ghsClaims(input, at => where(input.record, at, input)),
    ...[...percent].flatMap(at => rangeFinding(input, at)),
    ...[...percent].flatMap(at => unknownFinding(input, at)),
    ...[...identity].flatMap(at => toldFindings(input, at)),
  ];
}

function rangeFinding(input: SheetInput, at: number): readonly Diagnostic[] {
  const { name, low, high } = input.classification.constituents[at]!;
  if (prescribedRange({ low: low.value, high: high.value })) return [];
  return [
    {
      code: 'trade-secret-range',
      severity: 'error',
      message: `no prescribed range of 29 CFR 1910.1200(i)(1)(iv) or (v), which sheets of every basis show, holds ${percentText(low, high)} % ${name}: its percent cannot be claimed`,
      hint: 'take `percent` out of the claim, or narrow the range of the formula',
      ...where(input.record, at, input),
    },
  ];
}

/** The statement of Table D.1, 2(e) is due by law and tells the percent. */
function unknownFinding({ classification, record, formula }: SheetInput, at: number): readonly Diagnostic[] {
  const { name, low, high, data } = classification.constituents[at]!;
  const told = Object.values(classification.unknownAcuteToxicity).some(
    share => figure(share) === figure(low.value) || figure(share) === figure(high.value),
  );
  if (!told || data.unknown.size === 0) return [];
  return [
    {
      code: 'trade-secret-told',
      severity: 'warning',
      message: `the statement on unknown acute toxicity, due by ${sheetForm(classification.basis.id).unknownAcuteToxicity}, tells the percent of ${name}`,
      hint: 'give its acute toxicity, or drop the claim of its percent',
      ...where(record, at, { classification, formula }),
    },
  ];
}

/** Texts of the sheet that name what is withheld; they are the maker's own, as the drafted ones use the other name. */
function toldFindings(input: SheetInput, at: number): readonly Diagnostic[] {
  const { name, cas } = input.classification.constituents[at]!;
  const words = [name, cas].filter((word): word is string => word !== null).map(wholeWord);
  return sheetSections(input).flatMap(({ number, items }) =>
    items
      .filter(item => words.some(word => word.test(JSON.stringify(item))))
      .map(({ heading }) => ({
        code: 'trade-secret-told',
        severity: 'error' as const,
        message: `section ${number}, "${heading}", names ${name}, whose identity is claimed as a trade secret`,
        hint: 'word the text of the record without it, or drop the claim',
        ...where(input.record, at, input),
      })),
  );
}

const wholeWord = (text: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\d])${text.replace(/[\\^$.*+?()[\]{}|]/gu, '\\$&')}(?![\\p{L}\\d])`, 'iu');

/** The line that makes the claim. */
function where(
  { formula, file }: Pick<ProductRecord, 'formula' | 'file'>,
  at: number,
  { classification }: Pick<SheetInput, 'classification' | 'formula'>,
): Pick<Diagnostic, 'at'> {
  const { name, cas } = classification.constituents[at]!;
  const claims = (line: SubstanceLine): boolean =>
    line.tradeSecret !== null && (cas === null ? line.name === name : line.cas === cas);
  return { at: substances(formula).find(claims)?.at ?? { file } };
}

const substances = (lines: readonly FormulaLine[]): readonly SubstanceLine[] =>
  lines.flatMap(line => (line.kind === 'substance' ? [line] : substances(line.material.formula)));
