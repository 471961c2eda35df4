import { ingredients } from './disclosure.ts';
import { isHealth } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { sheetSections } from './sections.ts';

/** A subheading that nobody has searched for yet. */
export interface OpenItem {
  readonly section: number;
  readonly heading: string;
  /** Whether the standard makes the section mandatory (29 CFR 1910.1200 App. D). */
  readonly mandatory: boolean;
}

/** What the sheet still asks of the maker and of the reviewer. */
export interface SheetQuestions {
  readonly open: readonly OpenItem[];
  /** Health hazards below their cut-offs, which Table D.1, 3 (a)(2) lists where they are a risk all the same. */
  readonly belowCutOff: readonly string[];
}

/** The items without contents, those of mandatory sections first, and the ingredients to judge. */
export function sheetQuestions(input: SheetInput): SheetQuestions {
  const open = sheetSections(input).flatMap(({ number: section, note, items }) =>
    items
      .filter(({ state }) => state === 'open')
      .map(({ heading }) => ({ section, heading, mandatory: note === null })),
  );
  return {
    open: [...open.filter(({ mandatory }) => mandatory), ...open.filter(({ mandatory }) => !mandatory)],
    belowCutOff: ingredients(input)
      .filter(({ due, hazards }) => !due && hazards.some(({ hazardClass }) => isHealth(hazardClass)))
      .map(({ classified }) => classified.name),
  };
}
