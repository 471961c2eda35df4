import { nearestNames } from './nearest-names.ts';
import { alike, type NamedSubstance, type SubstanceNames } from './substance-names.ts';

/** A question about what a line of the formula calls its constituent. */
export type NameQuestion =
  | {
      readonly kind: 'name-of-another';
      readonly cas: string;
      /** What the number is called. */
      readonly own: readonly string[];
      /** What the name is known for. */
      readonly others: readonly NamedSubstance[];
    }
  | { readonly kind: 'number-missing'; readonly proposals: readonly NamedSubstance[] };

/**
 * What to ask of a name: where it is known to be that of another number than the one given, and where there is no
 * number and the name, or one like it, is known. A name that no table knows asks nothing.
 */
export function nameQuestion(names: SubstanceNames, name: string, cas: string | null): NameQuestion | null {
  if (cas === null) {
    const called = names.called(name);
    const proposals = called.length > 0 ? called : nearestNames(names, name);
    return proposals.length > 0 ? { kind: 'number-missing', proposals } : null;
  }
  const own = names.namesOf(cas);
  const others = names.called(name);
  if (others.length === 0 || others.some(other => other.cas === cas)) return null;
  // A number that no table knows may be a form of the substance: of a hydrate, an isomer, a cut.
  if (own.length === 0 || own.some(each => alike(each, name))) return null;
  return { kind: 'name-of-another', cas, own, others };
}
