/** Columns of cercla.tsv, in order. */
export const cerclaColumns = [
  /** Empty for a group. */
  'cas',
  'name',
  /** Reportable quantity in pounds. */
  'rq-lb',
  'notes',
  /** `text` where read from the regulation, `memory` where not. */
  'basis',
] as const;

/** Columns of epcra-313.tsv, in order. */
export const toxicChemicalColumns = [
  /** Empty for a category. */
  'cas',
  'name',
  /** `N230` and so on for a category. */
  'category',
  /** `x` for a chemical of special concern (40 CFR 372.28), for which no de minimis concentration holds. */
  'special-concern',
  'notes',
  /** `text`: 40 CFR 372.65 was read; `programme`: data of the agency; `memory`: neither. */
  'basis',
] as const;

/** Columns of prop65.tsv, in order. */
export const prop65Columns = [
  'cas',
  'name',
  /** `cancer;developmental;female;male`; empty for a dose level within a group listing. */
  'toxicity',
  /** AB authoritative body, SQE state's qualified experts, FR formally required, LC labor code. */
  'mechanism',
  /** YYYY-MM-DD */
  'listed-on',
  /** No significant risk level or maximum allowable dose level, micrograms a day. */
  'level-ug-per-day',
  'notes',
] as const;
