import type { SheetKey } from '../../../record/sheet-keys.ts';
import { bodyOf, type ItemBody, nothing, paragraphs } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf } from '../secrets.ts';

type Property = 'pbt' | 'endocrine';

/** Classes by which a supplier's data say the same. */
const CLASSES: Readonly<Record<Property, readonly string[]>> = {
  pbt: ['PBT', 'vPvB', 'PMT', 'vPvM'],
  endocrine: ['ED HH', 'ED ENV'],
};

/**
 * Ingredients of section 3 with a property that the Union asks about, and the maker's assessment. Where the record says
 * nothing, nothing is denied: the item stays open.
 */
export function identified(input: SheetInput, property: Property, asks: readonly SheetKey[]): ItemBody {
  const { name } = secretsOf(input);
  const { composition } = input.words.sheet;
  const list = ingredients(input).flatMap(({ index, own, classified, listed }) => {
    if (!listed) return [];
    const given = own?.[property];
    const codes = classified.data.hazards
      .filter(({ hazardClass }) => CLASSES[property].includes(hazardClass))
      .map(({ code }) => code);
    const text = [...(given ? [given] : []), ...codes].join('; ');
    return text === '' ? [] : [fill(composition.withName, { name: name(index), text })];
  });
  const text = asks.flatMap(key => paragraphs(input.record.sheet[key]));
  return bodyOf('product record', { text, list }) ?? nothing;
}
