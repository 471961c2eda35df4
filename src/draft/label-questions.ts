import type { Duty } from '../duties/duty.ts';
import { labelPurposes, workplaceStatements } from '../labelling/purposes.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { tellAll } from '../words/telling.ts';
import type { Words } from '../words/words.ts';
import { claimFindings } from './claim-findings.ts';
import { classifyProduct } from './classified-product.ts';
import { dutiesOf } from './duties.ts';
import type { Product } from './open-product.ts';
import type { Reference } from './open-reference.ts';
import { panelFindings } from './purposes/us-consumer.ts';
import { statementFindings } from './statement-findings.ts';

/** What the record leaves open about the words of its labels. */
export interface LabelQuestions {
  /** Duties around the label. */
  readonly duties: readonly Duty[];
  /** Which labels the product needs and why, and which words of the workplace fall away for consumers. */
  readonly labels: readonly string[];
  /** What only the maker can measure or answer for a class and for words of the label, a line for each answer. */
  readonly open: readonly string[];
  /** Statements without their words, and claims of the maker, with line and column where they have one. */
  readonly findings: readonly Diagnostic[];
}

/** Asks once what the labels of a product need to know. */
export function labelQuestions(product: Product, reference: Reference, words: Words): LabelQuestions {
  const classified = classifyProduct(product, reference);
  const { record, elements, classification } = classified;
  const consumers = record.soldTo?.users.includes('consumers') ?? false;
  return {
    labels: [
      ...words.purposes(labelPurposes(record.soldTo, classification.hazards.length > 0)),
      ...(consumers ? words.workplaceWords(workplaceStatements(elements.precautionaryStatements)) : []),
    ],
    duties: dutiesOf(classified),
    open: [
      ...classification.warnings
        .filter(({ id }) => id === 'ph-missing')
        .map(warning => words.warning(warning, tellAll(classification))),
      ...words.statements.conditionals(elements.conditional),
      ...words.statements.proposed(elements.proposed),
    ],
    findings: [
      ...statementFindings(record, elements, words, 'warning'),
      ...claimFindings(record, elements, words),
      ...(consumers && classification.hazards.length > 0
        ? record.packs
            .flatMap(pack => panelFindings(pack, words))
            .map(each => ({ ...each, severity: 'warning' as const }))
        : []),
    ],
  };
}
