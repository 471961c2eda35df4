import { bodyOf, firstBody, paragraphs, type SectionBodies } from './content.ts';
import { isPhysical } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { fill, phrases } from './phrases.ts';
import { flashPoint } from './properties.ts';
import { statementsFor } from './statements.ts';

const words = phrases.measures;

/** Hazard statements on fire, explosion and pressure as GHS numbers them; H290 is on corrosion of metals. */
const FIRE_STATEMENT = /^H2[0-8]\d/u;
const WITHOUT_FIRE = 'Met. Corr.';

/** Section 5 (29 CFR 1910.1200 App. D, Table D.1, 5). */
export function fireFighting(input: SheetInput): SectionBodies {
  const { record, classification, elements } = input;
  const fire = classification.hazards.some(
    ({ hazardClass }) => isPhysical(hazardClass) && hazardClass !== WITHOUT_FIRE,
  );
  const media = statementsFor(elements, 'suitable-media');
  const point = flashPoint(record);
  const stated = elements.hazardStatements.filter(({ code }) => FIRE_STATEMENT.test(code));
  const decomposition = paragraphs(record.sheet['hazardous-decomposition']);
  const special = [
    ...paragraphs(record.sheet['fire.special-hazards']),
    ...stated.map(({ text }) => fill(words.fireStatement, { text })),
    ...decomposition.map(text => fill(words.decomposition, { text })),
  ];
  return {
    'suitable-media': firstBody(
      fire ? words.noMediaHazard : words.noMedia,
      bodyOf('product record', { text: paragraphs(record.sheet['fire.suitable-media']), list: media }),
    ),
    'unsuitable-media': firstBody(
      phrases.frame.none,
      bodyOf('product record', { text: paragraphs(record.sheet['fire.unsuitable-media']) }),
    ),
    'special-hazards': firstBody(
      phrases.frame.none,
      bodyOf('product record', {
        text: special,
        notes: special.length > 0 && point ? [fill(words.flashPoint, { text: point })] : [],
      }),
    ),
    'fire-fighters': firstBody(
      words.fireFighters,
      bodyOf('product record', {
        text: paragraphs(record.sheet['fire.firefighters']),
        list: statementsFor(elements, 'fire-fighters'),
      }),
    ),
  };
}
