import { PRINTER_NAMES, type PrinterName } from '../layout/roll-printer.ts';
import { type CaseFacts, type CaseQuestion, caseFacts } from '../logistics/case-facts.ts';
import type { Pack } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { basicDescription } from '../transport/answer.ts';
import { caseTransportFindings } from '../words/en/case-transport.ts';
import { type CaseMarks, caseMarks } from './case-marks.ts';
import type { ClassifiedProduct } from './classified-product.ts';

/** The printer of the labels of a case: that of the record, else the usual one. */
export const casePrinter = (pack: Pack): PrinterName => pack.case?.printer ?? PRINTER_NAMES[0]!;

/** A case with the marks that it bears. */
export interface MarkedCase {
  readonly facts: CaseFacts;
  readonly arrows: boolean;
  /** Number and name as a mark of their own; null where the case bears none. */
  readonly name: CaseMarks['mark'];
  /** How it is carried, in a line; null where the marks are left out. */
  readonly carried: string | null;
  /** Basic description; null where there is none. */
  readonly description: string | null;
  /** What transport means for the marks. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The facts of a case with the marks that the answer of transport gives it, or with those that the call asks for.
 * @param withoutMarks the call leaves the marks out
 * @returns null where the pack has no case
 */
export function markedCase(
  product: ClassifiedProduct,
  pack: Pack,
  asked: CaseQuestion,
  withoutMarks: boolean,
): MarkedCase | null {
  const { answer, limitedQuantity, arrows, mark, carried } = caseMarks(product, pack);
  const none = asked.limitedQuantity || asked.arrows || withoutMarks;
  const question = none ? asked : { ...asked, limitedQuantity, arrows };
  const facts = caseFacts(product.record, pack, question);
  const description = basicDescription(answer, answer.reportable);
  return (
    facts && {
      facts,
      arrows: question.arrows,
      name: none ? null : mark,
      carried: withoutMarks ? null : carried,
      description,
      diagnostics: caseTransportFindings(
        answer,
        description,
        { limitedQuantity: asked.limitedQuantity, none },
        pack,
      ),
    }
  );
}
