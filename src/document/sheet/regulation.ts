import cercla from '../../../hazard-data/regulatory/cercla.source.json' with { type: 'json' };
import toxicChemicals from '../../../hazard-data/regulatory/epcra-313.source.json' with { type: 'json' };
import prop65 from '../../../hazard-data/regulatory/prop65.source.json' with { type: 'json' };
import type { Share } from '../../reference/regulatory/regulatory-facts.ts';
import { regulatoryLists } from '../../words/en/regulatory.ts';
import { prescribedRange } from './concentration.ts';
import { paragraphs, type SectionBodies } from './content.ts';
import type { SheetInput } from './input.ts';

const editions = { cercla, toxicChemicals, prop65 };

/** Section 15 (29 CFR 1910.1200 App. D, Table D.1, 15; not mandatory). */
export function regulation(input: SheetInput): SectionBodies {
  const { record, classification, exposure, regulatory } = input;
  const otherHazards = paragraphs(record.sheet['other-hazards']).length > 0;
  const classes = [
    ...classification.hazards.map(({ hazardClass }) => hazardClass),
    ...(otherHazards ? ['HNOC'] : []),
  ];
  const product = { form: record.form, classes: [...new Set(classes)] };
  const facts = regulatory.facts(shares(input), product, exposure.carcinogens);
  return {
    regulations: {
      text: paragraphs(record.sheet.regulatory),
      groups: regulatoryLists(facts, editions),
      source: 'reference tables',
    },
  };
}

/** The ingredients with the percent that may be told: of a withheld one the upper end of its prescribed range. */
const shares = ({ classification, withholdConcentrations }: SheetInput): readonly Share[] =>
  classification.constituents
    .filter(({ water }) => !water)
    .map(({ name, cas, low, high }) => {
      const percent = high.value;
      const told = withholdConcentrations ? prescribedRange({ low: low.value, high: percent }) : null;
      return { name, cas, percent: told?.high ?? percent };
    });
