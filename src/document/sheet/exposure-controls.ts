import type { SheetKey } from '../../record/sheet-keys.ts';
import { averaged, limitRows, limitWords } from '../../words/en/exposure.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import { ingredients } from './disclosure.ts';
import type { SheetInput } from './input.ts';
import { capitalized, fill, phrases } from './phrases.ts';
import { statementsFor } from './statements.ts';

const words = phrases.exposure;

/** Section 8 (29 CFR 1910.1200 App. D, Table D.1, 8). */
export function exposureControls(input: SheetInput): SectionBodies {
  const { record, elements } = input;
  const equipment = statementsFor(elements, 'protection');
  const own = (key: SheetKey, list: readonly string[] = []): ItemBody =>
    firstBody(
      phrases.frame.none,
      bodyOf('product record', { text: paragraphs(record.sheet[key]), list }),
      bodyOf('label elements', { text: namedEquipment(key, equipment) }),
    );
  const ventilation = elements.precautionaryStatements
    .filter(({ code }) => code === 'P271')
    .map(({ text }) => text);
  return {
    pel: limitTable(input),
    tlv: { text: [words.tlv], source: 'none' },
    'other-limits': { text: [words.other], source: 'none' },
    engineering: firstBody(
      phrases.frame.none,
      bodyOf('product record', {
        text: paragraphs(record.sheet['ppe.engineering']),
        list: ventilation,
      }),
    ),
    protection: firstBody(phrases.frame.none, bodyOf('label elements', { list: equipment })),
    'protection-eyes': own('ppe.eyes'),
    'protection-hands': own('ppe.hands'),
    'protection-skin': own('ppe.skin'),
    'protection-respiratory': own('ppe.respiratory', statementsFor(elements, 'protection-respiratory')),
  };
}

/** What the statements of the label name for a part of the body (App. C, C.2.4.2: alternatives of P280). */
function namedEquipment(key: SheetKey, statements: readonly string[]): readonly string[] {
  const kinds: readonly string[] = (words.equipment as Partial<Record<SheetKey, string[]>>)[key] ?? [];
  const named = kinds.filter(kind => statements.some(text => text.includes(kind)));
  return named.length > 0 ? [fill(words.named, { kinds: capitalized(named.join(words.and)) })] : [];
}

/** OSHA limits of every ingredient that section 3 lists (Table D.1, 8 (a)), and of others that the tables name. */
function limitTable(input: SheetInput): ItemBody {
  const { form } = input.record;
  const sought = ingredients(input)
    .filter(({ classified }) => !classified.water)
    .map(({ classified: { name, cas }, listed }) => ({
      name,
      listed,
      limits: input.exposure.limits({ name, cas, form }),
    }))
    .filter(({ listed, limits }) => listed || limits.found.some(({ by }) => by !== 'otherwise'));
  const rows = sought.flatMap(({ name, listed, limits }) => limitRows(name, limits, listed));
  const several = averaged(sought.map(({ limits }) => limits)) > 1;
  const notes = several ? [limitWords.note, limitWords.mixture] : [limitWords.note];
  return firstBody(
    limitWords.noIngredients,
    bodyOf('reference tables', { table: { columns: limitWords.columns, rows }, notes }),
  );
}
