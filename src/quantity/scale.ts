import type { Exact } from './exact.ts';
import { compare, compareSum, compareValues, meetsScaled, type Part, scaledBy } from './sum.ts';

/** Told of every comparison that a rule makes: the terms of the sum and the limit that it is held against. */
export type ComparisonObserver = (parts: readonly Part[], limit: number) => void;

/**
 * Where every rule compares. All comparisons are exact; one with an observer tells of each, in order, so that who asks
 * where an outcome would turn need not state a rule again.
 */
export class Scale {
  readonly #tell: ComparisonObserver | null;

  constructor(tell: ComparisonObserver | null = null) {
    this.#tell = tell;
  }

  /** Negative below the limit, 0 equal, positive above. */
  compareSum(parts: readonly Part[], limit: number): number {
    this.#tell?.(parts, limit);
    return compareSum(parts, limit);
  }

  /** Whether a sum reaches the limit. */
  meets(parts: readonly Part[], limit: number): boolean {
    return this.compareSum(parts, limit) >= 0;
  }

  /** Whether a sum times a factor, with another sum added, reaches the limit. */
  meetsScaled(parts: readonly Part[], factor: number, more: readonly Part[], limit: number): boolean {
    this.#tell?.([...scaledBy(parts, factor), ...more], limit);
    return meetsScaled(parts, factor, more, limit);
  }

  /** Compares one value with a limit. */
  compare(value: Exact, limit: number): number {
    this.#tell?.([{ amount: value, weight: 1 }], limit);
    return compare(value, limit);
  }

  /** Whether a value reaches a limit. */
  reaches(value: Exact, limit: number): boolean {
    return this.compare(value, limit) >= 0;
  }

  /** Compares two values; for sorting. */
  compareValues(a: Exact, b: Exact): number {
    this.#tell?.(
      [
        { amount: a, weight: 1 },
        { amount: b, weight: -1 },
      ],
      0,
    );
    return compareValues(a, b);
  }
}

/** A scale that nobody listens to. */
export const quietScale: Scale = new Scale();
