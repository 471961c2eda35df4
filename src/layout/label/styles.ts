import type { FaceName } from '../../text/glyph-run.ts';

export type StyleName =
  | 'name'
  | 'tagline'
  | 'signal'
  | 'statement'
  | 'supplemental'
  | 'heading'
  | 'body'
  | 'condition'
  | 'item'
  | 'quantity'
  | 'hazard'
  | 'poison'
  | 'notice'
  | 'declaration'
  | 'code'
  | 'caption';

/** The five sizes of type of a label, in times the running text. */
export const SIZES = { text: 1, lead: 1.25, medium: 1.6, large: 2.5, display: 4 } as const;

export interface Style {
  /** In times the running text; one of `SIZES`. */
  readonly factor: number;
  /** Face of the whole paragraph where it is not running text. */
  readonly face: FaceName | null;
  /** Lines after the first are set in, so that the first word stands out. */
  readonly hanging: boolean;
}

/** Base line to base line in times the size: the 120 % of Regulation (EU) 2024/2865, good for all sizes. */
export const LEADING = 1.2;

const { text, lead, medium, large } = SIZES;

/** The type scale of the label. */
export const STYLES: Readonly<Record<StyleName, Style>> = {
  name: { factor: large, face: 'bold', hanging: false },
  tagline: { factor: lead, face: 'italic', hanging: false },
  signal: { factor: large, face: 'bold', hanging: false },
  statement: { factor: lead, face: 'bold', hanging: false },
  supplemental: { factor: text, face: null, hanging: false },
  heading: { factor: text, face: 'bold', hanging: false },
  body: { factor: text, face: null, hanging: false },
  condition: { factor: text, face: null, hanging: true },
  item: { factor: text, face: null, hanging: false },
  quantity: { factor: medium, face: 'bold', hanging: false },
  hazard: { factor: medium, face: 'bold', hanging: false },
  poison: { factor: large, face: 'bold', hanging: false },
  notice: { factor: text, face: 'bold', hanging: false },
  declaration: { factor: large, face: 'bold', hanging: false },
  code: { factor: text, face: null, hanging: false },
  caption: { factor: text, face: null, hanging: false },
};
