import type { Exact } from '../quantity/exact.ts';
import { compare, compareSum, type Part, sumOf } from '../quantity/sum.ts';
import type {
  ChildResistantRules,
  PackagingLimit,
  PackagingRule,
} from '../reference/duties/child-resistant-data.ts';

/** What the rules ask of a product and its pack. */
export interface PackagedProduct {
  readonly form: 'liquid' | 'solid' | 'gas' | 'aerosol';
  readonly constituents: readonly {
    readonly name: string;
    readonly cas: string | null;
    /** Percent by weight; the higher end of a range. */
    readonly high: Exact;
    readonly water: boolean;
  }[];
  /** mm2/s at 40 C; null where not measured. */
  readonly viscosity: Exact | null;
  /** g/mL; null where not known. */
  readonly density: Exact | null;
  /** Net contents of one package in grams; null where not known. */
  readonly grams: number | null;
  /** Whether it is sold to households; null where the record does not say. */
  readonly household: boolean | null;
}

/** How one rule of 16 CFR 1700.14(a) stands for a product. */
export interface PackagingFinding {
  readonly id: string;
  readonly cite: string;
  /** `required` where composition and viscosity meet the rule; its conditions still stand beside it. */
  readonly outcome: 'required' | 'not-required' | 'open';
  /** Constituents that count, with their percent. */
  readonly terms: readonly { readonly name: string; readonly percent: number }[];
  readonly limits: readonly (PackagingLimit & { readonly found: number | null })[];
  /** What else must hold for the rule: `household`, `nonemulsion`, `free`, a use. */
  readonly conditions: readonly string[];
  /** What would decide it: `viscosity`, `density`, `contents`, or names of constituents that may count. */
  readonly missing: readonly string[];
}

/**
 * Child-resistant packaging (16 CFR 1700.14(a)): each rule whose substance the product holds, or may hold in a
 * constituent without a CAS number. Empty for a product that is not sold to households.
 */
export function childResistant(
  product: PackagedProduct,
  { rules, viscosity, groups, petroleum }: ChildResistantRules,
): readonly PackagingFinding[] {
  if (product.household === false) return [];
  return rules
    .filter(({ forms }) => forms.includes(product.form))
    .flatMap(rule => {
      const members = groups[rule.group] ?? {};
      const streams = petroleum.groups.includes(rule.group) ? petroleum.prefixes : [];
      const part = (cas: string): number | null =>
        members[cas] ?? (streams.some(prefix => cas.startsWith(prefix)) ? 1 : null);
      const found = examine(product, rule, part, viscosity);
      return found ? [found] : [];
    });
}

function examine(
  product: PackagedProduct,
  rule: PackagingRule,
  /** The part of its mass by which a substance counts; null where it does not. */
  partOf: (cas: string) => number | null,
  viscosity: number,
): PackagingFinding | null {
  const counting = product.constituents.filter(({ cas }) => cas !== null && partOf(cas) !== null);
  const unknown = product.constituents.filter(({ cas, water }) => cas === null && !water);
  if (counting.length === 0 && unknown.length === 0) return null;
  const sure = counting.map((part): Part => ({ amount: part.high, weight: partOf(part.cas!)! }));
  const atMost = [...sure, ...unknown.map((part): Part => ({ amount: part.high, weight: 1 }))];
  const verdicts = rule.limits.map(limit => verdict(product, limit, sure, atMost));
  const thin = rule.lowViscosity ? isThin(product.viscosity, viscosity) : true;
  const missing = verdicts.flatMap(({ missing: each }) => each);
  const excluded = verdicts.some(({ met }) => met === false) || thin === false;
  // A substance that no known constituent holds, and that the unknown ones could not bring to the limit.
  if (excluded && counting.length === 0) return null;
  const byUnknown = verdicts.some(({ met, onlyWithUnknown }) => met === null && onlyWithUnknown);
  return {
    id: rule.id,
    cite: rule.cite,
    outcome: excluded
      ? 'not-required'
      : verdicts.some(({ met }) => met === null) || thin === null
        ? 'open'
        : 'required',
    terms: counting.map(({ name, high }) => ({ name, percent: high.value })),
    limits: rule.limits.map((limit, at) => ({ ...limit, found: verdicts[at]!.found })),
    conditions: rule.conditions.filter(name => !(name === 'household' && product.household === true)),
    missing: excluded
      ? []
      : [
          ...new Set([
            ...missing,
            ...(thin === null ? ['viscosity'] : []),
            ...(byUnknown ? unknown.map(({ name }) => name) : []),
          ]),
        ],
  };
}

const isThin = (measured: Exact | null, limit: number): boolean | null =>
  measured === null ? null : compare(measured, limit) < 0;

interface Verdict {
  readonly met: boolean | null;
  readonly found: number | null;
  readonly missing: readonly string[];
  readonly onlyWithUnknown: boolean;
}

function verdict(
  product: PackagedProduct,
  { basis, comparison, value }: PackagingLimit,
  sure: readonly Part[],
  atMost: readonly Part[],
): Verdict {
  const factor =
    basis === 'weight'
      ? 1
      : basis === 'volume'
        ? (product.density?.value ?? null)
        : product.grams === null
          ? null
          : product.grams * 10;
  if (factor === null) {
    const missing = [basis === 'volume' ? 'density' : 'contents'];
    return { met: null, found: null, missing, onlyWithUnknown: false };
  }
  const scaled = (parts: readonly Part[]) => parts.map(part => ({ ...part, weight: part.weight * factor }));
  const reaches = (parts: readonly Part[]): boolean => {
    const difference = compareSum(scaled(parts), value);
    return comparison === 'atLeast' ? difference >= 0 : difference > 0;
  };
  const found = sumOf(scaled(sure));
  if (reaches(sure)) return { met: true, found, missing: [], onlyWithUnknown: false };
  return reaches(atMost)
    ? { met: null, found, missing: [], onlyWithUnknown: true }
    : { met: false, found, missing: [], onlyWithUnknown: false };
}
