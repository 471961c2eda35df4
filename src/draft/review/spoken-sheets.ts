import type { SheetItem } from '../../document/sheet/content.ts';
import { sheetSections } from '../../document/sheet.ts';
import type { ReviewedSheet } from '../draft-sheet.ts';
import { linesOf } from './sheet-states.ts';

interface NamedSheet {
  readonly name: string;
  readonly sheet: Pick<ReviewedSheet, 'input'>;
}

/** A text of a sheet beside that of the reviewer. */
interface Pair {
  readonly name: string;
  readonly lines: readonly string[];
}

/** A sheet in another language, section by section, each item beside the same item as the reviewer reads it. */
export interface SpokenSheet {
  readonly name: string;
  /** Name of the sheet that the reviewer reads. */
  readonly beside: string;
  /** BCP 47 */
  readonly language: string;
  readonly sections: readonly {
    readonly number: number;
    readonly title: string;
    readonly items: readonly { readonly read: Pair; readonly said: Pair }[];
  }[];
}

const pair = (item: SheetItem): Pair => ({
  name: item.part ? `${item.part}: ${item.heading}` : item.heading,
  lines: linesOf(item),
});

/**
 * Sheets in other languages beside those that the reviewer reads: both are drafted from the same facts, so that every
 * item of one is an item of the other.
 * @throws Error where an item is on one of them alone: a defect.
 */
export const spokenSheets = (
  read: readonly NamedSheet[],
  spoken: readonly NamedSheet[],
): readonly SpokenSheet[] => {
  const byBasis = new Map(read.map(each => [each.sheet.input.classification.basis.id, each]));
  return spoken.flatMap(({ name, sheet: { input } }) => {
    const beside = byBasis.get(input.classification.basis.id);
    // Without the sheet that the reviewer reads there is nothing to compare with, and that is told.
    if (!beside) return [];
    const own = sheetSections(beside.sheet.input);
    const sections = sheetSections(input).map(({ number, items }, at) => ({
      number,
      title: own[at]!.title,
      items: items.map(item => {
        const same = own[at]!.items.find(({ key }) => key === item.key);
        if (!same) throw new Error(`${name}: ${item.key} of section ${number} is not in ${beside.name}`);
        return { read: pair(same), said: pair(item) };
      }),
    }));
    return [{ name, beside: beside.name, language: input.words.language, sections }];
  });
};
