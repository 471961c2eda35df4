import type { SheetKey } from './sheet-keys.ts';

/** The maker's texts in another language; what is absent stays as the record is written. */
export interface Translation {
  readonly use: string | null;
  readonly advisedAgainst: readonly string[];
  readonly appearance: {
    readonly color: string | null;
    readonly odor: string | null;
    readonly physicalState: string | null;
  };
  readonly tagline: string | null;
  readonly directions: readonly string[];
  readonly sheet: Readonly<Partial<Record<SheetKey, string>>>;
  /** Names of constituents, by CAS number or by name. */
  readonly ingredients: Readonly<Record<string, string>>;
}
