import environment from '../../hazard-data/claims/environment.json' with { type: 'json' };
import origin from '../../hazard-data/claims/origin.json' with { type: 'json' };
import pesticide from '../../hazard-data/claims/pesticide.json' with { type: 'json' };
import safety from '../../hazard-data/claims/safety.json' with { type: 'json' };
import type { ClaimKind, ClaimVerdict } from './claim.ts';

interface RuleFile {
  readonly kind: string;
  readonly lists: Readonly<Record<string, string>>;
  readonly exempt?: readonly string[];
  readonly negated?: string;
  readonly softened?: string;
  readonly qualified?: string;
  readonly rules: readonly {
    readonly id: string;
    readonly verdict: string;
    readonly cite: string;
    readonly pattern: string;
    readonly against?: readonly string[];
  }[];
}

/** A rule ready to use. */
export interface ClaimRule {
  readonly id: string;
  /** Null where the words are a claim only beside a statement that says otherwise. */
  readonly verdict: ClaimVerdict | null;
  readonly cite: string;
  readonly pattern: RegExp;
  /** Beginnings of the codes of hazard statements that say otherwise; `*` is any. */
  readonly against: readonly string[];
}

/** The rules of one law. */
export interface ClaimRules {
  readonly kind: ClaimKind;
  readonly rules: readonly ClaimRule[];
  /** Spans in which nothing is a claim. */
  readonly exempt: readonly RegExp[];
  /** What before a match takes the claim back. */
  readonly negated: RegExp | null;
  /** What before a match makes a claim a question: words of another step of the work. */
  readonly softened: RegExp | null;
  /** What after a match qualifies it. */
  readonly qualified: RegExp | null;
}

function compiled({ kind, lists, exempt = [], negated, softened, qualified, rules }: RuleFile): ClaimRules {
  const withLists = (pattern: string): string =>
    pattern.replace(/\{([A-Z]+)\}/g, (whole, name: string) => lists[name] ?? whole);
  const filled = (pattern: string): RegExp => new RegExp(withLists(pattern), 'gi');
  return {
    kind: kind as ClaimKind,
    exempt: exempt.map(filled),
    negated: negated ? new RegExp(withLists(negated), 'i') : null,
    softened: softened ? new RegExp(withLists(softened), 'i') : null,
    qualified: qualified ? new RegExp(withLists(qualified), 'i') : null,
    rules: rules.map(({ pattern, against = [], verdict, ...rule }) => ({
      ...rule,
      verdict: verdict === 'none' ? null : (verdict as ClaimVerdict),
      against,
      pattern: filled(pattern),
    })),
  };
}

/** Rules of all laws: 40 CFR 152, 16 CFR 260 and 323, and what contradicts the hazard statements. */
export const claimRules: readonly ClaimRules[] = [pesticide, environment, origin, safety].map(compiled);
