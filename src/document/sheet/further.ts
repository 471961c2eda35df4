import type { SheetKey } from '../../record/sheet-keys.ts';
import { adviceTexts } from './advice.ts';
import { bodyOf, firstBody, type ItemBody, nothing, paragraphs, type SectionBodies } from './content.ts';
import { ingredients } from './disclosure.ts';
import { bioaccumulation, mobility, persistence } from './fate.ts';
import { figure, fill } from './fill.ts';
import { hazardTitle } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { measure } from './parts.ts';
import { secretsOf } from './secrets.ts';
import { statementsFor } from './statements.ts';

type OwnKey = 'ecotoxicity' | 'persistence' | 'bioaccumulation' | 'mobility';

/** The maker's text, then what the record gives for single ingredients. */
function ownTexts(input: SheetInput, key: SheetKey, own?: OwnKey): readonly string[] {
  const { name } = secretsOf(input);
  const { withName } = input.words.sheet.composition;
  const single = ingredients(input).flatMap(ingredient => {
    const text = own && ingredient.own?.[own];
    return text ? [fill(withName, { name: name(ingredient.index), text })] : [];
  });
  return [...paragraphs(input.record.sheet[key]), ...single];
}

const ownBody = (
  input: SheetInput,
  key: SheetKey,
  own: OwnKey,
  derived: (input: SheetInput, except: ReadonlySet<string>) => readonly string[],
): ItemBody => {
  const { name } = secretsOf(input);
  const given = new Set(
    ingredients(input)
      .filter(ingredient => ingredient.own?.[own])
      .map(({ index }) => name(index)),
  );
  const text = ownTexts(input, key, own);
  const whole = paragraphs(input.record.sheet[key]).length > 0;
  const known = whole ? [] : derived(input, given);
  const notes = known.length > 0 ? [input.words.sheet.further.reference] : [];
  const source = text.length > 0 ? 'product record' : 'reference tables';
  return bodyOf(source, { text: [...text, ...known], notes }) ?? nothing;
};

/** Section 12 (29 CFR 1910.1200 App. D, Table D.1, 12; not mandatory). */
export function ecology(input: SheetInput): SectionBodies {
  const { classification } = input;
  const { further: words } = input.words.sheet;
  const aquatic = classification.hazards.filter(({ hazardClass }) => hazardClass.startsWith('Aquatic'));
  const unknown = classification.unknownAquatic ?? 0;
  const own = ownTexts(input, 'ecology.toxicity', 'ecotoxicity');
  const titles = aquatic.map(hazard => hazardTitle(hazard, input.words.sheet)).join('; ');
  return {
    ecotoxicity:
      bodyOf(own.length > 0 ? 'product record' : 'hazard classes', {
        text: [
          ...own,
          ...(titles === '' ? [] : [fill(words.aquatic, { titles })]),
          ...aquaticIngredients(input),
          ...(unknown > 0 ? [fill(words.unknownAquatic, { percent: figure(unknown) })] : []),
        ],
      }) ?? nothing,
    persistence: ownBody(input, 'ecology.persistence', 'persistence', persistence),
    bioaccumulation: ownBody(input, 'ecology.bioaccumulation', 'bioaccumulation', bioaccumulation),
    mobility: ownBody(input, 'ecology.mobility', 'mobility', mobility),
    'other-effects': firstBody(
      bodyOf('product record', { text: ownTexts(input, 'ecology.other') }),
      bodyOf('hazard classes', { list: adviceTexts(input, 'other-effects') }),
    ),
  };
}

/**
 * Environmental classes of the ingredients that section 3 lists; the standard has none, so that they say nothing of
 * the mixture, and an ingredient listed for them alone would be disclosed beyond section 3.
 */
function aquaticIngredients(input: SheetInput): readonly string[] {
  const { further: words } = input.words.sheet;
  const { name } = secretsOf(input);
  const names = ingredients(input).flatMap(({ classified, listed, index }) => {
    const aquatic = classified.data.hazards.filter(({ hazardClass }) => hazardClass.startsWith('Aquatic'));
    if (aquatic.length === 0 || !listed) return [];
    const titles = aquatic.map(({ code }) => code).join(', ');
    return [fill(words.aquaticIngredient, { name: name(index), titles })];
  });
  return names.length > 0 ? [fill(words.aquaticIngredients, { names: names.join('; ') })] : [];
}

/** Section 13 (not mandatory). */
export function disposal(input: SheetInput): SectionBodies {
  const label = statementsFor(input.elements, 'disposal');
  return {
    disposal: measure(input, {
      place: 'disposal',
      own: 'disposal',
      label,
      notes: [input.words.sheet.further.disposal],
    }),
  };
}
