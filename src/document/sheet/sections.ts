import data from '../../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import { composition } from './composition.ts';
import type { ItemBody, SectionBodies, SheetItem, SheetSection } from './content.ts';
import { exposureControls } from './exposure-controls.ts';
import { fireFighting } from './fire.ts';
import { firstAid } from './first-aid.ts';
import { disposal, ecology, transport } from './further.ts';
import { accidentalRelease, handlingAndStorage } from './handling.ts';
import { hazardIdentification } from './hazard-identification.ts';
import { identification } from './identification.ts';
import type { SheetInput } from './input.ts';
import { abbreviations, otherInformation } from './other-information.ts';
import { phrases } from './phrases.ts';
import { properties } from './properties.ts';
import { reactivity } from './reactivity.ts';
import { regulation } from './regulation.ts';
import { toxicology } from './toxicology.ts';

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

const complete = (section: SectionData['subheadings'][number], body: ItemBody): SheetItem => ({
  key: section.key,
  letter: section.letter,
  heading: section.heading,
  figures: [],
  text: [],
  list: [],
  groups: [],
  table: null,
  notes: [],
  ...body,
});

/**
 * The sixteen sections in the order of 29 CFR 1910.1200(g)(2) with every subheading of Appendix D. A subheading of
 * the law of which nothing is known says so ((g)(3)); one of our own is left out.
 */
export function sheetSections(input: SheetInput): readonly SheetSection[] {
  const sections = data.sections.map((section, at) => sectionOf(section, BODIES[at]!(input)));
  const used = abbreviations(JSON.stringify(sections));
  return sections.map((section, at) => {
    const heading = data.sections[at]!.subheadings.find(({ key }) => key === 'abbreviations');
    if (!heading || !used) return section;
    const items = [...section.items];
    items.splice(-1, 0, complete(heading, used));
    return { ...section, items };
  });
}

function sectionOf(
  { number, heading, form, mandatory, subheadings }: SectionData,
  bodies: SectionBodies,
): SheetSection {
  const none: ItemBody = { text: [phrases.frame.none], source: 'none' };
  return {
    number,
    title: heading,
    pairs: form === 'pairs',
    note: mandatory ? null : phrases.frame.nonMandatory,
    items: subheadings
      .filter(({ key, printed }) => printed !== '' || bodies[key])
      .map(subheading => complete(subheading, bodies[subheading.key] ?? none)),
  };
}
