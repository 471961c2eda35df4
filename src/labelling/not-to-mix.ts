import type { Classification } from '../classify/classification.ts';
import type { LabelRules } from '../reference/label-data/rules.ts';
import type { Omission, Proposed, Statement } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';

/**
 * Lines that tell what the product must not be mixed with in use, one for each danger: the user's mixing can be foreseen
 * (29 CFR 1910.1200(d)(1)(ii)), and supplemental information is the maker's (App. C, C.3.1; CLP Article 25(3)). They are
 * proposed; the record keeps them (`keep`) or leaves them out with a reason (`omit`).
 * @param called codes of the supplemental statements that stand besides.
 */
export function notToMix(
  { warnings }: Pick<Classification, 'warnings'>,
  { notToMix: rule }: LabelRules,
  { keep = [], omit = [] }: LabelledProduct,
  called: readonly string[],
): {
  readonly lines: readonly Statement[];
  readonly proposed: readonly Proposed[];
  readonly omitted: readonly Omission[];
} {
  const groups = warnings.flatMap(warning => (warning.id === 'reactive-alone' ? warning.groups : []));
  if (groups.length === 0) return { lines: [], proposed: [], omitted: [] };
  const { code, cite, coveredBy } = rule;
  const covering = coveredBy.find(each => called.includes(each));
  const reason = omit.find(each => each.code === code)?.reason;
  if (covering || reason !== undefined) {
    const why = covering
      ? ({ kind: 'beside', statement: covering } as const)
      : ({ kind: 'record', reason: reason! } as const);
    return { lines: [], proposed: [], omitted: [{ what: code, why, cite }] };
  }
  const said = (term: string): string => rule.terms?.[term] ?? term;
  const texts = groups.map(({ with: others, gives }) =>
    rule.text.replace('{with}', said(others)).replace('{gives}', said(gives)),
  );
  const lines = [...new Set(texts)].map(text => ({ code, text }));
  return {
    lines,
    proposed: keep.includes(code) ? [] : lines.map(line => ({ ...line, cite })),
    omitted: [],
  };
}
