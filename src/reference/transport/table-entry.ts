import type { PercentRange } from './percent-range.ts';

export type PackingGroup = 'I' | 'II' | 'III';

/** A row of the Hazardous Materials Table (49 CFR 172.101). */
export interface TableEntry {
  /** Column 1: `+`, `A`, `D`, `G`, `I`, `W`. */
  readonly symbols: readonly string[];
  /** Column 2 as printed, with the words in italics. */
  readonly description: string;
  /** Proper shipping names: the words in Roman type, alternatives apart. */
  readonly names: readonly string[];
  /** Column 3: class or division, `Forbidden` or `Comb liq`. */
  readonly hazardClass: string;
  /** Column 4: `UN1791`; empty for a forbidden material. */
  readonly id: string;
  /** Column 5; null where the entry has none. */
  readonly packingGroup: PackingGroup | null;
  /** Column 6 without the primary hazard. */
  readonly subsidiary: readonly string[];
  /** Whether Column 6 asks for a label; it prints `None` where it asks for none. */
  readonly labelled: boolean;
  readonly specialProvisions: readonly string[];
  /** Column 8A: sections of part 173 with exceptions. */
  readonly exceptions: readonly string[];
  /** Column 9A and 9B: quantity limits aboard passenger and cargo aircraft, as printed. */
  readonly aircraft: { readonly passenger: string; readonly cargo: string };
  /** Column 10A and 10B: stowage category aboard vessels and provisions beside it, as printed. */
  readonly vessel: { readonly stowage: string; readonly other: string };
  /** Column 8C: sections of part 173 on bulk packagings; empty where the table authorizes none. */
  readonly bulkSections: readonly string[];
  /** Percent of the substance that the description states. */
  readonly range: PercentRange | null;
}
