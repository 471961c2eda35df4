import type { LabelModel } from '../../document/label.ts';
import { type Millimetres, toMillimetres } from '../../quantity/length.ts';
import { type FontLibrary, runWidth } from '../../text/glyph-run.ts';
import type { FrameItem, Tag, TextItem } from '../frame.ts';
import type { Stock } from '../stock.ts';
import { barCodeOf } from './bar-code-sizes.ts';
import type { Paragraph } from './content.ts';
import type { LabelLayout } from './layout-label.ts';
import { frameBox } from './red-frames.ts';
import { roleOf } from './roles.ts';
import { LEADING } from './styles.ts';

/** Left, bottom, right, top in millimetres from the lower left corner of the trim. */
export type FactBox = readonly [Millimetres, Millimetres, Millimetres, Millimetres];

export interface TextFact {
  readonly role: string;
  readonly text: string;
  readonly xHeight: Millimetres;
  readonly capHeight: Millimetres;
  /** Base line to base line in times the size. */
  readonly leading: number;
  readonly box: FactBox;
}

export interface PictogramFact {
  readonly code: string;
  /** Of the square, not between its corners. */
  readonly side: Millimetres;
  readonly box: FactBox;
}

export interface BarCodeFact {
  readonly symbology: string;
  readonly number: string;
  readonly x: Millimetres;
  /** Percent. */
  readonly magnification: number;
  /** Of the bars. */
  readonly height: Millimetres;
  /** Left and right. */
  readonly quietZones: readonly [Millimetres, Millimetres];
  readonly turned: boolean;
  readonly box: FactBox;
}

/** What stands on a label and where. */
export interface LabelFacts {
  readonly texts: readonly TextFact[];
  readonly pictograms: readonly PictogramFact[];
  readonly barCode: BarCodeFact | null;
}

/** Measures every text, pictogram and bar code of a finished layout. */
export function labelFacts(
  model: LabelModel,
  { document, content, fitted, barCode, areas }: LabelLayout,
  { die, redFrames = [] }: Stock,
  fonts: FontLibrary,
): LabelFacts {
  const items = document.frames[0]?.items ?? [];
  const byTag = new Map<Tag, FrameItem[]>();
  for (const item of items) {
    if (typeof item.tag === 'string') continue;
    byTag.set(item.tag, [...(byTag.get(item.tag) ?? []), item]);
  }
  const box = (found: readonly FrameItem[]): FactBox => boxOf(found, die.height, fonts);
  const texts = content.sections.flatMap(({ role, paragraphs }) =>
    paragraphs.flatMap((paragraph): TextFact[] => {
      const lines = (byTag.get(paragraph.tag) ?? []).filter((item): item is TextItem => item.kind === 'text');
      const [first] = lines;
      if (!first) return [];
      const metrics = fonts.metrics(first.run.face);
      const em = toMillimetres(first.size) / 1000;
      return [
        {
          role: roleOf(paragraph.style, role),
          text: textOf(paragraph),
          xHeight: rounded(em * metrics.xHeight),
          capHeight: rounded(em * metrics.capHeight),
          leading: LEADING,
          box: box(lines),
        },
      ];
    }),
  );
  const pictograms = content.sections.flatMap(section =>
    section.pictograms.map(({ code, tag }, at): PictogramFact => {
      const frame = redFrames[at];
      const place = frame ? frameBox(frame) : box(byTag.get(tag) ?? []);
      return { code, side: rounded((place[2] - place[0]) / Math.SQRT2), box: place };
    }),
  );
  const area = areas.find(({ role }) => role === 'bar-code');
  const drawn = barCode && byTag.get(barCode.tag);
  if (!barCode || !drawn || !area || !model.gtin) return { texts, pictograms, barCode: null };
  const { turned = false } = area;
  return {
    texts,
    pictograms,
    barCode: {
      ...barCodeOf(barCode, fitted.display.bars, turned),
      number: model.gtin,
      turned,
      box: box(drawn),
    },
  };
}

const rounded = (value: number): number => Number(value.toFixed(3));

/** The words of a paragraph as they are set. */
const textOf = ({ spans }: Paragraph): string =>
  spans
    .map(({ text }) => text)
    .join('')
    .replaceAll('\u2011', '-')
    .replace(/[\u00a0\n]/gu, ' ');

function boxOf(items: readonly FrameItem[], height: Millimetres, fonts: FontLibrary): FactBox {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const item of items) {
    if (item.kind === 'path') {
      for (const [, ...numbers] of item.segments)
        for (const [at, value] of numbers.entries()) (at % 2 === 0 ? xs : ys).push(value);
      continue;
    }
    if (item.kind === 'art') continue;
    const width = runWidth(item.run, item.size);
    const { capHeight, descent } = fonts.metrics(item.run.face);
    const em = toMillimetres(item.size) / 1000;
    const [rise, fall] = [capHeight * em, -descent * em];
    if (item.rotate === 90) {
      xs.push(item.x - rise, item.x + fall);
      ys.push(item.y - width, item.y);
    } else {
      xs.push(item.x, item.x + width);
      ys.push(item.y - rise, item.y + fall);
    }
  }
  return [
    rounded(Math.min(...xs)),
    rounded(height - Math.max(...ys)),
    rounded(Math.max(...xs)),
    rounded(height - Math.min(...ys)),
  ];
}
