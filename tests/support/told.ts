import type { Classification, OtherClass } from '../../src/classify/classification.ts';
import type { Because } from '../../src/classify/facts/because.ts';
import type { Warning } from '../../src/classify/facts/warning.ts';
import { type BecauseJson, reasonWriter } from '../../src/draft/because-json.ts';
import { en } from '../../src/words/en/index.ts';
import { tellAll } from '../../src/words/telling.ts';

type Reason = Because & BecauseJson;

/** A classification whose facts stand beside the words that the command line prints for them. */
export interface Told extends Omit<Classification, 'hazards' | 'otherClasses' | 'warnings'> {
  readonly hazards: readonly (Classification['hazards'][number] & { readonly because: Reason })[];
  readonly otherClasses: readonly (OtherClass & { readonly because: Reason })[];
  readonly warnings: readonly (Warning & { readonly text: string; readonly cite: string })[];
}

/** Tells a classification in English. */
export function told(classification: Classification): Told {
  const write = reasonWriter(classification, en);
  const withWords = <T extends { readonly because: Because }>(each: T) => {
    const { terms: _, ...words } = write.because(each.because);
    return { ...each, because: { ...each.because, ...words } as Reason };
  };
  return {
    ...classification,
    hazards: classification.hazards.map(withWords),
    otherClasses: classification.otherClasses.map(withWords),
    warnings: classification.warnings.map(warning => ({
      ...warning,
      text: en.warning(warning, tellAll(classification)),
      cite: en.cites(warning.cites),
    })),
  };
}
