import { bodyOf, type ItemBody, nothing, paragraphs, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { figure, fill } from '../fill.ts';
import { ecology as common } from '../further.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf } from '../secrets.ts';
import { hazardAndCode, hazardsOfKind, othersOfKind, outcomeText, titleAndCode, titleOf } from './classes.ts';
import { identified } from './identified.ts';

/** Section 12 (Annex II, 12.1 to 12.7; GHS, Table 1.5.2, 12). */
export function ecology(input: SheetInput): SectionBodies {
  return {
    ...common(input),
    ecotoxicity: toxicity(input),
    'pbt-assessment': identified(input, 'pbt', ['assessment.pbt']),
    'endocrine-environment': identified(input, 'endocrine', ['assessment.endocrine-environment']),
  };
}

const AQUATIC = /^(?:Aquatic|Ozone)/u;

/** Aquatic classes of the mixture with their outcome, the maker's text, and what is known of ingredients. */
function toxicity(input: SheetInput): ItemBody {
  const { ghs: words, further } = input.words.sheet;
  const { name } = secretsOf(input);
  const classified = hazardsOfKind(input, 'environmental')
    .filter(({ hazardClass }) => AQUATIC.test(hazardClass))
    .map(hazard => titleAndCode(hazard, input));
  const others = othersOfKind(input, 'environmental')
    .filter(({ class: each, outcome }) => AQUATIC.test(each) && outcome !== 'not-applicable')
    .map(other =>
      fill(words.classOutcome, { title: titleOf(other, input), outcome: outcomeText(other, input) }),
    );
  const rows = ingredients(input).flatMap(({ index, listed, own, classified: { data } }) => {
    if (!listed) return [];
    const hazards = data.hazards
      .filter(({ hazardClass }) => AQUATIC.test(hazardClass))
      .map(hazard => hazardAndCode(hazard, input));
    const factors = [...data.mFactors.given].map(kind =>
      fill(words.factors[kind], { value: data.mFactors[kind] }),
    );
    const texts = [...hazards, ...factors, ...paragraphs(own?.ecotoxicity)];
    return texts.length > 0 ? [[name(index), texts.join('\n')]] : [];
  });
  const unknown = input.classification.unknownAquatic ?? 0;
  return (
    bodyOf('calculation', {
      text: [
        ...paragraphs(input.record.sheet['ecology.toxicity']),
        ...(unknown > 0
          ? [fill(further.unknownAquatic, { percent: figure(unknown, 3, input.words.decimalMark) })]
          : []),
      ],
      list: [...classified, ...others],
      table: rows.length > 0 ? { columns: words.toxicityColumns, rows } : null,
    }) ?? nothing
  );
}
