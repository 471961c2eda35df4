import type { SheetKey } from '../../record/sheet-keys.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import { effectsOf } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { capitalized, fill, phrases } from './phrases.ts';
import { helpForEveryRoute, type StatementPlace, statementsFor } from './statements.ts';

const words = phrases.measures;

const ROUTES: readonly (readonly [StatementPlace, SheetKey])[] = [
  ['inhalation', 'first-aid.inhalation'],
  ['skin', 'first-aid.skin'],
  ['eyes', 'first-aid.eyes'],
  ['ingestion', 'first-aid.ingestion'],
];

/** Section 4 (29 CFR 1910.1200 App. D, Table D.1, 4). */
export function firstAid(input: SheetInput): SectionBodies {
  const { record, elements } = input;
  const routes = ROUTES.map(([place, key]): [string, ItemBody] => {
    const stated = statementsFor(elements, place);
    const list = stated.length > 0 ? [...new Set([...stated, ...helpForEveryRoute(elements)])] : [];
    const text = paragraphs(record.sheet[key]);
    const source = text.length > 0 ? 'product record' : 'label elements';
    return [place, firstBody(words.noMeasure, bodyOf(source, { text, list }))];
  });
  const physician = paragraphs(record.sheet['first-aid.physician']);
  const attention = statementsFor(elements, 'medical-attention');
  return {
    ...Object.fromEntries(routes),
    symptoms: symptoms(input, record.sheet['first-aid.symptoms']),
    'medical-attention': firstBody(
      words.noAttention,
      bodyOf('product record', {
        list: attention,
        text: physician.map(text => fill(words.physician, { text })),
        notes: physician.length > 0 ? [] : [words.noTreatment],
      }),
    ),
  };
}

/** Symptoms from the record, else what the classes of the mixture mean. */
export function symptoms({ classification }: SheetInput, own: string | undefined): ItemBody {
  const joined = (kind: 'acute' | 'delayed') => {
    const texts = effectsOf(classification.hazards, kind);
    return texts.length > 0 ? [fill(words[kind], { texts: `${texts.join('; ')}.` })] : [];
  };
  const toxic = classification.hazards.some(({ hazardClass }) => hazardClass === 'Acute Tox.');
  return firstBody(
    words.noSymptoms,
    bodyOf('product record', { text: paragraphs(own) }),
    bodyOf('hazard classes', {
      text: [...joined('acute'), ...joined('delayed')].map(capitalized),
      notes: toxic ? [words.noToxicSymptoms] : [],
    }),
  );
}
