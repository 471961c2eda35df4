import { copyComment } from '../document/copy-meta.ts';
import { pngOf } from '../picture/png.ts';
import { svgOf } from '../picture/svg.ts';
import type { Diagnostic } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';
import type { PictureFormat } from './picture-format.ts';
import type { LabelDraft } from './try-draft-label.ts';

/** The label as a picture for listings: white ground, sRGB, the trim alone. A PNG needs a drawing library, without which an SVG is made. */
export async function labelPicture(
  product: ClassifiedProduct,
  { document, brand }: Pick<LabelDraft, 'document' | 'brand'>,
  { format, stem }: { readonly format: PictureFormat; readonly stem: string },
  fonts: FontLibrary,
): Promise<{
  readonly files: readonly {
    readonly name: string;
    readonly kind: 'distribution';
    readonly bytes: Uint8Array | string;
  }[];
  readonly findings: readonly Diagnostic[];
}> {
  const [frame] = document?.frames ?? [];
  if (!document || !frame) return { files: [], findings: [] };
  const isPage = frame.items.some(item => item.kind === 'art' && item.art.kind === 'page');
  const unseen: Diagnostic[] = isPage
    ? [
        {
          code: 'artwork-not-in-picture',
          severity: 'warning',
          message: 'the picture shows the label without the artwork or logo that is a page of a PDF',
          hint: 'render the PDF of the label instead, or give the artwork as SVG or PNG',
        },
      ]
    : [];
  const comment = copyComment(copyMark(product, 'distribution'));
  const png = format === 'png' ? await pngOf(frame, fonts, comment, { brand }) : null;
  if (png) return { files: [{ name: `${stem}.png`, kind: 'distribution', bytes: png }], findings: unseen };
  const svg = svgOf(frame, fonts, document.title, comment, { brand });
  const missing: Diagnostic[] =
    format === 'svg'
      ? []
      : [
          {
            code: 'no-drawing-library',
            severity: 'note',
            message: 'the picture was made as SVG: no library that draws PNG is installed',
            hint: 'npm install @napi-rs/canvas beside labelwright, or open the SVG in a browser and export it',
          },
        ];
  return {
    files: [{ name: `${stem}.svg`, kind: 'distribution', bytes: svg }],
    findings: [...unseen, ...missing],
  };
}
