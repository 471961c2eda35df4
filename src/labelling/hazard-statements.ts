import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { StatementText } from '../reference/label-data/statements.ts';
import type { Omission, Statement } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';
import type { ShownHazard } from './shown-hazards.ts';
import { type FieldWords, fillStatement, spokenIn } from './statement-text.ts';

/** Letters of CLP Annex VI (H360FD, H350i) where the basis prescribes only the plain statement. */
const lettered = /^(H\d{3})[A-Za-z]+$/;

/**
 * Hazard statements with organs and routes filled in (C.2.2.1; CLP Article 27; UN GHS 1.4.10.5.3.3), without those
 * that another one conveys, and those that the record omits with a reason (C.2.2.2).
 */
export function hazardStatementsOf(
  shown: readonly ShownHazard[],
  { statements, rules }: LabelData,
  { combineHazardStatements: combine = false, choice, omit = [] }: Partial<LabelledProduct> = {},
): {
  readonly hazardStatements: readonly Statement[];
  readonly omitted: readonly Omission[];
  readonly missing: readonly Omission[];
} {
  const textOf = (code: string): StatementText | undefined =>
    statements.hazard[code] ?? statements.supplemental?.[code];
  const own = (code: string): string => (textOf(code) ? code : (lettered.exec(code)?.[1] ?? code));
  const words = new Map<string, FieldWords>();
  for (const { hazard, row } of shown) {
    const codes = hazard.statements.length > 0 ? hazard.statements : row.statements;
    for (const code of new Set([...codes.map(own), ...extraOf(row.statements, codes)]))
      words.set(code, merged(words.get(code), wordsOf(hazard, textOf(code))));
  }
  const omitted: Omission[] = [];
  for (const { statement, conveys, why, cite, reading } of rules.hazardStatements.conveyedBy) {
    if (!words.has(statement) || !words.has(conveys)) continue;
    if (reading && choice?.(reading.id) === reading.keptBy) continue;
    words.delete(conveys);
    omitted.push({ what: conveys, why: { kind: 'rule', text: why }, cite });
  }
  const { inappropriate } = rules.hazardStatements;
  if (inappropriate)
    for (const { code, reason } of omit)
      if (words.delete(code))
        omitted.push({ what: code, why: { kind: 'record', reason }, cite: inappropriate.cite });
  const codes = [...words.keys()].sort();
  const listed = combine ? combined(codes, Object.keys(statements.hazard)) : codes;
  const missing: Omission[] = [];
  const hazardStatements = listed.flatMap((code): Statement[] => {
    const text = textOf(code);
    const filled = text && fillStatement(text, words.get(code));
    if (filled && 'text' in filled) return [{ code, text: filled.text, ...spokenIn(text) }];
    missing.push({ what: code, why: { kind: 'no-text' }, cite: statements.instrument });
    return [];
  });
  return { hazardStatements, omitted, missing };
}

/** Statements that a row adds to the one that names the category (H229 of aerosols). */
const extraOf = (row: readonly string[], codes: readonly string[]): readonly string[] =>
  row.length > 1 && codes.some(code => row.includes(code)) ? row : [];

function wordsOf(
  { organs, route, harms }: ShownHazard['hazard'],
  text: StatementText | undefined,
): FieldWords {
  return {
    ...(text?.fields?.organs && organs.length > 0 && { organs: [...organs].sort() }),
    ...(text?.fields?.route && route && { route: [route] }),
    ...(text?.fields?.effect && harms && { effect: [harms] }),
  };
}

/** Organs of both; a route only where both have it, since it says that no other route causes the hazard. */
function merged(one: FieldWords | undefined, two: FieldWords): FieldWords {
  if (!one) return two;
  const organs = one.organs && two.organs ? [...new Set([...one.organs, ...two.organs])].sort() : undefined;
  const route = one.route?.[0] === two.route?.[0] ? one.route : undefined;
  const effect = one.effect?.[0] === two.effect?.[0] ? one.effect : undefined;
  return { ...(organs && { organs }), ...(route && { route }), ...(effect && { effect }) };
}

/** H302 and H332 as H302+H332, the longest combinations first. */
function combined(codes: readonly string[], known: readonly string[]): string[] {
  const combinations = known
    .filter(code => code.includes('+'))
    .map(code => ({ code, parts: code.split('+') }))
    .sort((a, b) => b.parts.length - a.parts.length);
  let left = [...codes];
  for (const { code, parts } of combinations)
    if (parts.every(part => left.includes(part)))
      left = [...left.filter(each => !parts.includes(each)), code];
  return left.sort();
}
