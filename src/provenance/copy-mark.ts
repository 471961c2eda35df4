/**
 * Who may read a document: `distribution` may leave the shop and discloses what section 3 of the sheet discloses;
 * `review` carries reasons, formula and doubts.
 */
export type CopyKind = 'distribution' | 'review';

/** What every document says of itself in its metadata. */
export interface CopyMark {
  readonly kind: CopyKind;
  /** Fingerprint of the inputs, 64 hexadecimal digits; the same in every document made from the same inputs. */
  readonly fingerprint: string;
}
