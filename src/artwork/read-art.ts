import { fail, type Outcome } from '../report/diagnostic.ts';
import type { ArtRules, DrawingArt, PictureArt } from './art.ts';
import { readDrawing } from './read-drawing.ts';
import { type ReadPage, readPage } from './read-page.ts';
import { readPicture } from './read-picture.ts';

/** Artwork as it was read, before its place is known. */
export type ReadArt = DrawingArt | PictureArt | ReadPage;

const begins = (bytes: Uint8Array, text: string): boolean =>
  [...text].every((character, at) => bytes[at] === character.charCodeAt(0));

/**
 * Reads artwork or a logo by what its file holds, not by its name: PDF, PNG or SVG.
 * @param page of a PDF, from 1; null where the file has one page
 */
export async function readArt(
  file: string,
  bytes: Uint8Array,
  page: number | null,
  rules: ArtRules,
): Promise<Outcome<ReadArt>> {
  if (begins(bytes, '%PDF-')) return readPage(file, bytes, page, rules);
  if (begins(bytes, '\x89PNG')) return readPicture(file, bytes);
  const start = new TextDecoder('utf-8').decode(bytes.subarray(0, 2000));
  if (/^\s*(?:\uFEFF)?\s*<(?:\?xml|!--|!DOCTYPE svg|(?:\w+:)?svg[\s>])/.test(start))
    return readDrawing(file, bytes);
  return fail({
    code: 'art-format',
    severity: 'error',
    message: `${file} is no PDF, PNG or SVG`,
    hint: 'save it as one page of a PDF in the inks of the press, as an SVG of paths, or as a PNG of 300 dpi or more',
    at: { file },
  });
}
