import type { SheetKey } from '../../record/sheet-keys.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import { hazardTitle } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { figure, fill, phrases } from './phrases.ts';
import { statementsFor } from './statements.ts';

const words = phrases.further;

const ownTexts = ({ record }: SheetInput, key: SheetKey): ItemBody =>
  firstBody(phrases.frame.none, bodyOf('product record', { text: paragraphs(record.sheet[key]) }));

/** Section 12 (29 CFR 1910.1200 App. D, Table D.1, 12; not mandatory). */
export function ecology(input: SheetInput): SectionBodies {
  const { classification, record } = input;
  const aquatic = classification.hazards.filter(({ hazardClass }) => hazardClass.startsWith('Aquatic'));
  const unknown = classification.unknownAquatic ?? 0;
  return {
    ecotoxicity: firstBody(
      phrases.frame.none,
      bodyOf('product record', {
        text: [
          ...paragraphs(record.sheet['ecology.toxicity']),
          ...(aquatic.length > 0
            ? [fill(words.aquatic, { titles: aquatic.map(hazardTitle).join('; ') })]
            : []),
          ...aquaticIngredients(input),
          ...(unknown > 0 ? [fill(words.unknownAquatic, { percent: figure(unknown) })] : []),
        ],
      }),
    ),
    persistence: ownTexts(input, 'ecology.persistence'),
    bioaccumulation: ownTexts(input, 'ecology.bioaccumulation'),
    mobility: ownTexts(input, 'ecology.mobility'),
    'other-effects': ownTexts(input, 'ecology.other'),
  };
}

/** Environmental classes of the ingredients; the standard has none, so that they say nothing of the mixture. */
function aquaticIngredients({ classification }: SheetInput): readonly string[] {
  const names = classification.constituents.flatMap(({ name, data }) => {
    const aquatic = data.hazards.filter(({ hazardClass }) => hazardClass.startsWith('Aquatic'));
    if (aquatic.length === 0) return [];
    return [fill(words.aquaticIngredient, { name, titles: aquatic.map(({ code }) => code).join(', ') })];
  });
  return names.length > 0 ? [fill(words.aquaticIngredients, { names: names.join('; ') })] : [];
}

/** Section 13 (not mandatory). */
export function disposal({ record, elements }: SheetInput): SectionBodies {
  const body = bodyOf('product record', {
    text: paragraphs(record.sheet.disposal),
    list: statementsFor(elements, 'disposal'),
  });
  return { disposal: { ...firstBody(phrases.frame.none, body), notes: [words.disposal] } };
}

/** Section 14 (not mandatory). */
export function transport(input: SheetInput): SectionBodies {
  const keys: readonly (readonly [string, SheetKey])[] = [
    ['un-number', 'transport.un-number'],
    ['shipping-name', 'transport.proper-shipping-name'],
    ['transport-class', 'transport.hazard-class'],
    ['packing-group', 'transport.packing-group'],
    ['special-precautions', 'transport.notes'],
  ];
  const fallback = `${phrases.frame.none} ${words.transport}`;
  return Object.fromEntries(
    keys.map(([name, key]) => [
      name,
      firstBody(
        name === 'un-number' ? fallback : phrases.frame.none,
        bodyOf('product record', { text: paragraphs(input.record.sheet[key]) }),
      ),
    ]),
  );
}
