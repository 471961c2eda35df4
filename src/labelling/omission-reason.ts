/** Why a statement or pictogram is left off the label, or lacks what it needs; `words/` tells it. */
export type OmissionReason =
  /** A rule of the data gives its own reason, a text of `hazard-data/`. */
  | { readonly kind: 'rule'; readonly text: string }
  /** As `rule`, with the statement that stands in its place. */
  | { readonly kind: 'replaced'; readonly text: string; readonly by: string }
  /** The graver signal word is on the label. */
  | { readonly kind: 'graver-signal-word' }
  | { readonly kind: 'pictogram-shown'; readonly pictogram: string }
  | { readonly kind: 'graver-category'; readonly pictogram: string }
  /** May be left out beside another statement. */
  | { readonly kind: 'beside'; readonly statement: string }
  /** Every part stands in other statements. */
  | { readonly kind: 'repeated' }
  /** The record omits it and says why. */
  | { readonly kind: 'record'; readonly reason: string }
  /** Lower in the order of priority than the set that is proposed. */
  | { readonly kind: 'beyond-proposal'; readonly most: number }
  /** The basis has no text for it. */
  | { readonly kind: 'no-text' }
  /** The allocation table has no row for the hazard. */
  | { readonly kind: 'no-row' }
  /** The law leaves words to the maker; `key` of the record holds them. */
  | { readonly kind: 'needs-words'; readonly key: string; readonly fields: readonly string[] };
