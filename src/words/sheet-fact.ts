/** What is to be told of labels on a sheet; lengths in millimetres. */
export type SheetFact =
  | {
      readonly id: 'over-the-page';
      readonly side: 'width' | 'height';
      readonly labels: number;
      readonly page: number;
    }
  | {
      readonly id: 'over-each-other';
      readonly side: 'width' | 'height';
      readonly pitch: number;
      readonly label: number;
    }
  | { readonly id: 'no-artwork' }
  | { readonly id: 'near-the-edge'; readonly edge: number; readonly least: number }
  | { readonly id: 'no-window' };
