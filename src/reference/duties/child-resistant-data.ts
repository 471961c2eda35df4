import data from '../../../hazard-data/us-cpsc/child-resistant.json' with { type: 'json' };

/** One limit of a rule; of several all must be met. */
export interface PackagingLimit {
  /** Percent by weight, percent weight to volume, or milligrams in one package. */
  readonly basis: 'weight' | 'volume' | 'milligrams';
  /** `atLeast`: the law says or more; `above`: more than. */
  readonly comparison: 'atLeast' | 'above';
  readonly value: number;
}

/** A substance of 16 CFR 1700.14(a). */
export interface PackagingRule {
  readonly id: string;
  readonly cite: string;
  readonly group: string;
  readonly forms: readonly string[];
  /** For liquids thinner than 100 Saybolt universal seconds at 100 F alone. */
  readonly lowViscosity?: boolean;
  readonly limits: readonly PackagingLimit[];
  /** What else must hold and composition does not say. */
  readonly conditions: readonly string[];
}

/** The rules with the parts by which substances count; `viscosity` in mm2/s. */
export interface ChildResistantRules {
  readonly rules: readonly PackagingRule[];
  readonly viscosity: number;
  /** CAS number to the part of its mass that counts. */
  readonly groups: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Beginnings of CAS numbers of petroleum streams, and the groups that they belong to. */
  readonly petroleum: { readonly prefixes: readonly string[]; readonly groups: readonly string[] };
}

/** Rules of 16 CFR 1700.14(a) that a maker of chemical products meets. */
export const childResistantRules = (): ChildResistantRules => ({
  rules: data.rules as readonly PackagingRule[],
  viscosity: data.viscosity.squareMillimetresPerSecond,
  petroleum: data.groups.petroleumStreams,
  groups: data.groups.members as ChildResistantRules['groups'],
});
