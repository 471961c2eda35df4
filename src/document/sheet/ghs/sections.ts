import { inTerms } from '../../../words/in-terms.ts';
import type { ItemBody, SectionBodies, SheetItem, SheetSection } from '../content.ts';
import { exposureControls } from '../exposure-controls.ts';
import { fill } from '../fill.ts';
import { fireFighting } from '../fire.ts';
import { firstAid } from '../first-aid.ts';
import { outlineOf, type SheetOutline, type SheetPart, sheetForm } from '../form.ts';
import { handlingAndStorage } from '../handling.ts';
import type { SheetInput } from '../input.ts';
import { complete, headed, itemOf } from '../items.ts';
import { abbreviations } from '../other-information.ts';
import { reactivity } from '../reactivity.ts';
import { composition } from './composition.ts';
import { disposal, regulation, transport } from './considerations.ts';
import { ecology } from './ecology.ts';
import { exposureLimits } from './exposure-limits.ts';
import { hazards } from './hazards.ts';
import { identification } from './identification.ts';
import { otherInformation } from './other-information.ts';
import { properties } from './properties.ts';
import { accidentalRelease, endUses } from './release.ts';
import { toxicology } from './toxicology.ts';

const BODIES: readonly ((input: SheetInput) => SectionBodies)[] = [
  identification,
  hazards,
  composition,
  firstAid,
  fireFighting,
  accidentalRelease,
  input => ({ ...handlingAndStorage(input), ...endUses(input) }),
  input => ({ ...exposureControls(input), ...exposureLimits(input) }),
  properties,
  reactivity,
  toxicology,
  ecology,
  disposal,
  transport,
  regulation,
  otherInformation,
];

/** Sections that repeat precautionary statements as measures. */
const MEASURES: ReadonlySet<number> = new Set([4, 5, 6, 7, 8, 10, 13]);

/** Whether the sheet is laid out by the law of the European Union or by the GHS itself. */
export const isGhsSheet = ({ classification }: Pick<SheetInput, 'classification'>): boolean =>
  sheetForm(classification.basis.id).outline === 'numbered';

/**
 * The sixteen sections with their numbered sub-sections: Regulation (EC) No 1907/2006, Annex II, Part B, or GHS,
 * Table 1.5.2. An item of the law is never left out; one that nobody has searched for says so.
 */
export function ghsSections(input: SheetInput): readonly SheetSection[] {
  const { id } = input.classification.basis;
  const { sectionHead } = sheetForm(id);
  const outlines = outlineOf(id);
  const sections = outlines.map((outline, at): SheetSection => {
    const measured = MEASURES.has(outline.number) ? { ...input, elements: input.measures } : input;
    const bodies = BODIES[at]!(measured);
    const { headings } = input.words.sheet.terms;
    const { number } = outline;
    const heading = inTerms(headings, outline.heading);
    const head = sectionHead && fill(inTerms(headings, sectionHead), { number, heading });
    return {
      number: outline.number,
      title: heading,
      ...(head && { head }),
      pairs: false,
      note: null,
      items: outline.parts.flatMap(part => itemsOf(part, bodies, input)),
    };
  });
  return withAbbreviations(sections, outlines, input);
}

function itemsOf(
  { number, heading, items }: SheetPart,
  bodies: SectionBodies,
  input: SheetInput,
): readonly SheetItem[] {
  const title = number === '' ? '' : `${number}. ${inTerms(input.words.sheet.terms.headings, heading)}`;
  return items
    .filter(({ key, optional, asks }) => !optional || has(bodies[key]) || asked(asks, input))
    .map(item => {
      const { heading: own, ...rest } = itemOf(item, bodies[item.key], input);
      if (title === '') return { ...rest, heading: own };
      return own === '' ? { ...rest, heading: title } : { ...rest, heading: own, part: title };
    });
}

const has = (body: ItemBody | undefined): boolean => body !== undefined && body.source !== 'none';

/** Whether the record says anything for a key. */
const asked = (asks: string | null | undefined, { record }: SheetInput): boolean =>
  Boolean(asks && (asks in record.sheet || asks in record.sheetSearched));

/** Abbreviations are those that the other texts use. */
function withAbbreviations(
  sections: readonly SheetSection[],
  outlines: readonly SheetOutline[],
  input: SheetInput,
): readonly SheetSection[] {
  const body = abbreviations(
    JSON.stringify(sections),
    input.words.sheet.ghs.abbreviations,
    input.words.sheet,
  );
  const key = 'abbreviations';
  return sections.map((section, at) => {
    const planned = outlines[at]!.parts.flatMap(({ items }) => items);
    const place = planned.findIndex(item => item.key === key);
    if (place < 0 || !body) return section;
    const before = new Set(planned.slice(0, place).map(item => item.key));
    const items = section.items.filter(item => before.has(item.key));
    return {
      ...section,
      items: [
        ...items,
        complete(headed(planned[place]!, input.words), 'filled', body),
        ...section.items.slice(items.length),
      ],
    };
  });
}
