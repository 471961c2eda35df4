/** A label of a package, by its class or division (49 CFR 172.400(b)). */
export interface HazardLabel {
  /** `8`, `5.1`. */
  readonly class: string;
  /** `CORROSIVE`; null where the table of 172.400(b) has no row for it. */
  readonly name: string | null;
  readonly hazard: 'primary' | 'subsidiary';
  /** Color of its ground, or null where no section was read. */
  readonly color: string | null;
  /** What asks for it, and the section with its design. */
  readonly cite: string;
}

/** A subsidiary label that is left off, with the paragraph that allows it. */
export interface LabelLeftOff {
  readonly class: string;
  readonly why: 'flash-point' | 'beside-4.2' | 'no-row';
  readonly cite: string;
}

/** Labels of a package by highway and rail. */
export interface HazardLabels {
  /**
   * `due`; `excepted` for a limited quantity; `open` where it is not known whether the pack is one, the labels being
   * due otherwise; `none` where the entry asks for none.
   */
  readonly status: 'due' | 'excepted' | 'open' | 'none';
  readonly labels: readonly HazardLabel[];
  readonly leftOff: readonly LabelLeftOff[];
  /** Whether the label of Division 6.1 falls away where corrosion alone makes the material toxic (172.400a(c)). */
  readonly toxicByCorrosion: string | null;
  /** The paragraph by which placards take the place of labels on this packaging; null for a non-bulk one. */
  readonly unlessPlacarded: string | null;
  readonly cite: string;
}
