import { ingredients } from './disclosure.ts';
import { fill } from './fill.ts';
import { isHealth } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';
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

/** Numbers of section 3 that neither the record nor the harmonised table has (Annex II, 3.2.4). */
export function openNumbers(input: SheetInput): readonly OpenItem[] {
  if (input.classification.basis.id !== 'eu-clp') return [];
  const { openNumbers: words } = input.words.sheet.ghs;
  const { identity } = secretsOf(input);
  const listed = ingredients(input).filter(({ listed: named, index }) => named && !identity.has(index));
  const item = (phrase: string, lacking: typeof listed): readonly OpenItem[] => {
    const names = lacking.map(({ classified }) => classified.name).join(', ');
    return names === '' ? [] : [{ section: 3, heading: fill(phrase, { names }), mandatory: true }];
  };
  return [
    ...item(
      words.ec,
      listed.filter(({ index, own }) => !own?.ec && !input.entries[index]?.ec),
    ),
    ...item(
      words.registration,
      listed.filter(({ own }) => !own?.registration),
    ),
  ];
}

/** The items without contents, those of mandatory sections first, and the ingredients to judge. */
export function sheetQuestions(input: SheetInput): SheetQuestions {
  const open = sheetSections(input).flatMap(({ number: section, note, items }) =>
    items
      .filter(({ state }) => state === 'open')
      .map(({ heading }) => ({ section, heading, mandatory: note === null })),
  );
  return {
    open: [
      ...open.filter(({ mandatory }) => mandatory),
      ...openNumbers(input),
      ...open.filter(({ mandatory }) => !mandatory),
    ],
    belowCutOff: ingredients(input)
      .filter(({ listed, hazards }) => !listed && hazards.some(({ hazardClass }) => isHealth(hazardClass)))
      .map(({ classified }) => classified.name),
  };
}
