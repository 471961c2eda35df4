import { paragraphs, type SectionBodies } from './content.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { measure } from './parts.ts';
import { statementsFor } from './statements.ts';

/** Section 6 (29 CFR 1910.1200 App. D, Table D.1, 6). */
export function accidentalRelease(input: SheetInput): SectionBodies {
  const { elements } = input;
  const { measures: words } = input.words.sheet;
  return {
    precautions: measure(input, {
      place: 'precautions',
      own: 'release',
      label: [...statementsFor(elements, 'precautions'), ...statementsFor(elements, 'protection')],
      notes: [words.seeProtection],
    }),
    'clean-up': measure(input, {
      place: 'clean-up',
      own: 'spill',
      label: statementsFor(elements, 'clean-up'),
      notes: [words.seeDisposal],
    }),
  };
}

/** Section 7 (29 CFR 1910.1200 App. D, Table D.1, 7). */
export function handlingAndStorage(input: SheetInput): SectionBodies {
  const { record, elements } = input;
  const { measures: words } = input.words.sheet;
  const incompatible = paragraphs(record.sheet['incompatible-materials']);
  return {
    handling: measure(input, {
      place: 'handling',
      own: 'handling',
      label: statementsFor(elements, 'handling'),
    }),
    storage: measure(input, {
      place: 'storage',
      own: 'storage',
      label: statementsFor(elements, 'storage'),
      derived: incompatible.map(text => fill(words.incompatibilities, { text })),
    }),
  };
}
