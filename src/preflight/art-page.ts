import { EncryptedPDFError, PDFDocument } from 'pdf-lib';
import { asNumber, entries, entry, members, type PageObject, pagesOf } from './_objects.ts';
import { artContent } from './art-content.ts';
import type { ArtContent } from './art-facts.ts';

/** Left, bottom, right, top in points. */
export type Corners = readonly [number, number, number, number];

/** A page of a file that is to be placed on another. */
export interface ArtPage {
  readonly media: Corners | null;
  readonly crop: Corners | null;
  readonly trim: Corners | null;
  readonly bleed: Corners | null;
  /** Shown turned, or in units other than points. */
  readonly turned: boolean;
  /** What the page or its file has that is run or asked, and cannot be placed. */
  readonly active: readonly ('scripts or actions' | 'form fields' | 'comments or links')[];
  /** Everything that it uses. @throws Error where its content cannot be read */
  content(): ArtContent;
}

const cornersOf = (page: PageObject, name: string): Corners | null => {
  const given = name === 'MediaBox' ? page.mediaBox : entry(page.dict, name);
  const [a, b, c, d] = members(given).map(corner => asNumber(corner) ?? Number.NaN);
  if (![a, b, c, d].every(Number.isFinite)) return null;
  return [Math.min(a!, c!), Math.min(b!, d!), Math.max(a!, c!), Math.max(b!, d!)];
};

function activeOf({ catalog }: PDFDocument, { dict }: PageObject): ArtPage['active'] {
  const scripts = entries(entry(catalog, 'Names')).some(([name]) => name === 'JavaScript');
  const acts = scripts || [catalog, dict].some(each => entry(each, 'AA')) || entry(catalog, 'OpenAction');
  return [
    ...(acts ? (['scripts or actions'] as const) : []),
    ...(entry(catalog, 'AcroForm') ? (['form fields'] as const) : []),
    ...(members(entry(dict, 'Annots')).length > 0 ? (['comments or links'] as const) : []),
  ];
}

/** Whether a page is shown turned; inherited (ISO 32000-1 Table 30). */
function isTurned({ dict }: PageObject): boolean {
  let node: ReturnType<typeof entry> = dict;
  for (let depth = 0; node && depth < 50; depth += 1) {
    const turn = asNumber(entry(node, 'Rotate'));
    if (turn !== undefined) return turn % 360 !== 0;
    node = entry(node, 'Parent');
  }
  return false;
}

/** The pages of a PDF that are to be placed, or why they cannot be read. */
export async function artPages(
  bytes: Uint8Array,
): Promise<readonly ArtPage[] | { readonly fault: 'encrypted' | 'unreadable'; readonly message: string }> {
  try {
    const document = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: true });
    return pagesOf(document).map(
      (page): ArtPage => ({
        media: cornersOf(page, 'MediaBox'),
        crop: cornersOf(page, 'CropBox'),
        trim: cornersOf(page, 'TrimBox'),
        bleed: cornersOf(page, 'BleedBox'),
        turned: isTurned(page) || (asNumber(entry(page.dict, 'UserUnit')) ?? 1) !== 1,
        active: activeOf(document, page),
        content: () => artContent(page.content, page.resources, undefined, entry(page.dict, 'Group')),
      }),
    );
  } catch (error) {
    const fault = error instanceof EncryptedPDFError ? 'encrypted' : 'unreadable';
    return { fault, message: (error as Error).message };
  }
}
