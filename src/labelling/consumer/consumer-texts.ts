import { consumerData } from '../../reference/consumer/hazard-data.ts';
import type { LabelElements, Statement } from '../label-elements.ts';
import type { ConsumerFacts } from './facts.ts';

/** The words of the law on a label for consumers. */
export interface ConsumerTexts {
  /** In capitals (16 CFR 1500.121(c)(4)). */
  readonly statements: readonly string[];
  /** Prescribed sentences on how the package is handled, and for whoever helps. */
  readonly handling: readonly Statement[];
  readonly aid: readonly Statement[];
  readonly children: string;
  /** Refers to the panel with the other cautions (16 CFR 1500.121(b)(3)). */
  readonly elsewhere: string;
}

/** Turns the statements of the facts into their words; those of a class are the words of its hazard statement. */
export function consumerTexts(
  facts: ConsumerFacts,
  { hazardStatements }: Pick<LabelElements, 'hazardStatements'>,
): ConsumerTexts {
  const { statements, also, children, elsewhere } = consumerData;
  const wordsOf = (id: string): readonly string[] => {
    const own = statements.find(statement => statement.id === id)?.text;
    if (own !== undefined) return [own];
    const codes = new Set(
      facts.hazards.filter(({ statement }) => statement === id).flatMap(each => each.codes),
    );
    return hazardStatements
      .filter(({ code }) => code.split('+').some(part => codes.has(part)))
      .map(({ text }) => text.replace(/\.$/, ''));
  };
  const prescribed = facts.also.map(id => ({ code: id, text: also[id]!.text }));
  const isHandling = ({ code }: Statement) => code === 'pressure';
  return {
    statements: facts.statements.flatMap(wordsOf).map(text => text.toUpperCase()),
    handling: prescribed.filter(isHandling),
    aid: prescribed.filter(each => !isHandling(each)),
    children,
    elsewhere,
  };
}
