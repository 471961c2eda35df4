import type { SupplyPackagingFinding } from '../duties/supply-packaging.ts';

/** A container whose capacity decides a row of sizes. */
export interface CapacityFact {
  /** Litres; of the contents where the record gives no capacity. */
  readonly litres: number;
  /** Litres up to which the row holds; null for the last. */
  readonly upTo: number | null;
}

/** What is said of a label for supply in the European Union beside what stands on it. */
export interface SupplyWords {
  /** The record names no supplier in the Union. */
  noSupplier(): string;
  /** Neither capacity nor contents give a volume, which decides the sizes. */
  noCapacity(): string;
  /** The capacity was taken from the contents, which come near the end of a row. */
  nearRow(fact: CapacityFact): string;
  noUfi(): string;
  /** In which language the label is. */
  language(language: string): string;
  /** More substances than suffice as a rule. */
  names(count: number, enough: number): string;
  /** Substances are due and the classification names none. */
  noNames(): string;
  /** Substances that are named because they are in a class by themselves that rests on the mixture. */
  proposedNames(names: readonly string[]): string;
  /** A substance that the label must name and the record keeps secret. */
  secret(): string;
  /** Letters that are asked from a day on, beside the least on the label. */
  letters(from: string, asked: number, found: number): string;
  /** Pictograms under the side to be reached if possible, in millimetres. */
  pictograms(side: number, wanted: number): string;
  /** A label under the sides to be reached if possible, in millimetres. */
  small(sides: readonly [number, number]): string;
  plain(): string;
  /** The label was made by Article 29, with the reason of the maker. */
  smallPackage(take: 'reduced' | 'inner', reason: string): string;
  /** More than the volume up to which statements may be left out, in litres. */
  notSmall(litres: number, most: number): string;
  packaging(finding: SupplyPackagingFinding, said: boolean | null): string;
  /** Whether the public buys it is not in the record. */
  packagingOpen(finding: SupplyPackagingFinding): string;
  tank: {
    /** Precautions were left out for want of room. */
    withoutPrecautions(): string;
    /** What the label is and is not. */
    scope(): string;
  };
}
