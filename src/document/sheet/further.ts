import type { SheetKey } from '../../record/sheet-keys.ts';
import { inTerms } from '../../words/in-terms.ts';
import { adviceTexts } from './advice.ts';
import { bodyOf, firstBody, type ItemBody, nothing, paragraphs, type SectionBodies } from './content.ts';
import { ingredients } from './disclosure.ts';
import { bioaccumulation, mobility, persistence } from './fate.ts';
import { figure, fill } from './fill.ts';
import { classTitle, hazardTitle } from './hazards.ts';
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
  const source = text.length > 0 ? 'product record' : 'reference tables';
  return bodyOf(source, { text: [...text, ...known] }) ?? nothing;
};

/** Section 12 (29 CFR 1910.1200 App. D, Table D.1, 12; not mandatory). */
export function ecology(input: SheetInput): SectionBodies {
  return {
    ecotoxicity: ecotoxicity(input),
    persistence: ownBody(input, 'ecology.persistence', 'persistence', persistence),
    bioaccumulation: ownBody(input, 'ecology.bioaccumulation', 'bioaccumulation', bioaccumulation),
    mobility: ownBody(input, 'ecology.mobility', 'mobility', mobility),
    'other-effects': firstBody(
      bodyOf('product record', { text: ownTexts(input, 'ecology.other') }),
      bodyOf('hazard classes', { list: adviceTexts(input, 'other-effects') }),
    ),
  };
}

/** The mixture by the summation of GHS Chapter 4.1, and the ingredients that it rests on. */
function ecotoxicity(input: SheetInput): ItemBody {
  const { further: words } = input.words.sheet;
  const { hazards, otherClasses, unknownAquatic, basis } = input.environment ?? input.classification;
  const own = ownTexts(input, 'ecology.toxicity', 'ecotoxicity');
  const aquatic = hazards.filter(({ hazardClass }) => isAquatic(hazardClass));
  const undecided = otherClasses.filter(
    ({ class: name, outcome }) => isAquatic(name) && outcome === 'insufficient-data',
  );
  const titles = aquatic.map(hazard => hazardTitle(hazard, input.words.sheet)).join('; ');
  const open = undecided.map(each => classTitle(each, input.words.sheet)).join('; ');
  const result = [
    ...(titles === ''
      ? []
      : [fill(words.aquatic, { titles, basis: inTerms(input.words.sheet.terms.bases, basis.title) })]),
    ...(open === '' ? [] : [fill(words.aquaticUndecided, { titles: open })]),
    ...(titles + open === ''
      ? [fill(words.notAquatic, { basis: inTerms(input.words.sheet.terms.bases, basis.title) })]
      : []),
  ];
  const unknown = unknownAquatic ?? 0;
  return (
    bodyOf(own.length > 0 ? 'product record' : 'calculation', {
      text: [
        ...own,
        ...result,
        ...aquaticIngredients(input),
        ...(unknown > 0
          ? [fill(words.unknownAquatic, { percent: figure(unknown, 3, input.words.decimalMark) })]
          : []),
      ],
    }) ?? nothing
  );
}

const isAquatic = (name: string): boolean => name.startsWith('Aquatic');

/**
 * Environmental classes of the ingredients that section 3 lists; the standard has none, so that they say nothing of
 * the mixture, and an ingredient listed for them alone would be disclosed beyond section 3.
 */
function aquaticIngredients(input: SheetInput): readonly string[] {
  const { further: words } = input.words.sheet;
  const { name } = secretsOf(input);
  const names = ingredients(input).flatMap(({ classified, listed, index }) => {
    const { hazards, mFactors } = classified.data;
    const aquatic = hazards.filter(({ hazardClass }) => isAquatic(hazardClass));
    if (aquatic.length === 0 || !listed) return [];
    const factor = (hazardClass: string): number =>
      hazardClass === 'Aquatic Acute' ? mFactors.acute : mFactors.chronic;
    const titles = aquatic
      .map(({ code, hazardClass }) =>
        factor(hazardClass) > 1 ? fill(words.withFactor, { code, factor: factor(hazardClass) }) : code,
      )
      .join(', ');
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
