import { labelDocument } from '../document/label.ts';
import { loadTemplate } from '../document/template.ts';
import { readTemplate } from '../environment/package-files.ts';
import { type LabelFacts, labelFacts } from '../layout/label/facts.ts';
import { tryLabel } from '../layout/label/layout-label.ts';
import type { Remedies } from '../layout/label/remedies.ts';
import { loadPressProfile, type Stock } from '../layout/stock.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { completeRecord } from '../record/complete.ts';
import { type Diagnostic, hasErrors } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { VERSION } from '../version.ts';
import type { Words } from '../words/words.ts';
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

/** As `draftLabel`, with what stands on the label and where, or the dies that would hold it. */
export async function tryDraftLabel(
  product: ClassifiedProduct,
  { pack, audience, only, date }: LabelOptions,
  fonts: FontLibrary,
  words: Words,
): Promise<LabelDraft> {
  const { record, elements } = product;
  const complete = completeRecord(record);
  if (!complete.ok) return refused(complete.diagnostics);
  const stated = [
    ...statementFindings(record, elements, words, 'error'),
    ...claimFindings(record, elements, words),
    ...packNumberDoubts(record, pack),
  ];
  if (hasErrors(stated)) return refused(stated);
  if (!pack.label)
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
  const { unit, ...die } = pack.label;
  const stock: Stock = { die, profile: profile.value, unit };
  const { layout, remedies, diagnostics } = await tryLabel(model, fonts, stock);
  const findings = diagnostics.map(finding => ({ ...finding, at: finding.at ?? pack.at }));
  if (!layout) return { ...refused([...stated, ...findings]), stock, remedies };
  const bytes = await writePdf(layout.document, fonts, {
    kind: 'label',
    version: VERSION,
    copy: copyMark(product, 'distribution'),
  });
  const { safeZone, xHeight, pictogram } = stock.profile;
  const found = await preflight(bytes, {
    kind: 'label',
    dieInk: model.panel ? undefined : 'CutContour',
    geometry: { safe: safeZone.value, xHeight: xHeight.minimum, pictogramSide: pictogram.minimumSide },
  });
  if (hasErrors(found))
    throw new Error(`preflight of the label: ${found.map(({ message }) => message).join('; ')}`);
  const facts = labelFacts(model, layout, stock, fonts);
  return { bytes, facts, stock, remedies: null, diagnostics: [...stated, ...findings, ...found] };
}
