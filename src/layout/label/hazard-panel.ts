import type { Millimetres } from '../../quantity/length.ts';
import { type Box, empty, move, named, overlay, rule, stack } from './box.ts';
import type { Section } from './content.ts';
import { clusters } from './pictogram-cluster.ts';
import { paragraphsBox, type Setting, TooNarrow } from './text-block.ts';

/** Narrowest text beside pictograms, in heights of the x. */
const LEAST_MEASURE = 16;

/**
 * Pictograms, signal word, hazard statements and supplemental text, located together (29 CFR 1910.1200(f)(3)).
 * The pictograms stand beside the text or above it, whichever is lower.
 * @throws TooNarrow where neither fits
 */
export function hazardPanel(section: Section, width: Millimetres, setting: Setting, frame: number): Box {
  const { measures } = setting;
  const gap = measures.gap;
  const candidates: Box[] = [];
  for (const cluster of clusters(section.pictograms, measures.pictogram, frame)) {
    if (cluster.width > width) continue;
    const room = width - cluster.width - (cluster.width > 0 ? gap : 0);
    if (room >= LEAST_MEASURE * measures.xHeight) {
      attempt(candidates, () => beside(cluster, textBox(section, room, setting), gap));
    }
    if (cluster.height > 0) {
      attempt(candidates, () => stack([cluster, textBox(section, width, setting)], gap));
    }
  }
  const lowest = candidates.sort((a, b) => a.height - b.height)[0];
  if (!lowest) throw new TooNarrow();
  const heavy = rule(width, measures.heavy);
  const thin = rule(width, measures.thin);
  return named('hazard', { ...stack([heavy, { ...lowest, width }, thin], gap * 0.8), width });
}

function attempt(candidates: Box[], make: () => Box): void {
  try {
    candidates.push(make());
  } catch (error) {
    if (!(error instanceof TooNarrow)) throw error;
  }
}

function beside(cluster: Box, text: Box, gap: Millimetres): Box {
  const height = Math.max(cluster.height, text.height);
  const x = cluster.width > 0 ? cluster.width + gap : 0;
  const boxes = [
    move(cluster, 0, (height - cluster.height) / 2),
    move(text, x, text.height < cluster.height ? (height - text.height) / 2 : 0),
  ];
  return overlay(boxes, x + text.width, height);
}

function textBox({ paragraphs }: Section, width: Millimetres, setting: Setting): Box {
  return paragraphs.length === 0 ? empty : paragraphsBox(paragraphs, width, setting);
}
