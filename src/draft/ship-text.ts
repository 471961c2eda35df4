import type { ProductRecord } from '../record/product-record.ts';
import {
  basicDescription,
  type LimitedQuantity,
  type Outcome,
  type TransportAnswer,
} from '../transport/answer.ts';
import { hazardLabelLines } from '../words/en/hazard-labels.ts';
import { transportNotes, transportWorking } from '../words/en/transport.ts';
import { transportCondition, transportNeed } from '../words/en/transport-cases.ts';

const answers = {
  regulated: 'regulated',
  'not-regulated': 'not regulated',
  undecided: 'undecided',
} as const;

/** The answer as lines of text for people. */
export function shipText(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  pack: string,
  transport: TransportAnswer,
): string[] {
  const lines = [`${name} (${code}), ${pack}: ${headline(transport, transport.reportable)}`];
  if (transport.limitedQuantity) lines.push(`  ${quantity(transport.limitedQuantity)}`);
  lines.push(...hazardLabelLines(transport.hazardLabels).map(line => `  ${line}`));
  if (transport.marinePollutant) lines.push('  marine pollutant');
  lines.push('', 'Because');
  for (const fact of transport.because) lines.push(`  ${transportWorking(fact)} [${fact.cite}]`);
  if (transport.missing.length > 0) lines.push('', 'Missing');
  for (const item of transport.missing) lines.push(`  ${transportNeed(item)} [${item.cite}]`);
  if (transport.alternatives.length > 0) lines.push('', 'Otherwise');
  for (const alternative of transport.alternatives) {
    lines.push(
      `  ${alternative.when.map(transportCondition).join('; ')}:`,
      `    ${headline(alternative, transport.reportable)}`,
    );
    if (alternative.limitedQuantity) lines.push(`    ${quantity(alternative.limitedQuantity)}`);
    lines.push(...hazardLabelLines(alternative.hazardLabels).map(line => `    ${line}`));
    for (const fact of alternative.because)
      if (alternative.answer !== 'regulated') lines.push(`    ${transportWorking(fact)} [${fact.cite}]`);
  }
  return [...lines, '', ...transportNotes];
}

function headline(outcome: Outcome, reportable: readonly string[]): string {
  const description = basicDescription(outcome, reportable);
  if (description === null) return answers[outcome.answer];
  return outcome.answer === 'undecided' ? `${answers.undecided}; if regulated, ${description}` : description;
}

function quantity({ allowed, innerLimit, grossLimit, cite }: LimitedQuantity): string {
  if (innerLimit === null) return `limited quantity: none [${cite}]`;
  const verdict =
    allowed === null ? 'facts of the pack are missing' : allowed ? 'allowed' : 'not for this pack';
  return `limited quantity: ${verdict}; inner packagings up to ${innerLimit}, package up to ${grossLimit} [${cite}]`;
}
