import type { Millimetres } from '../../quantity/length.ts';
import { bordered, borderOf } from './border.ts';
import { type Box, empty, named, overlay, rule, stack } from './box.ts';
import type { Section } from './content.ts';
import { gapOf, type Making } from './parts.ts';
import { clusters } from './pictogram-cluster.ts';
import { passage, stackLines, textBox } from './text-block.ts';

/** Narrowest text beside pictograms, in heights of the x. */
const LEAST_MEASURE = 17;

/**
 * Pictograms, signal word, hazard statements and supplemental text, located together (29 CFR 1910.1200(f)(3)).
 * The pictograms stand beside the text, in line with its top, or above it, whichever is lower. Null where neither
 * fits.
 * Readers of the file take text in the order of blocks that stand side by side: a tall gap in one column, where
 * pictograms stand above, lets them read the next column first. `display.beside` leaves that arrangement out.
 */
export function hazardPanel(section: Section, width: Millimetres, making: Making): Box | null {
  const { measures, display, parts } = making;
  const inner = parts.type?.bordered ? width - 2 * borderOf(making) : width;
  if (inner <= 0) return null;
  const gap = measures.gap;
  let lowest: Box | null = null;
  const consider = (box: Box | null) => {
    if (box && (!lowest || box.height < lowest.height - 1e-9)) lowest = box;
  };
  const size = measures.pictogram * display.pictogram;
  const { pictogram, dpi } = parts.profile;
  const frame = { part: pictogram.frame, ink: dpi === undefined ? ('red' as const) : ('black' as const) };
  for (const cluster of clusters(section.pictograms, size, frame)) {
    if (cluster.width > inner) continue;
    const room = inner - cluster.width - (cluster.width > 0 ? gap : 0);
    if (room >= LEAST_MEASURE * measures.xHeight || cluster.width === 0)
      consider(beside(cluster, statements(section, room, making), gap));
    if (cluster.height > 0 && !display.beside)
      consider(above(cluster, statements(section, inner, making), inner, making));
  }
  const found = lowest as Box | null;
  if (!found) return null;
  if (parts.type?.bordered) return named('hazard', bordered(found, width, making));
  const panel = stack(
    [rule(width, measures.heavy), { ...found, width }, rule(width, measures.thin)],
    Math.min(gapOf(making), measures.gap * 1.4) * 0.8,
  );
  return named('hazard', { ...panel, width });
}

function beside(cluster: Box, text: Box | null, gap: Millimetres): Box | null {
  if (!text) return null;
  const x = cluster.width > 0 ? cluster.width + gap : 0;
  return overlay(
    [
      { box: cluster, x: 0, y: 0 },
      { box: text, x, y: 0 },
    ],
    x + text.width,
    Math.max(cluster.height, text.height),
  );
}

function above(
  cluster: Box,
  text: Box | null,
  width: Millimetres,
  { measures, centred }: Making,
): Box | null {
  if (!text) return null;
  const placed = overlay(
    [{ box: cluster, x: centred ? (width - cluster.width) / 2 : 0, y: 0 }],
    width,
    cluster.height,
  );
  return stack([placed, text], measures.gap * 0.8);
}

/** Signal word and statements, set a little apart. */
function statements({ paragraphs }: Section, width: Millimetres, making: Making): Box | null {
  if (paragraphs.length === 0) return empty;
  const boxes: Box[] = [];
  for (const paragraph of paragraphs) {
    const box = textBox(passage(paragraph, making.fonts), width, making);
    if (!box) return null;
    boxes.push(box);
  }
  return stackLines(boxes, making);
}
