/** Groups of precautionary statements that the allocation tables keep apart. */
export type AllocatedGroup = 'prevention' | 'response' | 'storage' | 'disposal';

export const allocatedGroups: readonly AllocatedGroup[] = ['prevention', 'response', 'storage', 'disposal'];

/** A precautionary statement as one row of the table calls for it. */
export interface AllocatedStatement {
  /** `P280`, `P301+P310`. */
  readonly code: string;
  /** Conditions of use; all must hold. Ids of `AllocationFile.conditions`. */
  readonly when?: readonly string[];
  /** Options that this row names for the fields of the statement. */
  readonly fields?: Readonly<Record<string, readonly string[]>>;
}

/** A source of a row and whether it says the same. */
export interface AllocationSource {
  readonly source: string;
  readonly agrees: boolean;
  readonly where?: string;
  /** Which of two independent readings names the source. */
  readonly reading?: 1 | 2;
}

/** A point on which two readings of the table differ, and what was taken. */
export interface Disagreement {
  readonly field: string;
  readonly first: unknown;
  readonly second: unknown;
  readonly taken: 'first' | 'second';
  readonly why: string;
}

/** Label elements of one hazard class and category. */
export interface AllocationRow {
  /** In the notation of the classification: `Acute Tox. 4 (oral)`, `STOT SE 3 (narcotic effects)`, `Flam. Liq. 2`. */
  readonly hazard: string;
  /** Keys of the hazard statements. */
  readonly statements: readonly string[];
  readonly signalWord: 'Danger' | 'Warning' | null;
  readonly pictograms: readonly string[];
  readonly precautions: Readonly<Record<AllocatedGroup, readonly AllocatedStatement[]>>;
  readonly sources: readonly AllocationSource[];
  /** `text-read`: the codes were read in a table of law; `mapped`: carried over from another revision; `from-memory`. */
  readonly confidence: 'text-read' | 'mapped' | 'inferred' | 'from-memory';
  readonly disagreements?: readonly Disagreement[];
  readonly notes?: readonly string[];
}

export interface AllocationFile {
  readonly instrument: string;
  readonly cite: string;
  readonly checkedOn: string;
  /** Conditions of use in words, by id. */
  readonly conditions: Readonly<Record<string, string>>;
  /** Hazards that read the row of another one. */
  readonly aliases: Readonly<Record<string, string>>;
  readonly rows: readonly AllocationRow[];
}
