/** What a finished file is meant to be. */
export type PreflightProfile =
  | {
      readonly kind: 'label';
      /** Name of the spot ink of the cut line; undefined where the page has none (a panel to drop into artwork). */
      readonly dieInk?: string;
    }
  | { readonly kind: 'sheet' }
  /** A label for a roll printer with black alone. */
  | { readonly kind: 'printer' };
