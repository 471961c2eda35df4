import { type PDFContext, type PDFDict, PDFHexString, type PDFRef } from 'pdf-lib';
import { DEFAULT_DIE, type DieProfile } from './profile.ts';

export const DIE_LAYER = 'OCdie';
export const DRAFT_LAYER = 'OCdraft';

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
const draftGroup = (context: PDFContext): PDFRef =>
  context.register(context.obj({ Type: 'OCG', Name: PDFHexString.fromText('Draft') }));

/** Registers the layers that a label uses. */
export const labelLayers = (
  context: PDFContext,
  uses: { readonly die: boolean; readonly draft: boolean },
  die: DieProfile = {},
): Layers => {
  const groups: Record<string, PDFRef> = {};
  if (uses.draft) groups[DRAFT_LAYER] = draftGroup(context);
  if (uses.die) groups[DIE_LAYER] = dieGroup(context, die);
  const all = Object.values(groups);
  const configuration = { Name: PDFHexString.fromText('Default'), Order: all, ON: all, OFF: [] };
  return { groups, properties: context.obj({ OCGs: all, D: configuration }) };
};
