import { type PDFContext, type PDFDict, PDFHexString, type PDFRef } from 'pdf-lib';
import { DEFAULT_DIE, type DieProfile } from './profile.ts';

export const DIE_LAYER = 'OCdie';

/** A layer and what the catalog says about layers. */
export interface Layers {
  readonly group: PDFRef;
  readonly properties: PDFDict;
}

/**
 * The layer of the cut line with its processing step (ISO 19593-1), shown on screen. `Usage` says that it is not for
 * printing, but no automatic state (`AS`) acts on that, since PDF/X-4 forbids it: a press finds the line by the
 * processing step or by the name of its ink.
 */
export const dieLayer = (context: PDFContext, die: DieProfile = {}): Layers => {
  const { step, layer } = { ...DEFAULT_DIE, ...die };
  const name = PDFHexString.fromText(layer);
  const group = context.register(
    context.obj({
      Type: 'OCG',
      Name: name,
      Usage: { Print: { PrintState: 'OFF' }, View: { ViewState: 'ON' } },
      GTS_Metadata: { GTS_ProcStepsGroup: 'Structural', GTS_ProcStepsType: step },
    }),
  );
  const configuration = { Name: PDFHexString.fromText('Default'), Order: [group], ON: [group], OFF: [] };
  return { group, properties: context.obj({ OCGs: [group], D: configuration }) };
};
