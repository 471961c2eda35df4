import type { SheetItem } from './content.ts';
import { ingredients } from './disclosure.ts';
import { fill } from './fill.ts';
import { symptomsOpen } from './first-aid.ts';
import { sheetForm } from './form.ts';
import { isHealth } from './hazards.ts';
import { knownIngredients } from './ingredient-figures.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';
import { sheetSections } from './sections.ts';

/** Subheadings that nobody has searched for yet and that one look-up or one measurement answers. */
export interface OpenItem {
  readonly section: number;
  readonly headings: readonly string[];
  /** Keys of the subheadings. */
  readonly keys: readonly string[];
  /** Whether the standard makes the section mandatory (29 CFR 1910.1200 App. D). */
  readonly mandatory: boolean;
}

/** What the sheet still asks of the maker and of the reviewer. */
export interface SheetQuestions {
  readonly open: readonly OpenItem[];
  /** Health hazards below their cut-offs, which Table D.1, 3 (a)(2) lists where they are a risk all the same. */
  readonly belowCutOff: readonly string[];
  /** Symptoms of acute toxicity stand in the words of the class alone. */
  readonly symptomsOpen: boolean;
  /** Ingredients of which the sheet tells what no source was held for. */
  readonly unconfirmed: readonly string[];
}

/** Numbers of section 3 that neither the record nor the harmonised table has (Annex II, 3.2.4). */
export function openNumbers(input: SheetInput): readonly OpenItem[] {
  if (!sheetForm(input.classification.basis.id).reach) return [];
  const { openNumbers: words } = input.words.sheet.ghs;
  const { identity } = secretsOf(input);
  const listed = ingredients(input).filter(({ listed: named, index }) => named && !identity.has(index));
  const item = (phrase: string, lacking: typeof listed): readonly OpenItem[] => {
    const names = lacking.map(({ classified }) => classified.name).join(', ');
    return names === ''
      ? []
      : [{ section: 3, headings: [fill(phrase, { names })], keys: ['ingredients'], mandatory: true }];
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
  const open = sheetSections(input).flatMap(({ number: section, note, items }) => {
    const asked = new Map<string, SheetItem[]>();
    for (const item of items.filter(({ state }) => state === 'open')) {
      const question = item.question ?? item.key;
      asked.set(question, [...(asked.get(question) ?? []), item]);
    }
    return [...asked.values()].map(group => ({
      section,
      headings: group.map(({ heading }) => heading),
      keys: group.map(({ key }) => key),
      mandatory: note === null,
    }));
  });
  return {
    open: [
      ...open.filter(({ mandatory }) => mandatory),
      ...openNumbers(input),
      ...open.filter(({ mandatory }) => !mandatory),
    ],
    belowCutOff: ingredients(input)
      .filter(({ due, hazards }) => !due && hazards.some(({ hazardClass }) => isHealth(hazardClass)))
      .map(({ classified }) => classified.name),
    symptomsOpen: symptomsOpen(input),
    unconfirmed: knownIngredients(input)
      .filter(({ properties }) => properties !== input.properties.water)
      .map(({ name }) => name),
  };
}
