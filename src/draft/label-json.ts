import type { LeastHeight, TypeRules } from '../document/type-rules.ts';
import type { LabelPurpose } from '../labelling/purposes.ts';
import { foldOut } from '../layout/label/remedies.ts';
import type { Stock } from '../layout/stock.ts';
import type { Pack, ProductRecord } from '../record/product-record.ts';
import type { LabelTarget } from './label-options.ts';
import type { LabelDraft } from './try-draft-label.ts';

/** What a label was asked for. */
export interface LabelRequest {
  readonly record: Pick<ProductRecord, 'name' | 'code'>;
  readonly pack: Pack;
  readonly purpose: LabelPurpose;
  readonly target: LabelTarget;
}

/**
 * The label as JSON: millimetres from the lower left corner of the trim, boxes as left, bottom, right, top.
 * @param file name of the PDF, or null where the label was refused
 */
export function labelJson(
  { record, pack, purpose, target }: LabelRequest,
  draft: LabelDraft,
  file: string | null,
) {
  const { stock, facts, type, diagnostics } = draft;
  return {
    schema: 'labelwright/label/1',
    product: { name: record.name, code: record.code },
    pack: pack.id,
    purpose,
    target,
    file,
    die: stock && dieJson(stock),
    texts: (facts?.texts ?? []).map(({ box, ...text }) => ({
      ...text,
      minimum: stock && least(text.role, type, stock),
      box,
    })),
    pictograms: (facts?.pictograms ?? []).map(({ box, ...pictogram }) => ({
      ...pictogram,
      minimum: stock && {
        side: stock.profile.pictogram.minimumSide,
        cite: 'Regulation (EC) No 1272/2008 Annex I 1.2.1.2',
      },
      box,
    })),
    barCode: facts?.barCode ?? null,
    findings: diagnostics.map(finding =>
      finding.code === 'label-too-small' ? { ...finding, outlines: outlines(draft) } : finding,
    ),
  };
}

const dieJson = ({ die, profile }: Stock) => ({
  shape: die.shape ?? 'rectangle',
  width: die.width,
  height: die.height,
  cornerRadius: die.cornerRadius,
  overlap: die.overlap ?? 0,
  panels: die.panels ?? 1,
  safe: profile.safeZone.value,
});

/** What the law of the purpose asks; 29 CFR 1910.1200 sets no size of type: the press does. */
const least = (role: string, type: TypeRules | null, { profile }: Stock): LeastHeight =>
  type?.least[role] ?? { xHeight: profile.xHeight.minimum, cite: `press profile, ${profile.name}` };

/** Dies that were laid out and hold the label. */
function outlines({ stock, remedies }: LabelDraft) {
  if (!stock || !remedies) return [];
  const { die } = stock;
  const { width, height, panels } = remedies;
  return [
    ...(height === null ? [] : [{ ...die, height }]),
    ...(width === null ? [] : [{ ...die, width }]),
    ...(panels === null ? [] : [foldOut(die, panels)]),
  ];
}
