import { bodyOf, nothing, paragraphs, type SectionBodies, said } from '../content.ts';
import { accidentalRelease as common } from '../handling.ts';
import type { SheetInput } from '../input.ts';
import { hazardsOfKind } from './classes.ts';
import { environmental } from './exposure-limits.ts';

/** Section 6 (Annex II, 6.1 to 6.4; GHS, Table 1.5.2, 6). */
export function accidentalRelease(input: SheetInput): SectionBodies {
  const { ghs: words } = input.words.sheet;
  const own = paragraphs(input.record.sheet['environmental-precautions']);
  const hazardous = hazardsOfKind(input, 'environmental').length > 0;
  return {
    ...common(input),
    'environmental-precautions':
      bodyOf('product record', { text: own }) ??
      bodyOf('hazard classes', {
        list: [...environmental(input), ...(hazardous ? [words.keepOut] : [])],
      }) ??
      nothing,
    references: said('law', words.references),
  };
}
