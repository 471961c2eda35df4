import type { PDFObject } from 'pdf-lib';
import type { Diagnostic } from '../report/diagnostic.ts';
import { finding } from './_finding.ts';
import { asName, decoded, entry, members } from './_objects.ts';
import type { PageMarks } from './page-marks.ts';

// The widest block that ISO 32000-1 9.10.3 allows in a CMap.
const MAX_BLOCK = 100;
// Code units that PDF/UA-1 7.21.7 forbids as the meaning of a glyph.
const FORBIDDEN = new Set(['0000', 'FEFF', 'FFFE']);

interface UnicodeMap {
  readonly texts: ReadonlyMap<number, string>;
  readonly widestBlock: number;
}

const unicodeMap = (bytes: Uint8Array): UnicodeMap => {
  const source = new TextDecoder('latin1').decode(bytes);
  const texts = new Map<number, string>();
  let widestBlock = 0;
  for (const [, count, body] of source.matchAll(/(\d+)\s+beginbfchar([\s\S]*?)endbfchar/gu)) {
    widestBlock = Math.max(widestBlock, Number(count));
    for (const [, from, to] of body!.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]*)>/gu))
      texts.set(Number.parseInt(from!, 16), to!.toUpperCase());
  }
  return { texts, widestBlock };
};

/** The text of each code of a font by its ToUnicode map; empty where it has none. */
export const readUnicodeMap = (stream: PDFObject | undefined): ReadonlyMap<number, string> => {
  const bytes = decoded(stream);
  const texts = bytes ? unicodeMap(bytes).texts : new Map<number, string>();
  return new Map(
    [...texts].map(([code, hex]) => [
      code,
      String.fromCharCode(...(hex.match(/.{4}/gu) ?? []).map(unit => Number.parseInt(unit, 16))),
    ]),
  );
};

const checkFont = (font: PDFObject, used: ReadonlySet<number>): Diagnostic[] => {
  const findings: Diagnostic[] = [];
  const name = asName(entry(font, 'BaseFont')) ?? 'a font without name';
  const descendant = members(entry(font, 'DescendantFonts'))[0] ?? font;
  const descriptor = entry(descendant, 'FontDescriptor');
  const program = ['FontFile', 'FontFile2', 'FontFile3'].map(key => decoded(entry(descriptor, key)));
  if (!program.some(bytes => bytes && bytes.length > 0))
    findings.push(finding('font-not-embedded', `${name} is not embedded`, 'ISO 14289-1 7.21.4.1'));
  if (!/^[A-Z]{6}\+./u.test(name))
    findings.push(finding('font-not-subset', `${name} is not marked as a subset`, 'ISO 32000-1 9.6.4'));
  if (asName(entry(descendant, 'Subtype')) === 'CIDFontType2' && !entry(descendant, 'CIDToGIDMap'))
    findings.push(finding('font-glyph-map', `${name} has no CIDToGIDMap`, 'ISO 14289-1 7.21.3.2'));
  const map = decoded(entry(font, 'ToUnicode'));
  if (!map) {
    findings.push(finding('font-no-unicode', `${name} has no ToUnicode map`, 'ISO 14289-1 7.21.7'));
    return findings;
  }
  const { texts, widestBlock } = unicodeMap(map);
  if (widestBlock > MAX_BLOCK)
    findings.push(
      finding('font-unicode-block', `${name} maps ${widestBlock} codes in one block`, 'ISO 32000-1 9.10.3'),
    );
  for (const code of used) {
    if (code === 0)
      findings.push(finding('font-missing-glyph', `${name} shows .notdef`, 'ISO 14289-1 7.21.8'));
    const text = texts.get(code);
    const units = text?.match(/.{4}/gu) ?? [];
    if (code !== 0 && (units.length === 0 || units.some(unit => FORBIDDEN.has(unit))))
      findings.push(
        finding('font-no-unicode', `${name} gives no text for code ${code}`, 'ISO 14289-1 7.21.7'),
      );
  }
  return findings;
};

/** Checks every font that the pages name or use: embedded, subset, and each code used mapped to text. */
export const checkFonts = (pages: readonly PageMarks[]): Diagnostic[] => {
  const used = new Map<PDFObject, Set<number>>();
  const findings: Diagnostic[] = [];
  for (const { page, painted } of pages) {
    const fonts = entry(page.resources, 'Font');
    for (const { paints, font: name, codes } of painted) {
      if (!paints.includes('text')) continue;
      const font = entry(fonts, name);
      if (!font) {
        findings.push(
          finding('font-not-embedded', `text uses the font "${name}", which is not there`, 'ISO 32000-1 9.3'),
        );
        continue;
      }
      const seen = used.get(font) ?? new Set();
      for (const code of codes) seen.add(code);
      used.set(font, seen);
    }
  }
  for (const [font, codes] of used) findings.push(...checkFont(font, codes));
  return findings;
};
