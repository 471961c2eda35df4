import { percentText, prescribedRange } from './concentration.ts';
import { bodyOf, firstBody, type SectionBodies } from './content.ts';
import { type Ingredient, ingredients } from './disclosure.ts';
import { hazardTitle, isOfStandard } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { figure, fill, phrases } from './phrases.ts';

const words = phrases.composition;

/** Section 3 (29 CFR 1910.1200 App. D, Table D.1, 3). */
export function composition(input: SheetInput): SectionBodies {
  const all = ingredients(input);
  const listed = all.filter(ingredient => ingredient.listed);
  const others = all.filter(ingredient => !ingredient.listed);
  const withheld = input.withholdConcentrations === true;
  const ranged = listed.some(isRange);
  const columns = words.columns.map((column, at) =>
    at === 2 && input.record.form === 'gas' ? words.gasColumn : column,
  );
  const rows = listed.map(ingredient => [
    ingredient.classified.name,
    ingredient.classified.cas ?? words.noCas,
    concentration(ingredient, withheld),
    ingredient.hazards
      .filter(({ hazardClass }) => isOfStandard(hazardClass))
      .map(hazardTitle)
      .join('; '),
  ]);
  return {
    ingredients: {
      ...firstBody(words.noneListed, bodyOf('product record', { table: { columns, rows } })),
      notes: summary(input, others),
    },
    synonyms: { text: [words.synonyms], source: 'none' },
    impurities: { text: [words.impurities], source: 'none' },
    concentrations: {
      text: [withheld ? words.prescribed : ranged ? words.ranges : words.exact],
      source: 'product record',
    },
    'trade-secret': { text: [withheld ? words.claim : words.noClaim], source: 'product record' },
  };
}

function concentration({ classified }: Ingredient, withheld: boolean): string {
  const [low, high] = [classified.low.value, classified.high.value];
  const range = withheld ? prescribedRange({ low, high }) : null;
  if (range) return `${range.low} to ${range.high}`;
  return percentText(classified.low, classified.high);
}

/** What is left of the mixture, in a sentence or two. */
function summary(
  { thresholds, classification }: SheetInput,
  others: readonly Ingredient[],
): readonly string[] {
  const below = others.filter(({ belowCutOff }) => belowCutOff).length;
  const unjudged = others.filter(hasNoData);
  const known = others.filter(ingredient => !hasNoData(ingredient));
  const notes: string[] = [];
  if (known.length > 0) {
    const water = known.some(({ classified }) => classified.water);
    notes.push(fill(water ? words.remainderWater : words.remainder, { percent: totalText(known) }));
  }
  if (below > 0) notes.push(fill(words.belowCutOff, { count: below }));
  if (unjudged.length > 0) {
    const names = unjudged.map(({ classified }) => classified.name).join('; ');
    notes.push(fill(words.unjudged, { percent: totalText(unjudged), names }));
  }
  const due = thresholds.acuteToxicity.unknown.relevantFrom.percent;
  const stated = Object.values(classification.unknownAcuteToxicity).some(percent => percent >= due);
  if (stated) notes.push(words.unknownData);
  return notes;
}

const isRange = ({ classified: { low, high } }: Ingredient): boolean => low.value < high.value;

/** No hazard is known and an endpoint has no data: neither hazardous nor free of hazards. */
const hasNoData = ({ classified, hazards }: Ingredient): boolean =>
  classified.data.unknown.size > 0 && hazards.length === 0;

/** Share of the mixture, `up to` where the formula gives ranges. */
function totalText(some: readonly Ingredient[]): string {
  const total = some.reduce((sum, { classified }) => sum + classified.high.value, 0);
  const ranged = some.some(isRange);
  return fill(ranged ? words.upTo : words.percent, { percent: figure(Math.min(total, 100)) });
}
