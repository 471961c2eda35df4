import { svgOf } from '../../picture/svg.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { FontLibrary } from '../../text/glyph-run.ts';
import type { LabelDraft } from '../try-draft-label.ts';

/** A label of the packet as it was drafted. */
export interface PacketLabel {
  /** Name of its file. */
  readonly name: string;
  readonly draft: Pick<LabelDraft, 'document' | 'brand' | 'diagnostics'>;
}

/** A label as the page shows it. */
export interface LabelPicture {
  readonly name: string;
  /** The drawing; null where the label could not be made. */
  readonly svg: string | null;
  readonly findings: readonly Pick<Diagnostic, 'severity' | 'message' | 'hint'>[];
}

/** Labels as drawings whose ids do not meet. */
export const labelPictures = (labels: readonly PacketLabel[], fonts: FontLibrary): readonly LabelPicture[] =>
  labels.map(({ name, draft: { document, brand, diagnostics } }, at) => {
    const [frame] = document?.frames ?? [];
    return {
      name,
      svg: frame ? svgOf(frame, fonts, document!.title, '', { brand, ids: `label-${at}-` }) : null,
      findings: diagnostics,
    };
  });
