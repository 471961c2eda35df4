import { SaxesParser, type SaxesTagNS } from 'saxes';
import { readMeasure } from '../quantity/measure.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import { fail, type Outcome, succeed } from '../report/diagnostic.ts';
import { GEOMETRY, outlineOfShape, transformed } from './_svg-shape.ts';
import { INITIAL, SvgFault, type SvgStyle, styled } from './_svg-style.ts';
import type { DrawingArt, DrawnShape, Matrix } from './art.ts';

const SVG = 'http://www.w3.org/2000/svg';

/** Elements that draw nothing, with all that is in them. */
const SILENT = ['title', 'desc', 'metadata', 'defs'];
/** Attributes that draw nothing. */
const INERT_ATTRIBUTE = /^(?:id|class|version|baseProfile|role|lang|tabindex|focusable|data-.*|aria-.*)$/;

/** CSS Values 4, 6.2: 96 pixels are one inch. */
const MM_PER_PIXEL = 25.4 / 96;

interface Level {
  readonly style: SvgStyle;
  readonly matrix: Matrix;
  /** Draws nothing. */
  readonly silent: boolean;
}

const OUTERMOST: Level = { style: INITIAL, matrix: [1, 0, 0, 1, 0, 0], silent: false };

type Attributes = Readonly<Record<string, string>>;

class Reader {
  readonly shapes: DrawnShape[] = [];
  readonly levels: Level[] = [];
  view: DrawingArt['view'] | null = null;
  size: DrawingArt['size'] = null;
  /** Colors of a screen were converted. */
  converted = false;

  open(tag: SaxesTagNS): void {
    const around = this.levels.at(-1) ?? OUTERMOST;
    const foreign = tag.uri !== SVG;
    if (!foreign && (tag.local === 'style' || tag.local === 'script'))
      throw new SvgFault(`the element \`${tag.local}\``);
    if (foreign && this.levels.length === 0)
      throw new SvgFault(`the element \`${tag.name}\`, which is no SVG`);
    if (around.silent || foreign || SILENT.includes(tag.local)) {
      this.levels.push({ ...around, silent: true });
      return;
    }
    const outermost = this.levels.length === 0;
    const geometry = GEOMETRY[tag.local];
    if (!(outermost ? tag.local === 'svg' : tag.local === 'g' || geometry))
      throw new SvgFault(`the element \`${tag.local}\``);
    // Attributes of other name spaces are notes of editors, but for links, which only refused elements have.
    const attributes: Attributes = Object.fromEntries(
      Object.values(tag.attributes)
        .filter(({ uri, name }) => uri === '' && !name.startsWith('xmlns'))
        .map(({ local, value }) => [local, value]),
    );
    const own = outermost
      ? ['width', 'height', 'viewBox', 'preserveAspectRatio', 'x', 'y']
      : (geometry ?? []);
    const level = this.#level(around, attributes, own);
    this.levels.push(level);
    if (outermost) this.#frame(attributes);
    else if (geometry) this.#draw(outlineOfShape(tag.local, attributes), level);
  }

  #level(around: Level, attributes: Attributes, own: readonly string[]): Level {
    let { style, matrix } = around;
    const set = (name: string, value: string) => {
      const changed = styled(style, name, value, () => {
        this.converted = true;
      });
      if (!changed) throw new SvgFault(`the attribute \`${name}\``);
      style = changed;
    };
    for (const [name, value] of Object.entries(attributes)) {
      if (own.includes(name) || INERT_ATTRIBUTE.test(name) || name === 'style') continue;
      if (name === 'transform') matrix = transformed(value, matrix);
      else set(name, value);
    }
    // What `style` says goes before attributes.
    for (const declaration of (attributes.style ?? '').split(';')) {
      const at = declaration.indexOf(':');
      if (at > 0) set(declaration.slice(0, at).trim().toLowerCase(), declaration.slice(at + 1));
      else if (declaration.trim() !== '') throw new SvgFault(`\`style="${declaration.trim()}"\``);
    }
    return { style, matrix, silent: false };
  }

  #frame({ width, height, viewBox, preserveAspectRatio }: Attributes): void {
    const given = [width, height].map(length => (length === undefined ? null : physical(length)));
    const view = viewBox
      ?.trim()
      .split(/[\s,]+/)
      .map(Number);
    if (view && !(view.length === 4 && view.every(Number.isFinite) && view[2]! > 0 && view[3]! > 0))
      throw new SvgFault(`\`viewBox="${viewBox}"\``);
    const [wide, high] = given;
    if (!view && !(wide && high)) throw new SvgFault('no `viewBox`, nor `width` and `height`');
    this.view = (view as unknown as DrawingArt['view']) ?? [0, 0, wide!.pixels, high!.pixels];
    const [, , w, h] = this.view;
    if (!wide || !high) return;
    const bent = Math.abs((wide.pixels / high.pixels) * (h / w) - 1) > 0.005;
    if (bent && preserveAspectRatio !== 'none')
      throw new SvgFault('`width` and `height` of another shape than `viewBox`');
    if (bent) throw new SvgFault('`preserveAspectRatio="none"`');
    if (wide.measured && high.measured)
      this.size = { width: wide.pixels * MM_PER_PIXEL, height: high.pixels * MM_PER_PIXEL };
  }

  #draw(segments: DrawnShape['segments'], { style, matrix }: Level): void {
    const { fill, rule, stroke, width, cap, join, miter, dash, dashFrom } = style;
    const line = stroke && width > 0 ? { inks: stroke, width, cap, join, miter, dash, dashFrom } : null;
    if (segments.length > 0 && (fill || line)) this.shapes.push({ matrix, segments, fill, rule, line });
  }
}

/** A length of the outermost element in pixels, and whether its unit is one of length. */
function physical(text: string): { readonly pixels: number; readonly measured: boolean } | null {
  const match = /^\s*([\d.]+)\s*(px|mm|cm|in|pt|pc|%)?\s*$/.exec(text);
  const value = Number(match?.[1]);
  if (!match || !(value > 0)) throw new SvgFault(`the length \`${text}\``);
  const unit = match[2] ?? 'px';
  if (unit === '%') return null;
  if (unit === 'px') return { pixels: value, measured: false };
  if (unit === 'pt') return { pixels: (value * 96) / 72, measured: true };
  if (unit === 'pc') return { pixels: value * 16, measured: true };
  const read = readMeasure(`${match[1]} ${unit}`, 'length');
  if (!read.ok) throw new SvgFault(`the length \`${text}\``);
  return { pixels: read.value.base.value / MM_PER_PIXEL, measured: true };
}

const fault = (file: string, parser: SaxesParser<{ xmlns: true }>, what: string): Diagnostic => ({
  code: 'art-not-understood',
  severity: 'error',
  message: `${file} has ${what}, which is not placed; nothing of a drawing is left out`,
  hint: 'convert text and effects to plain paths with plain fills, and colors to device-cmyk(…), #rrggbb or none; or save the drawing as a PDF in the inks of the press',
  at: { file, line: parser.line, column: Math.max(1, parser.column) },
});

/**
 * Reads an SVG of paths, basic shapes and groups with plain fills and strokes. Whatever else it holds is refused by
 * name; colors of a screen are converted to inks, and that is a warning.
 */
export function readDrawing(file: string, bytes: Uint8Array): Outcome<DrawingArt> {
  const parser = new SaxesParser({ xmlns: true, position: true });
  const reader = new Reader();
  parser.on('opentag', tag => reader.open(tag));
  parser.on('closetag', () => {
    reader.levels.pop();
  });
  parser.on('error', error => {
    throw new SvgFault(`an error of XML (${error.message.replace(/^\d+:\d+: /, '')})`);
  });
  try {
    parser.write(new TextDecoder('utf-8').decode(bytes)).close();
  } catch (error) {
    if (!(error instanceof SvgFault)) throw error;
    return fail(fault(file, parser, error.message));
  }
  const { view, shapes, size } = reader;
  if (!view || shapes.length === 0) return fail(fault(file, parser, 'nothing that is drawn'));
  const converted: readonly Diagnostic[] = reader.converted ? [convertedColors(file)] : [];
  return succeed({ kind: 'drawing', file, size, aspect: view[2] / view[3], view, shapes }, converted);
}

/** Colors of a screen were converted to inks. */
export const convertedColors = (file: string): Diagnostic => ({
  code: 'art-color-converted',
  severity: 'warning',
  message: `${file} has colors of a screen; they are converted to process inks without a profile and look another way on each press`,
  hint: 'give the colors in inks: device-cmyk(…) in an SVG, or a PDF in DeviceCMYK and spot inks',
  at: { file },
});
