import { paragraphs, type SectionBodies } from './content.ts';
import { fill } from './fill.ts';
import { flashPoint } from './flash-point.ts';
import type { SheetInput } from './input.ts';
import { measure } from './parts.ts';
import { closed, statementsFor } from './statements.ts';

/** Hazard statements on fire, explosion and pressure as GHS numbers them; H290 is on corrosion of metals. */
const FIRE_STATEMENT = /^H2[0-8]\d/u;

/** Section 5 (29 CFR 1910.1200 App. D, Table D.1, 5). */
export function fireFighting(input: SheetInput): SectionBodies {
  const { record, elements } = input;
  const { measures: words } = input.words.sheet;
  const point = flashPoint(input);
  const stated = elements.hazardStatements.filter(({ code }) => FIRE_STATEMENT.test(code));
  const decomposition = paragraphs(record.sheet['hazardous-decomposition']);
  const special = paragraphs(record.sheet['fire.special-hazards']);
  return {
    'suitable-media': measure(input, {
      place: 'suitable-media',
      own: 'fire.suitable-media',
      label: statementsFor(elements, 'suitable-media'),
    }),
    'unsuitable-media': measure(input, { place: 'unsuitable-media', own: 'fire.unsuitable-media' }),
    'special-hazards': measure(input, {
      place: 'special-hazards',
      own: [
        ...special,
        ...(special.length > 0 ? decomposition.map(text => fill(words.decomposition, { text })) : []),
      ],
      label: stated.map(({ text }) => closed(text)),
      derived: special.length > 0 ? [] : decomposition.map(text => fill(words.decomposition, { text })),
      notes: point ? [fill(words.flashPoint, { text: point })] : [],
    }),
    'fire-fighters': measure(input, {
      place: 'fire-fighters',
      own: 'fire.firefighters',
      label: statementsFor(elements, 'fire-fighters'),
    }),
  };
}
