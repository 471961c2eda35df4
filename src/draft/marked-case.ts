import { PRINTER_NAMES, type PrinterName } from '../layout/roll-printer.ts';
import { type CaseFacts, type CaseQuestion, caseFacts } from '../logistics/case-facts.ts';
import { type LabelPlaces, labelPlaces } from '../logistics/label-places.ts';
import { consignorMark } from '../logistics/package-marks.ts';
import type { Pack } from '../record/product-record.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { basicDescription } from '../transport/answer.ts';
import { caseTransportFindings } from '../words/en/case-transport.ts';
import { packageMarkFindings, secretFindings } from '../words/en/package-marks.ts';
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
  /** Hazard labels that the case bears, or would bear; null where transport decides none. */
  readonly hazardLabels: CaseMarks['hazardLabels'];
  /** Where they stand; null where there are none. */
  readonly places: LabelPlaces | null;
  /** The mark of a marine pollutant by vessel; null where it is none. */
  readonly marinePollutant: CaseMarks['marinePollutant'];
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
  const { answer, limitedQuantity, arrows, mark, secrets, carried, hazardLabels, marinePollutant } =
    caseMarks(product, pack);
  const none = asked.limitedQuantity || asked.arrows || withoutMarks;
  const question = none ? asked : { ...asked, limitedQuantity, arrows };
  const facts = caseFacts(product.record, pack, question);
  const lacksConsignor = !none && mark !== null && product.record.maker === null;
  const description = basicDescription(answer, answer.reportable);
  return (
    facts && {
      facts,
      arrows: question.arrows,
      name: none ? null : mark,
      carried: withoutMarks ? null : carried,
      description,
      hazardLabels,
      places: hazardLabels && labelPlaces(facts.size, hazardLabels.labels.length),
      marinePollutant,
      diagnostics: [
        ...caseTransportFindings(answer, description, { limitedQuantity: asked.limitedQuantity, none }, pack),
        ...packageMarkFindings(marinePollutant, lacksConsignor ? consignorMark.cite : null, pack),
        ...(none ? [] : secretFindings(secrets, pack)),
      ],
    }
  );
}
