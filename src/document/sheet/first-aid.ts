import type { SheetKey } from '../../record/sheet-keys.ts';
import { adviceTexts } from './advice.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies, said } from './content.ts';
import { capitalized, fill } from './fill.ts';
import { effectsOf, isHealth } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { measure } from './parts.ts';
import { helpForEveryRoute, type StatementPlace, statementsFor } from './statements.ts';

const ROUTES: readonly (readonly [StatementPlace, SheetKey])[] = [
  ['inhalation', 'first-aid.inhalation'],
  ['skin', 'first-aid.skin'],
  ['eyes', 'first-aid.eyes'],
  ['ingestion', 'first-aid.ingestion'],
];

/** Section 4 (29 CFR 1910.1200 App. D, Table D.1, 4). */
export function firstAid(input: SheetInput): SectionBodies {
  const { record, elements } = input;
  const { measures: words } = input.words.sheet;
  const routes = ROUTES.map(([place, own]): [string, ItemBody] => {
    const stated = statementsFor(elements, place);
    const label = stated.length > 0 ? [...new Set([...stated, ...helpForEveryRoute(elements)])] : [];
    return [place, measure(input, { place, own, label })];
  });
  const physician = paragraphs(record.sheet['first-aid.physician']);
  return {
    ...Object.fromEntries(routes),
    symptoms: symptoms(input, record.sheet['first-aid.symptoms']),
    'medical-attention': measure(input, {
      place: 'medical-attention',
      own: physician.map(text => fill(words.physician, { text })),
      label: statementsFor(elements, 'medical-attention'),
    }),
  };
}

/** Symptoms from the record, else what the classes of the mixture and single ingredients mean. */
export function symptoms(input: SheetInput, own: string | undefined): ItemBody {
  const { classification } = input;
  const { measures: words } = input.words.sheet;
  const joined = (kind: 'acute' | 'delayed') => {
    const texts = effectsOf(classification.hazards, kind, input.words.sheet);
    return texts.length > 0 ? [fill(words[kind], { texts: `${texts.join('; ')}.` })] : [];
  };
  const of = adviceTexts(input, 'symptoms');
  return firstBody(
    bodyOf('product record', { text: paragraphs(own) }),
    bodyOf('hazard classes', {
      text: [...[...joined('acute'), ...joined('delayed')].map(capitalized), ...of],
    }),
    said('hazard classes', undecidedHealth(input) ? words.symptomsUndecided : words.noSymptoms),
  );
}

/** Whether a health class is not decided for want of data. */
export const undecidedHealth = ({ classification }: SheetInput): boolean =>
  classification.otherClasses.some(
    ({ class: name, outcome }) => outcome === 'insufficient-data' && isHealth(name),
  );

/** Whether symptoms of acute toxicity stand in no other words than those of the class. */
export const symptomsOpen = (input: SheetInput): boolean =>
  input.classification.hazards.some(({ hazardClass }) => hazardClass === 'Acute Tox.') &&
  !input.record.sheet['first-aid.symptoms'] &&
  adviceTexts(input, 'symptoms').length === 0;
