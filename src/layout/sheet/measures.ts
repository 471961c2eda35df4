import type { Millimetres, Points } from '../../quantity/length.ts';

export type PaperName = 'letter' | 'a4';

/** Paper sizes: ANSI/ASME Y14.1 size A (US Letter), ISO 216 A4. */
const PAPERS: Readonly<Record<PaperName, readonly [Millimetres, Millimetres]>> = {
  letter: [215.9, 279.4],
  a4: [210, 297],
};

/** A page with its text area and the two columns of the flow. */
export interface PageMeasures {
  readonly width: Millimetres;
  readonly height: Millimetres;
  readonly left: Millimetres;
  readonly top: Millimetres;
  readonly textWidth: Millimetres;
  readonly textHeight: Millimetres;
  /** Width of the column of subheadings, without the gap to the texts. */
  readonly side: Millimetres;
  /** Where the column of texts begins, from the left of the text area, and its width. */
  readonly bodyX: Millimetres;
  readonly bodyWidth: Millimetres;
}

const MARGIN = { side: 17, top: 21, bottom: 20 } as const;
const SIDE = 43;
const GAP = 5;

/** Measures of a page in millimetres. */
export function pageMeasures(paper: PaperName): PageMeasures {
  const [width, height] = PAPERS[paper];
  const textWidth = width - 2 * MARGIN.side;
  return {
    width,
    height,
    left: MARGIN.side,
    top: MARGIN.top,
    textWidth,
    textHeight: height - MARGIN.top - MARGIN.bottom,
    side: SIDE,
    bodyX: SIDE + GAP,
    bodyWidth: textWidth - SIDE - GAP,
  };
}

/** Type scale: size in points, distance of base lines in points. */
export interface TypeStyle {
  readonly size: Points;
  readonly leading: Points;
}

export const TYPE = {
  body: { size: 9.4, leading: 12.2 },
  heading: { size: 9.4, leading: 12.2 },
  table: { size: 8.9, leading: 11.2 },
  note: { size: 8.9, leading: 11.2 },
  section: { size: 11.6, leading: 14 },
  kind: { size: 11, leading: 14 },
  title: { size: 25, leading: 29 },
  running: { size: 8.4, leading: 10.5 },
} as const satisfies Readonly<Record<string, TypeStyle>>;

/** Distances of the flow. */
export const SPACE = {
  section: 5.2,
  afterSection: 1.2,
  padding: 1.1,
  paragraph: 0.9,
  cell: 0.9,
  gutter: 3.2,
  pictogram: 19,
  pictogramGap: 1.4,
  box: 3,
} as const;

export const RULE = { hair: 0.1, thin: 0.25, box: 0.6, block: 1.7 } as const;
