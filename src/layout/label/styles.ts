import type { FaceName } from '../../text/glyph-run.ts';

export type StyleName =
  | 'name'
  | 'tagline'
  | 'signal'
  | 'statement'
  | 'supplemental'
  | 'heading'
  | 'body'
  | 'item'
  | 'quantity'
  | 'code'
  | 'caption'
  | 'draft';

export interface Style {
  /** How strongly the style grows with the display size: 0 not at all, 1 in proportion. */
  readonly display: number;
  /** Times the size of running text; never below 1, so that nothing falls under the least size. */
  readonly factor: number;
  /** Face of the whole paragraph where it is not running text. */
  readonly face: FaceName | null;
  /** Distance of base lines in times the size. */
  readonly leading: number;
}

/** The type scale of the label. */
export const STYLES: Readonly<Record<StyleName, Style>> = {
  name: { display: 1, factor: 2.4, face: 'bold', leading: 1.06 },
  tagline: { display: 0.6, factor: 1.2, face: 'italic', leading: 1.18 },
  signal: { display: 0.9, factor: 2.1, face: 'bold', leading: 1.1 },
  statement: { display: 0.55, factor: 1.12, face: 'bold', leading: 1.16 },
  supplemental: { display: 0.3, factor: 1, face: null, leading: 1.18 },
  heading: { display: 0, factor: 1.12, face: 'bold', leading: 1.18 },
  body: { display: 0, factor: 1, face: null, leading: 1.18 },
  item: { display: 0, factor: 1, face: null, leading: 1.18 },
  quantity: { display: 0.7, factor: 1.5, face: 'bold', leading: 1.15 },
  code: { display: 0, factor: 1, face: null, leading: 1.18 },
  caption: { display: 0, factor: 1, face: null, leading: 1.18 },
  draft: { display: 0, factor: 1, face: 'bold', leading: 1.18 },
};

/** Size of a style in times the running text at a display size. */
export const factorOf = (style: StyleName, display: number): number =>
  STYLES[style].factor * (1 + (display - 1) * STYLES[style].display);
