import limits from '../../../hazard-data/exposure/osha-pel.source.json' with { type: 'json' };
import { typographic } from '../../quantity/print.ts';
import { tellAll } from '../../words/telling.ts';
import { listVersions } from './carcinogens.ts';
import { bodyOf, firstBody, type ItemBody, paragraphs, type SectionBodies } from './content.ts';
import type { SheetInput } from './input.ts';
import { fill, phrases } from './phrases.ts';

const words = phrases.other;

/** Revision of the sheet, null where neither the input nor the record has one. */
export const revisionOf = ({ revision, record }: SheetInput): string | null => revision ?? record.revision;

/** Section 16 (29 CFR 1910.1200 App. D, Table D.1, 16). */
export function otherInformation(input: SheetInput): SectionBodies {
  const { record, date } = input;
  const revision = revisionOf(input);
  const own = bodyOf('product record', { text: paragraphs(record.sheet.other) });
  return {
    date: {
      text: [
        fill(words.prepared, { date: date.slice(0, 10) }),
        ...(record.revised ? [fill(words.revised, { date: record.revised })] : []),
        ...(revision ? [fill(words.revision, { revision })] : []),
      ],
      source: 'draft',
    },
    sources: sources(input),
    choices: choices(input),
    ...(own ? { 'other-information': own } : {}),
    caution: { text: words.caution, source: 'draft' },
  };
}

function sources({ classification, words: language }: SheetInput): ItemBody {
  const { basis, constituents } = classification;
  const byIngredient = constituents
    .filter(({ water }) => !water)
    .map(({ name, data }) => fill(words.ingredientData, { name, source: language.source(data.source) }));
  return {
    list: [
      words.own,
      fill(words.basis, { basis: basis.title, asOf: basis.asOf }),
      ...byIngredient,
      fill(words.limits, { instrument: limits.instrument }),
      fill(words.lists, listVersions()),
      words.headings,
    ],
    source: 'calculation',
  };
}

/** What a reviewer should weigh: readings of the law, statements left off, warnings. */
function choices({
  classification,
  elements,
  words: language,
  withholdConcentrations,
}: SheetInput): ItemBody {
  const readings = classification.readings.map(({ id, taken, cite }) =>
    fill(words.reading, { id, taken: language.reading(id).options[taken]!, cite }),
  );
  const omitted = elements.omitted.map(({ what, why, cite }) =>
    fill(words.omitted, { what, why: language.statements.why(why), cite }),
  );
  const missing = elements.missing.map(({ what, why, cite }) =>
    fill(words.missing, { what, why: language.statements.why(why), cite }),
  );
  // A warning tells concentrations.
  const telling = tellAll(classification, typographic);
  const warnings = (withholdConcentrations ? [] : classification.warnings).map(warning => {
    const [text, cite] = [language.warning(warning, telling), language.cites(warning.cites)];
    return fill(cite ? words.warningCited : words.warning, { text, cite });
  });
  const list = [...missing, ...warnings, ...readings, ...omitted];
  return firstBody(words.noChoices, bodyOf('calculation', { list }));
}

/** The abbreviations that a text uses. */
export function abbreviations(text: string): ItemBody | null {
  const used = words.abbreviations.filter(([short]) =>
    new RegExp(`(?<![A-Za-z])${short}s?(?![A-Za-z])`, 'u').test(text),
  );
  return bodyOf('draft', { text: [`${used.map(([short, long]) => `${short}: ${long}`).join('; ')}.`] });
}
