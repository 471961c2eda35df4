import type { ArtContent } from '../preflight/art-facts.ts';
import { artPages } from '../preflight/art-page.ts';
import { toMillimetres } from '../quantity/length.ts';
import { type Diagnostic, fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import { pageFaults } from './_page-faults.ts';
import type { ArtRules, PageArt } from './art.ts';

/** Left, bottom, right, top in points. */
type Corners = PageArt['box'];

/** A page of a PDF with its boxes, before it is known which part of it is placed. */
export interface ReadPage extends PageArt {
  /** All that the page holds. */
  readonly media: Corners;
  /** As the file gives them; null where it does not. */
  readonly trim: Corners | null;
  readonly bleed: Corners | null;
  /** Fewest pixels per inch of its pictures at its own size; null where it has none. */
  readonly dpi: number | null;
}

/**
 * Reads one page of a PDF and holds it against the rules of the press.
 * @param number of the page, from 1; null where the file has one page
 */
export async function readPage(
  file: string,
  bytes: Uint8Array,
  number: number | null,
  rules: ArtRules,
): Promise<Outcome<ReadPage>> {
  const says = (code: string, message: string, hint: string): Diagnostic => ({
    code,
    severity: 'error',
    message: `${file} ${message}`,
    hint,
    at: { file },
  });
  const unreadable = (why: string) =>
    says('art-unreadable', `cannot be read as a PDF: ${why}`, 'export it again');
  const pages = await artPages(bytes);
  if ('fault' in pages)
    return fail(
      pages.fault === 'encrypted'
        ? says('art-encrypted', 'is encrypted', 'save it without a password and without restrictions')
        : unreadable(pages.message),
    );
  if (pages.length === 0) return fail(unreadable('it has no pages'));
  if (number === null && pages.length !== 1)
    return fail(
      says('art-pages', `has ${pages.length} pages`, 'say which one is placed: `page: 1` beside `file`'),
    );
  const page = pages[(number ?? 1) - 1];
  if (!page)
    return fail(says('art-pages', `has no page ${number}: it has ${pages.length}`, 'name one of its pages'));
  const faults: Diagnostic[] = [];
  if (page.turned)
    faults.push(
      says(
        'art-turned',
        'shows its page turned or in units of its own',
        'export it upright, without rotation of the page',
      ),
    );
  if (page.active.length > 0)
    faults.push(
      says('art-active', `has ${page.active.join(', ')}`, 'export the page for printing, without them'),
    );
  let found: ArtContent;
  try {
    found = page.content();
  } catch (error) {
    return fail(...faults, unreadable((error as Error).message));
  }
  faults.push(...pageFaults(file, found, rules));
  const { media, trim, bleed } = page;
  if (!media) return fail(...faults, unreadable('its page has no size'));
  if (hasErrors(faults)) return fail(...faults);
  const box = trim ?? page.crop ?? media;
  const size = { width: toMillimetres(box[2] - box[0]), height: toMillimetres(box[3] - box[1]) };
  const dpi = found.images.length === 0 ? null : Math.min(...found.images.map(image => image.dpi));
  const aspect = size.width / size.height;
  const placed = {
    box,
    page: (number ?? 1) - 1,
    source: bytes,
    transparent: found.transparent,
    tints: found.tints,
  };
  return succeed({ kind: 'page', file, size, aspect, ...placed, media, trim, bleed, dpi }, faults);
}
