import { bodyOf, firstBody, paragraphs, type SectionBodies } from './content.ts';
import type { SheetInput } from './input.ts';
import { fill, phrases } from './phrases.ts';
import { statementsFor } from './statements.ts';

const words = phrases.measures;

/** Section 6 (29 CFR 1910.1200 App. D, Table D.1, 6). */
export function accidentalRelease({ record, elements }: SheetInput): SectionBodies {
  const spill = paragraphs(record.sheet.spill);
  const equipment = statementsFor(elements, 'protection');
  return {
    precautions: firstBody(
      phrases.frame.none,
      bodyOf('label elements', {
        list: [...statementsFor(elements, 'precautions'), ...equipment],
        notes: equipment.length > 0 ? [words.seeProtection] : [],
      }),
    ),
    'clean-up': firstBody(
      phrases.frame.none,
      bodyOf('product record', {
        text: spill,
        list: statementsFor(elements, 'clean-up'),
        notes: [words.seeDisposal],
      }),
    ),
  };
}

/** Section 7 (29 CFR 1910.1200 App. D, Table D.1, 7). */
export function handlingAndStorage({ record, elements, classification }: SheetInput): SectionBodies {
  const incompatible = paragraphs(record.sheet['incompatible-materials']);
  const flammable = classification.hazards.some(({ hazardClass }) => hazardClass === 'Flam. Liq.');
  const handling = {
    text: paragraphs(record.sheet.handling),
    list: statementsFor(elements, 'handling'),
  };
  const storage = {
    text: [
      ...paragraphs(record.sheet.storage),
      ...incompatible.map(text => fill(words.incompatibilities, { text })),
    ],
    list: statementsFor(elements, 'storage'),
  };
  return {
    handling: firstBody(phrases.frame.none, bodyOf('product record', handling)),
    storage: {
      ...firstBody(phrases.frame.none, bodyOf('product record', storage)),
      notes: flammable ? [words.storageNote] : [],
    },
  };
}
