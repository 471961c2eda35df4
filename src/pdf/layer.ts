import { type PDFContext, type PDFDict, PDFHexString, type PDFRef } from 'pdf-lib';
import { DEFAULT_DIE, type DieProfile } from './profile.ts';

export const DIE_LAYER = 'OCdie';
export const DRAFT_LAYER = 'OCdraft';
export const EYE_MARK_LAYER = 'OCeye';
export const CODER_LAYER = 'OCcoder';

/** Layers that a label may use. */
export interface LayerUse {
  readonly die: boolean;
  readonly draft: boolean;
  readonly eyeMark: boolean;
  readonly coder: boolean;
}

/** The layers of a label by the name of their resource, and what the catalog says about them. */
export interface Layers {
  readonly groups: Readonly<Record<string, PDFRef>>;
  readonly properties: PDFDict;
}

/**
 * The layer of the cut line with its processing step (ISO 19593-1), shown on screen. `Usage` says that it is not for
 * printing, but no automatic state (`AS`) acts on that, since PDF/X-4 forbids it: a press finds the line by the
 * processing step or by the name of its ink.
 */
const dieGroup = (context: PDFContext, die: DieProfile): PDFRef => {
  const { step, layer } = { ...DEFAULT_DIE, ...die };
  return context.register(
    context.obj({
      Type: 'OCG',
      Name: PDFHexString.fromText(layer),
      Usage: { Print: { PrintState: 'OFF' }, View: { ViewState: 'ON' } },
      GTS_Metadata: { GTS_ProcStepsGroup: 'Structural', GTS_ProcStepsType: step },
    }),
  );
};

/** Ordinary artwork that goes with the sign-off. */
const plainGroup = (context: PDFContext, name: string): PDFRef =>
  context.register(context.obj({ Type: 'OCG', Name: PDFHexString.fromText(name) }));

/** Where the coder prints lot and date: a position of ISO 19593-1, shown on screen and not printed. */
const coderGroup = (context: PDFContext): PDFRef =>
  context.register(
    context.obj({
      Type: 'OCG',
      Name: PDFHexString.fromText('Coder window'),
      Usage: { Print: { PrintState: 'OFF' }, View: { ViewState: 'ON' } },
      GTS_Metadata: { GTS_ProcStepsGroup: 'Positions', GTS_ProcStepsType: 'CodingMarking' },
    }),
  );

/** Registers the layers that a label uses. */
export const labelLayers = (context: PDFContext, uses: LayerUse, die: DieProfile = {}): Layers => {
  const groups: Record<string, PDFRef> = {};
  if (uses.draft) groups[DRAFT_LAYER] = plainGroup(context, 'Draft');
  // ISO 19593-1 has no step for it: it is printed.
  if (uses.eyeMark) groups[EYE_MARK_LAYER] = plainGroup(context, 'Eye mark');
  if (uses.coder) groups[CODER_LAYER] = coderGroup(context);
  if (uses.die) groups[DIE_LAYER] = dieGroup(context, die);
  const all = Object.values(groups);
  const configuration = { Name: PDFHexString.fromText('Default'), Order: all, ON: all, OFF: [] };
  return { groups, properties: context.obj({ OCGs: all, D: configuration }) };
};
