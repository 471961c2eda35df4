import { marked } from '../../quantity/print.ts';
import type { Words } from '../../words/words.ts';
import { percentText, prescribedRange } from './concentration.ts';
import { bodyOf, firstBody, type ItemBody, nothing, type SectionBodies, said } from './content.ts';
import { type Ingredient, ingredients } from './disclosure.ts';
import { figure, fill } from './fill.ts';
import { hazardTitle, isOfStandard } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { lookUps } from './look-ups.ts';
import { rangeOrigins } from './range-origin.ts';
import { type Secrets, secretsOf } from './secrets.ts';

/** Section 3 (29 CFR 1910.1200 App. D, Table D.1, 3; what is withheld, paragraph (i)(1)). */
export function composition(input: SheetInput): SectionBodies {
  const { composition: words } = input.words.sheet;
  const all = ingredients(input);
  const listed = all.filter(ingredient => ingredient.listed);
  const secrets = secretsOf(input);
  const columns = words.columns.map((column, at) =>
    at === 2 && input.record.form === 'gas' ? words.gasColumn : column,
  );
  const rows = listed.map(ingredient => [
    secrets.name(ingredient.index),
    secrets.identity.has(ingredient.index) ? words.casWithheld : (ingredient.classified.cas ?? words.noCas),
    concentration(ingredient, secrets, input.words),
    classes(input, ingredient),
  ]);
  const table = bodyOf('product record', { table: { columns, rows } });
  return {
    ingredients: {
      ...(table ?? said('calculation', all.some(hasNoData) ? words.noneListedUnjudged : words.noneListed)),
      notes: summary(
        input,
        all.filter(ingredient => !ingredient.listed),
        secrets,
      ),
    },
    synonyms: firstBody(
      ownOf(input, listed, ({ synonyms }) => synonyms.join(', ')),
      furtherNames(input, listed),
    ),
    impurities: ownOf(input, listed, ({ impurities }) => impurities) ?? nothing,
    concentrations: concentrations(input, listed, secrets),
    'trade-secret': claims(input, secrets),
  };
}

/** Classes of an ingredient; of one that is not due here, why it is named. */
function classes(input: SheetInput, { hazards, due, namedIn, classified }: Ingredient): string {
  const { composition: words } = input.words.sheet;
  const titles = hazards
    .filter(({ hazardClass }) => isOfStandard(hazardClass))
    .map(hazard => hazardTitle(hazard, input.words.sheet))
    .join('; ');
  if (due) return titles;
  const standing = titles !== '' ? words.belowCutOff : classified.data.noData ? words.noData : words.noClass;
  const sections = namedIn.map(section => words.namedIn[section]).join(', ');
  return fill(words.named, { standing: fill(standing, { titles }), sections });
}

function concentration(
  { classified, index }: Ingredient,
  { percent }: Secrets,
  { sheet, decimalMark }: Words,
): string {
  const { to } = sheet.composition;
  const { low, high } = classified;
  if (!percent.has(index)) return percentText(low, high, to, decimalMark);
  const range = prescribedRange({ low: low.value, high: high.value });
  return range ? marked(fill(to, { ...range }), decimalMark) : '–';
}

/** What the record says of single ingredients that section 3 lists. */
function ownOf(
  input: SheetInput,
  listed: readonly Ingredient[],
  told: (of: SheetInput['record']['sheetIngredients'][number]) => string | null,
): ItemBody | null {
  const { name } = secretsOf(input);
  const { withName } = input.words.sheet.composition;
  const text = listed.flatMap(({ own, index }) => {
    const each = own && told(own);
    return each ? [fill(withName, { name: name(index), text: each })] : [];
  });
  return bodyOf('product record', { text });
}

/** Names under which the lists of the sheet and reference works have the ingredients. */
function furtherNames(input: SheetInput, listed: readonly Ingredient[]): ItemBody | null {
  const { identity, name } = secretsOf(input);
  const { limits } = lookUps(input);
  const { withName } = input.words.sheet.composition;
  if (input.record.sheet.synonyms) return null;
  const text = listed.flatMap(({ index, classified: { name: own, cas } }) => {
    if (identity.has(index)) return [];
    const listedAs = (limits[index]?.found ?? []).flatMap(({ by, row }) => (by === 'cas' ? [row.name] : []));
    const names = new Map(
      [...(input.properties.of(cas)?.names ?? []), ...listedAs].map(each => [each.toLowerCase(), each]),
    );
    names.delete(own.toLowerCase());
    return names.size > 0
      ? [fill(withName, { name: name(index), text: [...names.values()].join('; ') })]
      : [];
  });
  return bodyOf('reference tables', { text });
}

/**
 * Which concentrations are exact, which ranges, and whose ranges they are.
 * @param claimed what is said of those whose percent is claimed as a trade secret
 */
export function concentrations(
  input: SheetInput,
  listed: readonly Ingredient[],
  { percent, name }: Secrets,
  claimed = input.words.sheet.composition.prescribed,
): ItemBody {
  const { composition: words } = input.words.sheet;
  const shown = listed.filter(({ index }) => !percent.has(index));
  const ranged = shown.filter(isRange);
  const names = (some: readonly Ingredient[]) => ({ names: some.map(({ index }) => name(index)).join('; ') });
  const of = (origin: 'supplier' | 'maker') =>
    ranged.filter(({ classified }) => rangeOrigins(input.record, classified).has(origin));
  const sentence = (phrase: string, some: readonly Ingredient[]) =>
    some.length > 0 ? [fill(phrase, names(some))] : [];
  return said(
    'product record',
    ...(ranged.length < shown.length || listed.length === 0 ? [words.exact] : []),
    ...sentence(words.makerRange, of('maker')),
    ...sentence(words.supplierRange, of('supplier')),
    ...sentence(
      claimed,
      listed.filter(({ index }) => percent.has(index)),
    ),
  );
}

/** What is withheld and by whom ((i)(1)(iii) and (vii), (i)(2)). */
function claims(input: SheetInput, { identity, percent, name }: Secrets): ItemBody {
  const { composition: words } = input.words.sheet;
  const { maker } = input.record;
  const names = (places: Iterable<number>) => ({ names: [...places].map(name).join('; ') });
  const supplier = input.formula.constituents.flatMap(({ undisclosed }, at) => (undisclosed ? [at] : []));
  const claimed = identity.size + percent.size > 0;
  const text = [
    ...(identity.size > 0 ? [fill(words.claimIdentity, names(identity))] : []),
    ...(percent.size > 0 ? [fill(words.claimPercent, names(percent))] : []),
    ...(claimed ? [fill(words.disclosed, { telephone: maker.emergency.telephone })] : []),
    ...(supplier.length > 0 ? [fill(words.supplierWithholds, names(supplier))] : []),
  ];
  return said('product record', ...(text.length > 0 ? text : [words.noClaim]));
}

/** What is left of the mixture, in a sentence or two; no total where one would tell what is withheld. */
function summary(
  { thresholds, classification, words: language }: SheetInput,
  others: readonly Ingredient[],
  { name, percent }: Secrets,
): readonly string[] {
  const words = language.sheet.composition;
  const total = (some: readonly Ingredient[]): string =>
    percent.size > 0 ? '' : fill(words.total, { percent: totalText(some, words, language.decimalMark) });
  const unjudged = others.filter(hasNoData);
  const known = others.filter(ingredient => !hasNoData(ingredient));
  const notes: string[] = [];
  if (known.length > 0) {
    const water = known.some(({ classified }) => classified.water);
    notes.push(fill(water ? words.remainderWater : words.remainder, { total: total(known) }));
  }
  if (unjudged.length > 0) {
    const names = unjudged.map(({ index }) => name(index)).join('; ');
    notes.push(fill(words.unjudged, { total: total(unjudged), names }));
  }
  const due = thresholds.acuteToxicity.unknown.relevantFrom.percent;
  const stated = Object.values(classification.unknownAcuteToxicity).some(share => share >= due);
  if (stated) notes.push(words.unknownData);
  return notes;
}

const isRange = ({ classified: { low, high } }: Ingredient): boolean => low.value < high.value;

/** No hazard is known and an endpoint has no data: neither hazardous nor free of hazards. */
const hasNoData = ({ classified, hazards }: Ingredient): boolean =>
  classified.data.unknown.size > 0 && hazards.length === 0;

/** Share of the mixture, `up to` where the formula gives ranges. */
function totalText(
  some: readonly Ingredient[],
  words: { readonly upTo: string; readonly percent: string },
  decimalMark: string,
): string {
  const total = some.reduce((sum, { classified }) => sum + classified.high.value, 0);
  return fill(some.some(isRange) ? words.upTo : words.percent, {
    percent: figure(Math.min(total, 100), 3, decimalMark),
  });
}
