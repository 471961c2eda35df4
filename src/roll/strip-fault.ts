import type { Millimetres } from '../quantity/length.ts';

/** Why labels cannot be drawn on the web from a file. */
export type StripFault =
  | { readonly id: 'unreadable' }
  | { readonly id: 'pages'; readonly pages: number }
  | { readonly id: 'size'; readonly width: Millimetres; readonly height: Millimetres };
