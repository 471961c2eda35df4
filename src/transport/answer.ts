import type { PackingGroup, TableEntry } from '../reference/transport/table-entry.ts';
import type { Fact } from './fact.ts';
import type { Missing } from './finding.ts';
import type { HazardLabels } from './hazard-label.ts';

/** What the exception for limited quantities allows; modes other than air. */
export interface LimitedQuantity {
  /** Null where a fact of the pack is missing. */
  readonly allowed: boolean | null;
  readonly innerLimit: string | null;
  readonly grossLimit: string | null;
  readonly cite: string;
}

/** What one case comes to. */
export interface Outcome {
  readonly answer: 'regulated' | 'not-regulated' | 'undecided';
  readonly entry: TableEntry | null;
  /** Proper shipping name with `solution` or `mixture` where the law asks for it. */
  readonly name: string | null;
  /** Technical names for a generic entry (49 CFR 172.203(k)). */
  readonly technical: readonly string[];
  readonly class: string | null;
  readonly subsidiary: readonly string[];
  readonly packingGroup: PackingGroup | null;
  readonly because: readonly Fact[];
}

/** The answer for one case: what a test could show, or what the shipper may choose. */
export interface Alternative extends Outcome {
  /** The cases that come to it. */
  readonly when: readonly Fact[];
  readonly limitedQuantity: LimitedQuantity | null;
  readonly hazardLabels: HazardLabels | null;
}

/** How a pack of the product is carried, as far as the record decides it. */
export interface TransportAnswer extends Outcome {
  readonly marinePollutant: boolean;
  /** Hazardous substances that reach their reportable quantity in one package, the lowest first (49 CFR 171.8). */
  readonly reportable: readonly string[];
  readonly limitedQuantity: LimitedQuantity | null;
  readonly hazardLabels: HazardLabels | null;
  readonly missing: readonly Missing[];
  readonly alternatives: readonly Alternative[];
}

const groups = (outcome: Outcome): string => outcome.packingGroup ?? '';

/** Whether two outcomes are described alike. */
export const sameOutcome = (a: Outcome, b: Outcome): boolean =>
  a.answer === b.answer &&
  a.entry?.id === b.entry?.id &&
  a.name === b.name &&
  a.class === b.class &&
  a.subsidiary.join() === b.subsidiary.join() &&
  groups(a) === groups(b);

/**
 * The proper shipping name with what stands in parentheses beside it: technical names (49 CFR 172.203(k)) and hazardous
 * substances that the name does not identify (172.203(c)(1), 172.324(a)).
 */
export function nameWithParentheses(
  { name, technical }: Pick<Outcome, 'name' | 'technical'>,
  reportable: readonly string[],
): string {
  const plain = (text: string): string => text.toLowerCase();
  const identified = (substance: string): boolean =>
    plain(name ?? '').includes(plain(substance)) || technical.some(each => plain(each) === plain(substance));
  const beside = [...technical, ...reportable.filter(substance => !identified(substance))];
  return beside.length > 0 ? `${name} (${beside.join(', ')})` : (name ?? '');
}

/**
 * The basic description in the order of 49 CFR 172.202(a) and (b): identification number, proper shipping name with
 * technical names, class with subsidiary hazards, packing group; before it RQ where a package holds a hazardous
 * substance (172.203(c)(2)). Null where there is none.
 */
export function basicDescription(outcome: Outcome, reportable: readonly string[] = []): string | null {
  const { entry, name, class: hazardClass, subsidiary, packingGroup } = outcome;
  if (!entry || name === null || hazardClass === null) return null;
  const shownClass = hazardClass === 'Comb liq' ? 'Combustible liquid' : hazardClass;
  const hazards = subsidiary.length > 0 ? `${shownClass} (${subsidiary.join(', ')})` : shownClass;
  return [
    ...(reportable.length > 0 ? ['RQ'] : []),
    entry.id,
    nameWithParentheses(outcome, reportable),
    hazards,
    ...(packingGroup ? [packingGroup] : []),
  ].join(', ');
}
