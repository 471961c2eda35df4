import { childResistant } from '../../duties/child-resistant.ts';
import type { ConsumerFacts } from '../../labelling/consumer/facts.ts';
import type { Pack } from '../../record/product-record.ts';
import { childResistantRules } from '../../reference/duties/child-resistant-data.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';
import { packagedProduct } from './consumer-product.ts';

/** What a reviewer of the label for consumers must look at: each proposal, what is not stated, what is open, the closure. */
export function consumerFindings(
  product: ClassifiedProduct,
  pack: Pack,
  facts: ConsumerFacts,
  { consumer }: Words,
): readonly Diagnostic[] {
  const { record, classification } = product;
  const at = { file: record.file };
  const chosen = record.statements?.consumerSignal ?? null;
  const names = (constituent: number) => classification.constituents[constituent]!.name;
  const found =
    (code: string, severity: Diagnostic['severity']) =>
    (message: string): Diagnostic => ({
      code,
      severity,
      message,
      at,
    });
  const closure = pack.container?.childResistant ?? null;
  const packaging = closure
    ? []
    : childResistant(packagedProduct(product, pack), childResistantRules()).filter(
        ({ outcome }) => outcome !== 'not-required',
      );
  return [
    ...(facts.signal
      ? [found('consumer-signal', 'note')(consumer.signal(facts.signal, chosen?.reason ?? null))]
      : []),
    ...(facts.refusedSignal
      ? [
          {
            ...found('consumer-signal-set', 'error')(consumer.refusedSignal(facts.refusedSignal)),
            hint: 'remove `statements.consumer-signal`',
            at: chosen?.at ?? at,
          },
        ]
      : []),
    ...distinct(facts.hazards.map(consumer.hazard)).map(found('consumer-hazard', 'note')),
    ...facts.uncovered.map(consumer.uncovered).map(found('consumer-not-stated', 'note')),
    ...facts.open.map(each => consumer.open(each, names)).map(found('consumer-open', 'warning')),
    ...packaging.map(each => ({
      ...found(
        'child-resistant-packaging',
        each.outcome === 'required' ? 'warning' : 'note',
      )(consumer.packaging(each, closure)),
      at: pack.at,
      cite: each.cite,
    })),
  ];
}

const distinct = (messages: readonly string[]): readonly string[] => [...new Set(messages)];

/** Components that the label names (16 CFR 1500.3(b)(14)(i)(B)), as the record lets them be told. */
export function consumerNames(
  { record, formula, classification }: ClassifiedProduct,
  { named }: ConsumerFacts,
  { consumer }: Words,
): { readonly names: readonly string[]; readonly findings: readonly Diagnostic[] } {
  const names: string[] = [];
  const findings: Diagnostic[] = [];
  for (const at of named) {
    const secret = formula.constituents[at]?.tradeSecret;
    if (!secret?.identity) {
      names.push(classification.constituents[at]!.name);
      continue;
    }
    findings.push({
      code: 'secret-on-label',
      severity: secret.shownAs === null ? 'error' : 'warning',
      message: consumer.secret(secret.shownAs),
      hint: 'give the trade secret a generic name with `shown-as`, and ask whether the law permits it',
      at: { file: record.file },
      cite: '16 CFR 1500.3(b)(14)(i)(B)',
    });
    if (secret.shownAs !== null) names.push(secret.shownAs);
  }
  return { names: [...new Set(names)], findings };
}
