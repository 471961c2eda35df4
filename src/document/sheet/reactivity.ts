import type { SectionBodies } from './content.ts';
import { mixingWarnings, reactionWarnings } from './hazard-identification.ts';
import { isPhysical } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { measure } from './parts.ts';
import { closed } from './statements.ts';

/** Precautionary statements that name what to keep away from: heat, clothing, air, water, freezing, shock. */
const AVOID = /^P(?:210|220|222|223|230|232|235|243|250|410|411|412)\b/u;

/** Section 10 (29 CFR 1910.1200 App. D, Table D.1, 10). */
export function reactivity(input: SheetInput): SectionBodies {
  const { classification, elements } = input;
  const physical = new Set(
    classification.hazards
      .filter(({ hazardClass }) => isPhysical(hazardClass))
      .flatMap(({ statements }) => statements),
  );
  const stated = elements.hazardStatements
    .filter(({ code }) => physical.has(code))
    .map(({ text }) => closed(text));
  const avoid = elements.precautionaryStatements
    .filter(({ code }) => AVOID.test(code))
    .map(({ text }) => text);
  return {
    reactivity: measure(input, { place: 'reactivity', own: 'reactivity', label: stated }),
    stability: measure(input, { place: 'stability', own: 'stability' }),
    'hazardous-reactions': measure(input, {
      place: 'hazardous-reactions',
      own: 'hazardous-reactions',
      derived: [...reactionWarnings(input), ...mixingWarnings(input)],
    }),
    'conditions-to-avoid': measure(input, {
      place: 'conditions-to-avoid',
      own: 'conditions-to-avoid',
      label: avoid,
    }),
    'incompatible-materials': measure(input, {
      place: 'incompatible-materials',
      own: 'incompatible-materials',
    }),
    'decomposition-products': measure(input, {
      place: 'decomposition-products',
      own: 'hazardous-decomposition',
    }),
  };
}
