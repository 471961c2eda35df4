import type { SheetKey } from '../../record/sheet-keys.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import { reactionWarnings } from './hazard-identification.ts';
import { isPhysical } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { phrases } from './phrases.ts';

/** Precautionary statements that name what to keep away from: heat, clothing, air, water, freezing, shock. */
const AVOID = /^P(?:210|220|222|223|230|232|235|243|250|410|411|412)\b/u;

/** Section 10 (29 CFR 1910.1200 App. D, Table D.1, 10). */
export function reactivity(input: SheetInput): SectionBodies {
  const { record, classification, elements } = input;
  const own = (key: SheetKey, list: readonly string[] = []): ItemBody =>
    firstBody(phrases.frame.none, bodyOf('product record', { text: paragraphs(record.sheet[key]), list }));
  const physical = new Set(
    classification.hazards
      .filter(({ hazardClass }) => isPhysical(hazardClass))
      .flatMap(({ statements }) => statements),
  );
  const stated = elements.hazardStatements
    .filter(({ code }) => physical.has(code))
    .map(({ text }) => `${text}.`);
  const avoid = elements.precautionaryStatements
    .filter(({ code }) => AVOID.test(code))
    .map(({ text }) => text);
  return {
    reactivity: own('reactivity', stated),
    stability: own('stability'),
    'hazardous-reactions': own('hazardous-reactions', reactionWarnings(input)),
    'conditions-to-avoid': own('conditions-to-avoid', avoid),
    'incompatible-materials': own('incompatible-materials'),
    'decomposition-products': own('hazardous-decomposition'),
  };
}
