import type { Art } from '../artwork/art.ts';
import type { ArtifactKind, Frame, FrameItem, LayerName, Tag, TextItem } from '../layout/frame.ts';
import { type Box, ContentWriter } from './content-writer.ts';
import type { EmbeddedFonts } from './font.ts';
import { CODER_LAYER, DIE_LAYER, DRAFT_LAYER, EYE_MARK_LAYER } from './layer.ts';
import type { PdfProfile } from './profile.ts';

/** One stretch of tagged content on a page. */
export interface Mark {
  readonly tag: Tag;
  /** Counts from 0. */
  readonly page: number;
  readonly id: number;
  readonly text: string;
  readonly box: Box;
}

export interface PageContent {
  readonly operators: string;
  readonly marks: readonly Mark[];
}

const isTag = (tag: Tag | ArtifactKind): tag is Tag => typeof tag !== 'string';

const ARTIFACT: Readonly<Record<ArtifactKind, string>> = {
  layout: '<</Type /Layout>>',
  background: '<</Type /Layout>>',
  header: '<</Type /Pagination /Subtype /Header /Attached [/Top]>>',
  footer: '<</Type /Pagination /Subtype /Footer /Attached [/Bottom]>>',
};
const PRODUCTION_AID = '<</Type /Page>>';

// After these a line may end inside a word or a code, where no space belongs.
const JOINING_END = /[-/+–—\s]$/u;

const TECHNICAL = { die: 'cut-line', coder: 'coder-window' } as const;

const LAYERS: Readonly<Partial<Record<LayerName, string>>> = {
  die: DIE_LAYER,
  draft: DRAFT_LAYER,
  'eye-mark': EYE_MARK_LAYER,
  coder: CODER_LAYER,
};

/** Neighbours that share tag, layer and kind of artifact. */
const grouped = (items: readonly FrameItem[]): FrameItem[][] => {
  const groups: FrameItem[][] = [];
  for (const item of items) {
    const last = groups.at(-1);
    const same = last?.[0] && last[0].tag === item.tag && last[0].layer === item.layer;
    if (same) last.push(item);
    else groups.push([item]);
  }
  return groups;
};

/** Items that end a line of tagged text, after which a word space is set so that words stay apart. */
const lineEnds = (items: readonly FrameItem[]): Set<TextItem> => {
  const texts = items.filter((item): item is TextItem => item.kind === 'text' && isTag(item.tag));
  const ends = texts.filter((item, index) => {
    const next = texts[index + 1];
    const sameLine = next && next.rotate === item.rotate && Math.abs(next.y - item.y) < 1e-6;
    return !sameLine && !JOINING_END.test(item.run.text) && item.run.text !== '';
  });
  return new Set(ends);
};

/**
 * Translates a frame into the content of a page: artwork in the given order, the cut line last, everything either
 * tagged or an artifact.
 * @throws Error where an item asks for what its layer or the profile does not allow
 */
export const pageContent = (
  frame: Frame,
  page: number,
  profile: PdfProfile,
  fonts: EmbeddedFonts,
  art: ReadonlyMap<Art, string> = new Map(),
): PageContent => {
  for (const item of frame.items) {
    if (item.kind === 'art') continue;
    const has = (ink: 'die' | 'coder') =>
      item.kind === 'text' ? item.ink === ink : item.fill === ink || item.stroke === ink;
    for (const technical of ['die', 'coder'] as const)
      if (has(technical) !== (item.layer === technical))
        throw new Error(
          `the ${TECHNICAL[technical]} ink belongs on the ${TECHNICAL[technical]} layer, and nothing else does`,
        );
  }
  const writer = new ContentWriter(frame, profile, fonts, art);
  const artwork = frame.items.filter(({ layer }) => layer !== 'die');
  const die = frame.items.filter(({ layer }) => layer === 'die');
  const spaced = lineEnds(artwork);
  const marks: Mark[] = [];
  for (const group of grouped([...artwork, ...die])) {
    const { tag, layer } = group[0]!;
    if (isTag(tag)) {
      const text = group.map(item =>
        item.kind === 'text' ? item.run.text + (spaced.has(item) ? ' ' : '') : '',
      );
      marks.push({ tag, page, id: marks.length, text: text.join(''), box: writer.box(group) });
      writer.put(`/${tag.type} <</MCID ${marks.length - 1}>> BDC`);
    } else {
      writer.put(`/Artifact ${layer === 'die' || layer === 'coder' ? PRODUCTION_AID : ARTIFACT[tag]} BDC`);
    }
    // A printer with black alone has no layers: what lies on one is printed.
    const onLayer = (layer && profile.kind === 'label' && LAYERS[layer]) || null;
    if (onLayer) writer.put(`/OC /${onLayer} BDC`);
    let texts: TextItem[] = [];
    const flush = () => {
      if (texts.length > 0) writer.texts(texts, spaced);
      texts = [];
    };
    for (const item of group) {
      if (item.kind === 'text') texts.push(item);
      else {
        flush();
        if (item.kind === 'art') writer.art(item);
        else writer.path(item);
      }
    }
    flush();
    if (onLayer) writer.put('EMC');
    writer.put('EMC');
  }
  return { operators: writer.operators, marks };
};
