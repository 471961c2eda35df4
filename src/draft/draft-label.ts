import { labelDocument } from '../document/label.ts';
import { loadTemplate } from '../document/template.ts';
import { layoutLabel } from '../layout/label/layout-label.ts';
import { loadPressProfile } from '../layout/stock.ts';
import { writePdf } from '../pdf/write.ts';
import { preflight } from '../preflight/preflight.ts';
import { completeRecord } from '../record/complete.ts';
import type { Pack } from '../record/product-record.ts';
import { packagePath } from '../reference/package-files.ts';
import { fail, hasErrors, type Outcome, succeed } from '../report/diagnostic.ts';
import type { FontLibrary } from '../text/glyph-run.ts';
import { VERSION } from '../version.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { copyMark } from './inputs-of.ts';

/** Who the label is for; decides the template. */
export type LabelAudience = 'us-workplace';

export interface LabelOptions {
  readonly pack: Pack;
  readonly audience: LabelAudience;
  /** The regulated panel alone, to drop into artwork. */
  readonly only?: 'precautions';
  /** YYYY-MM-DD */
  readonly date: string;
}

/**
 * Drafts the label of one pack as a print-ready PDF of one page, read back and checked.
 * @returns errors where a required fact is missing or the text does not fit at its least size.
 */
export async function draftLabel(
  product: ClassifiedProduct,
  { pack, audience, only, date }: LabelOptions,
  fonts: FontLibrary,
): Promise<Outcome<Uint8Array>> {
  const { record, elements } = product;
  const complete = completeRecord(record);
  if (!complete.ok) return complete;
  if (!pack.label)
    return fail({
      code: 'die-missing',
      severity: 'error',
      message: `pack \`${pack.id}\` gives no size of its label`,
      hint: 'add `label: {width: 130 mm, height: 120 mm, corner-radius: 3 mm}` to the pack',
      at: pack.at,
    });
  const templates = packagePath('templates');
  const profile = await loadPressProfile(templates);
  if (!profile.ok) return profile;
  const template = await loadTemplate(templates, `labels/${audience}.hbs`);
  const instant = `${date}T00:00:00Z`;
  const model = labelDocument(
    { record: complete.value, pack, elements, draft: true, date: instant, only },
    template,
  );
  const laidOut = await layoutLabel(model, fonts, { die: pack.label, profile: profile.value });
  const findings = laidOut.diagnostics.map(finding => ({ ...finding, at: finding.at ?? pack.at }));
  if (!laidOut.ok) return fail(...findings);
  const bytes = await writePdf(laidOut.value, fonts, {
    kind: 'label',
    version: VERSION,
    copy: copyMark(product, 'distribution'),
  });
  const found = await preflight(bytes, { kind: 'label', dieInk: 'CutContour' });
  if (hasErrors(found))
    throw new Error(`preflight of the label: ${found.map(({ message }) => message).join('; ')}`);
  return succeed(bytes, [...findings, ...found]);
}
