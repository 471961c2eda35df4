import type { Pack } from '../../record/product-record.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { TransportAnswer } from '../../transport/answer.ts';
import { transport } from './sheet-transport.ts';

/**
 * How a case is carried, for its label: the basic description with the words of a limited quantity after it (49 CFR
 * 172.202, 172.203(b)).
 * @param description basic description; null where number and name are left out, since they may tell a withheld identity
 */
export function carriedLine(answer: TransportAnswer, description: string | null): string {
  if (answer.answer === 'undecided') return 'Transport (49 CFR): not decided';
  if (answer.answer === 'not-regulated') return 'Transport (49 CFR): not regulated by highway and rail';
  const described =
    description ??
    `Class ${[transport.hazardClass(answer), ...(answer.packingGroup ? [answer.packingGroup] : [])].join(', ')}`;
  return `${described}${answer.limitedQuantity?.allowed === true ? ', Limited Quantity' : ''}`;
}

/**
 * What the answer of transport means for the marks of a case.
 * @param asked marks that the call asked for itself
 * @param description basic description, or null
 */
export function caseTransportFindings(
  { answer, limitedQuantity }: Pick<TransportAnswer, 'answer' | 'limitedQuantity'>,
  description: string | null,
  asked: { readonly limitedQuantity: boolean; readonly none: boolean },
  { id, at }: Pack,
): Diagnostic[] {
  const cite = limitedQuantity?.cite ?? '49 CFR 173.22';
  const finding = (severity: Diagnostic['severity'], message: string, hint?: string): Diagnostic => ({
    code: 'case-transport',
    severity,
    message,
    ...(hint && { hint }),
    cite,
    at,
  });
  if (asked.limitedQuantity) {
    if (answer === 'regulated' && limitedQuantity?.allowed === true) return [];
    const says =
      answer === 'undecided'
        ? 'transport is not decided'
        : answer === 'not-regulated'
          ? 'the product is not regulated'
          : 'the pack is no limited quantity';
    return [
      finding(
        'warning',
        `the call asks for the mark of a limited quantity, and by \`ship\` ${says}`,
        'see `ship` for the reasons',
      ),
    ];
  }
  if (asked.none) return [];
  if (answer === 'undecided')
    return [
      finding(
        'warning',
        `transport of ${id} is not decided: no mark is drawn`,
        'see `ship` for what is missing',
      ),
    ];
  if (answer === 'not-regulated') return [];
  if (limitedQuantity?.allowed === true)
    return [finding('note', `marks of a limited quantity are drawn: ${description}`)];
  const why =
    limitedQuantity?.allowed === null
      ? 'whether it is a limited quantity is open'
      : 'it is no limited quantity';
  return [
    finding(
      'warning',
      `${description}: ${why}; number and name are drawn, hazard labels (49 CFR 172.400) and a UN packaging are due beside them`,
    ),
  ];
}
