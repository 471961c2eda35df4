import { labelDocument } from '../document/label.ts';
import { loadTemplate } from '../document/template.ts';
import { readTemplate } from '../environment/package-files.ts';
import { clearStrips } from '../layout/die/clear-strips.ts';
import { type LabelFacts, labelFacts } from '../layout/label/facts.ts';
import { tryLabel } from '../layout/label/layout-label.ts';
import type { Remedies } from '../layout/label/remedies.ts';
import { type Die, loadPressProfile, type Stock } from '../layout/stock.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import type { LengthUnit } from '../quantity/length-text.ts';
import { completeRecord } from '../record/complete.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { VERSION } from '../version.ts';
import type { Words } from '../words/words.ts';
import { brandLook } from './brand-look.ts';
import { packNumberDoubts } from './check-packs.ts';
import { claimFindings } from './claim-findings.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';
import type { LabelOptions } from './label-options.ts';
import { statementFindings } from './statement-findings.ts';

/** A label drafted, or what would let it be. */
export interface LabelDraft {
  readonly bytes: Uint8Array | null;
  /** What stands on it and where. */
  readonly facts: LabelFacts | null;
  readonly stock: Stock | null;
  /** Where it does not fit: larger dies, each laid out. */
  readonly remedies: Remedies | null;
  readonly diagnostics: readonly Diagnostic[];
}

const refused = (diagnostics: readonly Diagnostic[]): LabelDraft => ({
  bytes: null,
  facts: null,
  stock: null,
  remedies: null,
  diagnostics,
});

/** The die of the label, or the bare size of the panel alone: it is placed in artwork, and so has square corners. */
function dieOf({ pack, only, size }: LabelOptions): (Die & { readonly unit: LengthUnit }) | null {
  if (only && size) return { ...size, cornerRadius: 0 };
  if (only && pack.label) {
    const { width, height, unit, panels } = pack.label;
    return { width: width / panels, height, unit, cornerRadius: 0 };
  }
  return pack.label;
}

/** Artwork of the record is never dropped in silence. */
const artworkFindings = ({ copy }: ProductRecord, pack: Pack): readonly Diagnostic[] =>
  copy.artwork
    ? [
        {
          code: 'artwork-not-placed',
          severity: 'warning',
          message: `the artwork ${copy.artwork.file} is not placed under the label`,
          hint: 'make the regulated panel by itself with --only precautions --size, and place it in the artwork',
          path: 'copy.artwork',
          at: pack.at,
        },
      ]
    : [];

/** As `draftLabel`, with what stands on the label and where, or the dies that would hold it. */
export async function tryDraftLabel(
  product: ClassifiedProduct,
  options: LabelOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<LabelDraft> {
  const { record, elements } = product;
  const { pack, audience, only, date, output } = options;
  const complete = completeRecord(record);
  if (!complete.ok) return refused(complete.diagnostics);
  const stated = [
    ...statementFindings(record, elements, words, 'error'),
    ...claimFindings(record, elements, words),
    ...packNumberDoubts(record, pack),
  ];
  if (hasErrors(stated)) return refused(stated);
  const stockDie = dieOf(options);
  if (!stockDie)
    return refused([
      {
        code: 'die-missing',
        severity: 'error',
        message: `pack \`${pack.id}\` gives no size of its label`,
        hint: 'add `label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}` to the pack',
        at: pack.at,
      },
    ]);
  const profile = await loadPressProfile(readTemplate);
  if (!profile.ok) return refused(profile.diagnostics);
  const template = await loadTemplate(readTemplate, `labels/${audience}.hbs`);
  const instant = `${date}T00:00:00Z`;
  const model = labelDocument(
    { record: complete.value, pack, elements, draft: true, date: instant, only },
    template,
  );
  const { unit, ...die } = stockDie;
  const look = only ? null : brandLook(complete.value.maker, profile.value, { file: record.file });
  const told = [...stated, ...(look?.findings ?? []), ...artworkFindings(record, pack)];
  if (hasErrors(told)) return refused(told);
  const stock: Stock = {
    die,
    profile: profile.value,
    unit,
    ...(look?.layout && { brand: look.layout }),
  };
  const { layout, remedies, diagnostics } = await tryLabel(model, fonts, stock);
  const findings = diagnostics.map(finding => ({ ...finding, at: finding.at ?? pack.at }));
  if (!layout) return { ...refused([...told, ...findings]), stock, remedies };
  const bytes = await writePdf(layout.document, fonts, {
    kind: 'label',
    version: VERSION,
    copy: copyMark(product, 'distribution'),
    ...(output && { iccProfile: output }),
    ...(look?.ink && { brand: look.ink }),
  });
  const { safeZone, xHeight, pictogram } = stock.profile;
  const found = await preflight(bytes, {
    kind: 'label',
    dieInk: model.panel ? undefined : 'CutContour',
    pdfx4: output !== undefined,
    ...(look?.ink && { brand: look.ink }),
    geometry: {
      safe: safeZone.value,
      xHeight: xHeight.minimum,
      pictogramSide: pictogram.minimumSide,
      clear: clearStrips(die, safeZone.value),
    },
  });
  if (hasErrors(found))
    throw new Error(`preflight of the label: ${found.map(({ message }) => message).join('; ')}`);
  const facts = labelFacts(model, layout, stock, fonts);
  return { bytes, facts, stock, remedies: null, diagnostics: [...told, ...findings, ...found] };
}
