import type { SheetKey } from '../../record/sheet-keys.ts';
import type { ExposureLimit } from '../../reference/exposure/open-exposure.ts';
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

/** OSHA limits of every ingredient that section 3 lists. */
function limitTable(input: SheetInput): ItemBody {
  const listed = ingredients(input).filter(ingredient => ingredient.listed);
  const rows = listed.flatMap(({ classified: { name, cas } }) => {
    if (cas === null) return [[name, words.noCas, '–', '–']];
    const limits = substantial(input.exposure.limits(cas));
    if (limits.length === 0) return [[name, words.noneInTables, '–', '–']];
    return limits.map(limit => [ingredientName(name, limit), average(limit), shortTerm(limit), place(limit)]);
  });
  const body = bodyOf('reference tables', { table: { columns: words.columns, rows }, notes: [words.note] });
  return firstBody(words.noIngredients, body);
}

const hasFigures = ({ twa, ceiling, peak }: ExposureLimit): boolean =>
  [twa.ppm, twa.milligramsPerCubicMetre, ceiling, peak].some(part => part !== null);

/** Without the rows that only point to another row that is there. */
const substantial = (limits: readonly ExposureLimit[]): readonly ExposureLimit[] => {
  const figures = limits.filter(hasFigures);
  return figures.length > 0 ? figures : limits;
};

/** The table's own name where it says more than the name of the ingredient. */
function ingredientName(name: string, { name: printed }: ExposureLimit): string {
  return printed.toLowerCase() === name.toLowerCase() ? name : `${name} [${printed}]`;
}

function average({ twa, skin, notes }: ExposureLimit): string {
  const figures = [
    twa.ppm && `${twa.ppm} ppm`,
    twa.milligramsPerCubicMetre && `${twa.milligramsPerCubicMetre} mg/m³`,
  ].filter(Boolean);
  const text = figures.length > 0 ? figures.join('; ') : (notes ?? words.absent);
  return skin ? `${text} (${words.skin})` : text;
}

const cubic = (text: string): string => text.replaceAll('mg/m3', 'mg/m³');

function shortTerm({ ceiling, peak, notes }: ExposureLimit): string {
  const parts = [
    ceiling && fill(words.ceiling, { ceiling: cubic(ceiling) }),
    peak && fill(words.peak, { peak: cubic(peak) }),
    notes && /^(?:STEL|excursion)/u.test(notes) ? cubic(notes) : null,
  ].filter(Boolean);
  return parts.length > 0 ? parts.join('; ') : '–';
}

/** Remarks of the source on where a row is from, which say nothing of the limit. */
const ON_THE_ROW = /^(?:STEL|excursion|see |CAS |no CAS|Z37)/u;

function place(limit: ExposureLimit): string {
  const remarks =
    (hasFigures(limit) ? limit.notes : null)?.split('; ').filter(part => !ON_THE_ROW.test(part)) ?? [];
  return [limit.table, ...remarks.map(cubic), ...(limit.compared ? [] : [words.memory])].join('; ');
}
