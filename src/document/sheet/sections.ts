import data from '../../../hazard-data/us-hcs/sheet/sections.json' with { type: 'json' };
import { inTerms } from '../../words/in-terms.ts';
import { composition } from './composition.ts';
import type { SectionBodies, SheetSection } from './content.ts';
import { exposureControls } from './exposure-controls.ts';
import { fireFighting } from './fire.ts';
import { firstAid } from './first-aid.ts';
import { disposal, ecology } from './further.ts';
import { ghsSections, isGhsSheet } from './ghs/sections.ts';
import { accidentalRelease, handlingAndStorage } from './handling.ts';
import { hazardIdentification } from './hazard-identification.ts';
import { identification } from './identification.ts';
import type { SheetInput } from './input.ts';
import { complete, headed, itemOf } from './items.ts';
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

/**
 * The sixteen sections in the order of 29 CFR 1910.1200(g)(2) with every subheading of Appendix D. A subheading of
 * the law of which nothing is known says whether it was searched for in vain ((g)(3)) or not yet; one of our own is
 * left out.
 */
export function sheetSections(input: SheetInput): readonly SheetSection[] {
  const known = made.get(input);
  if (known) return known;
  const sections = isGhsSheet(input) ? ghsSections(input) : hazardCommunicationSections(input);
  made.set(input, sections);
  return sections;
}

/** Pages, data and open questions of a sheet have the same sections. */
const made = new WeakMap<SheetInput, readonly SheetSection[]>();

function hazardCommunicationSections(input: SheetInput): readonly SheetSection[] {
  const sections = data.sections.map((section, at) => sectionOf(section, BODIES[at]!(input), input));
  const used = abbreviations(
    JSON.stringify(sections),
    input.words.sheet.other.abbreviations,
    input.words.sheet,
  );
  return sections.map((section, at) => {
    const heading = data.sections[at]!.subheadings.find(({ key }) => key === 'abbreviations');
    if (!heading || !used) return section;
    const items = [...section.items];
    items.splice(-1, 0, complete(headed(heading, input.words), 'filled', used));
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
    title: inTerms(input.words.sheet.terms.headings, heading),
    pairs: form === 'pairs',
    note: mandatory ? null : input.words.sheet.frame.nonMandatory,
    items: subheadings
      .filter(({ key, printed }) => printed !== '' || (bodies[key] && bodies[key].source !== 'none'))
      .map(subheading => itemOf(subheading, bodies[subheading.key], input)),
  };
}
