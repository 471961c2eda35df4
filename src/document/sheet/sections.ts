import data from '../../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import type { SheetKey } from '../../record/sheet-keys.ts';
import { composition } from './composition.ts';
import {
  type ItemBody,
  type ItemState,
  paragraphs,
  type SectionBodies,
  type SheetItem,
  type SheetSection,
} from './content.ts';
import { exposureControls } from './exposure-controls.ts';
import { fill } from './fill.ts';
import { fireFighting } from './fire.ts';
import { firstAid } from './first-aid.ts';
import { disposal, ecology } from './further.ts';
import { accidentalRelease, handlingAndStorage } from './handling.ts';
import { hazardIdentification } from './hazard-identification.ts';
import { identification } from './identification.ts';
import type { SheetInput } from './input.ts';
import { abbreviations, otherInformation } from './other-information.ts';

import { properties } from './properties.ts';
import { reactivity } from './reactivity.ts';
import { regulation } from './regulation.ts';
import { toxicology } from './toxicology.ts';
import { transport } from './transport.ts';

type SectionData = (typeof data.sections)[number];

const BODIES: readonly ((input: SheetInput) => SectionBodies)[] = [
  identification,
  hazardIdentification,
  composition,
  firstAid,
  fireFighting,
  accidentalRelease,
  handlingAndStorage,
  exposureControls,
  properties,
  reactivity,
  toxicology,
  ecology,
  disposal,
  transport,
  regulation,
  otherInformation,
];

const complete = (
  section: SectionData['subheadings'][number],
  state: ItemState,
  body: ItemBody,
): SheetItem => ({
  key: section.key,
  state,
  question: ('question' in section && section.question) || null,
  letter: section.letter,
  heading: section.heading,
  figures: [],
  text: [],
  list: [],
  groups: [],
  table: null,
  values: [],
  notes: [],
  ...body,
});

/**
 * The sixteen sections in the order of 29 CFR 1910.1200(g)(2) with every subheading of Appendix D. A subheading of
 * the law of which nothing is known says whether it was searched for in vain ((g)(3)) or not yet; one of our own is
 * left out.
 */
export function sheetSections(input: SheetInput): readonly SheetSection[] {
  const sections = data.sections.map((section, at) => sectionOf(section, BODIES[at]!(input), input));
  const used = abbreviations(JSON.stringify(sections), input.words.sheet);
  return sections.map((section, at) => {
    const heading = data.sections[at]!.subheadings.find(({ key }) => key === 'abbreviations');
    if (!heading || !used) return section;
    const items = [...section.items];
    items.splice(-1, 0, complete(heading, 'filled', used));
    return { ...section, items };
  });
}

function sectionOf(
  { number, heading, form, mandatory, subheadings }: SectionData,
  bodies: SectionBodies,
  input: SheetInput,
): SheetSection {
  return {
    number,
    title: heading,
    pairs: form === 'pairs',
    note: mandatory ? null : input.words.sheet.frame.nonMandatory,
    items: subheadings
      .filter(({ key, printed }) => printed !== '' || (bodies[key] && bodies[key].source !== 'none'))
      .map(subheading => itemOf(subheading, bodies[subheading.key], input)),
  };
}

/** The item with its state: what the record gives for it or says of a search goes before "not yet searched". */
function itemOf(
  subheading: SectionData['subheadings'][number],
  body: ItemBody | undefined,
  { record, words }: SheetInput,
): SheetItem {
  if (body && body.source !== 'none') return complete(subheading, 'filled', body);
  const asks = subheading.asks as SheetKey | null;
  const own = asks && record.sheet[asks];
  if (own) return complete(subheading, 'filled', { text: paragraphs(own), source: 'product record' });
  const by = asks && record.sheetSearched[asks];
  const { frame } = words.sheet;
  return by
    ? complete(subheading, 'searched', { text: [fill(frame.searched, { by })], source: 'product record' })
    : complete(subheading, 'open', { text: [frame.open], source: 'none' });
}
