import { copyComment } from '../document/copy-meta.ts';
import type { ClassifiedProduct } from '../draft/classified-product.ts';
import { draftLabelSheet } from '../draft/draft-label-sheet.ts';
import { copyMark } from '../draft/inputs-of.ts';
import type { LabelTarget } from '../draft/label-options.ts';
import type { LabelDraft } from '../draft/try-draft-label.ts';
import { pngOf } from '../picture/png.ts';
import { svgOf } from '../picture/svg.ts';
import { loadLabelSheet } from '../record/label-sheet-schema.ts';
import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import type { OutputFile } from '../store/delivery.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { en } from '../words/en/index.ts';
import { type ParsedArguments, UsageError } from './arguments.ts';
import { nodeFiles } from './files.ts';
import { exit } from './io.ts';

/** Further files of a label, or why there are none. */
export interface Extras {
  readonly files: readonly OutputFile[];
  readonly findings: readonly Diagnostic[];
  readonly status: number;
}

/** What is asked for beside the label. */
export interface ExtraQuestion {
  readonly sheet: string | null;
  readonly copies: number | null;
  readonly picture: 'png' | 'svg' | null;
}

/** Reads what is asked for beside the label. @throws UsageError where options do not go together */
export function extraQuestion(parsed: ParsedArguments, target: LabelTarget): ExtraQuestion {
  const [sheet, copies, picture] = ['sheet', 'copies', 'picture'].map(name => parsed.text(name));
  if (sheet && target !== 'press')
    throw new UsageError('--sheet is for an office printer; leave --target out with it');
  if (copies && !sheet) throw new UsageError('--copies is of labels on sheets; add --sheet FILE');
  const count = copies ? Number(copies) : null;
  if (count !== null && !(Number.isInteger(count) && count >= 1 && count <= MOST_COPIES))
    throw new UsageError(`--copies ${copies} is not a number of labels; write a whole number from 1`);
  return { sheet: sheet ?? null, copies: count, picture: (picture ?? null) as ExtraQuestion['picture'] };
}

const MOST_COPIES = 10_000;

/** Sheets and pictures of a drafted label. @param stem file name without its ending */
export async function labelExtras(
  product: ClassifiedProduct,
  draft: LabelDraft,
  { sheet, copies, picture, stem }: ExtraQuestion & { readonly stem: string },
  fonts: FontLibrary,
): Promise<Extras> {
  const many = await sheetOf(product, draft, { path: sheet, copies, stem }, fonts);
  if (many.status !== exit.done) return many;
  const shown = await pictureOf(product, draft, { format: picture, stem }, fonts);
  return {
    files: [...many.files, ...shown.files],
    findings: [...many.findings, ...shown.findings],
    status: exit.done,
  };
}

const none: Extras = { files: [], findings: [], status: exit.done };

/** The label many times on sheets of an office printer. @param stem file name without its ending */
async function sheetOf(
  product: ClassifiedProduct,
  draft: LabelDraft,
  {
    path,
    copies,
    stem,
  }: { readonly path: string | null; readonly copies: number | null; readonly stem: string },
  fonts: FontLibrary,
): Promise<Extras> {
  if (path === null) return none;
  const sheet = loadLabelSheet(path, nodeFiles);
  if (!sheet.ok) return { ...none, findings: sheet.diagnostics, status: exit.badInput };
  const made = await draftLabelSheet(product, draft, { sheet: sheet.value, file: path, copies }, fonts, en);
  const findings = [...sheet.diagnostics, ...made.diagnostics];
  if (!made.bytes) return { ...none, findings, status: hasErrors(findings) ? exit.notMet : exit.done };
  return {
    files: [{ name: `${stem}-sheet.pdf`, kind: 'distribution', bytes: made.bytes }],
    findings,
    status: exit.done,
  };
}

/** The label as a picture for listings. @param format a PNG needs a drawing library, without which an SVG is made */
async function pictureOf(
  product: ClassifiedProduct,
  { document, brand }: LabelDraft,
  { format, stem }: { readonly format: 'png' | 'svg' | null; readonly stem: string },
  fonts: FontLibrary,
): Promise<Extras> {
  const [frame] = document?.frames ?? [];
  if (format === null || !document || !frame) return none;
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
  if (png)
    return { ...none, findings: unseen, files: [{ name: `${stem}.png`, kind: 'distribution', bytes: png }] };
  const svg: OutputFile = {
    name: `${stem}.svg`,
    kind: 'distribution',
    bytes: svgOf(frame, fonts, document.title, comment, { brand }),
  };
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
  return { files: [svg], findings: [...unseen, ...missing], status: exit.done };
}
