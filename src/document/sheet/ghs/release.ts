import { bodyOf, firstBody, paragraphs, type SectionBodies, said } from '../content.ts';
import { fill } from '../fill.ts';
import { accidentalRelease as common } from '../handling.ts';
import type { SheetInput } from '../input.ts';
import { environmental } from './exposure-limits.ts';

/** Section 6 (Annex II, 6.1 to 6.4; GHS, Table 1.5.2, 6). Drains and waters are the examples that 6.2 names for any spill. */
export function accidentalRelease(input: SheetInput): SectionBodies {
  const { ghs: words } = input.words.sheet;
  const own = paragraphs(input.record.sheet['environmental-precautions']);
  return {
    ...common(input),
    'environmental-precautions': firstBody(
      bodyOf('product record', { text: own }),
      bodyOf('hazard classes', { list: [...environmental(input), words.keepOut] }),
    ),
    references: said('law', words.references),
  };
}

/** Section 7, specific end uses (Annex II, 7.3): the maker's text, else the directions of the label. */
export function endUses({ record, words }: SheetInput): SectionBodies {
  const text = (record.copy?.directions ?? []).join(' ');
  return {
    'end-uses': firstBody(
      bodyOf('product record', { text: paragraphs(record.sheet['end-uses']) }),
      bodyOf('product record', { text: text === '' ? [] : [fill(words.sheet.ghs.directions, { text })] }),
    ),
  };
}
