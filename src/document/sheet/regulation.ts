import cercla from '../../../hazard-data/regulatory/cercla.source.json' with { type: 'json' };
import toxicChemicals from '../../../hazard-data/regulatory/epcra-313.source.json' with { type: 'json' };
import prop65 from '../../../hazard-data/regulatory/prop65.source.json' with { type: 'json' };
import type { Share } from '../../reference/regulatory/regulatory-facts.ts';
import { prescribedRange } from './concentration.ts';
import { paragraphs, type SectionBodies } from './content.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { type Secrets, secretsOf } from './secrets.ts';

const editions = { cercla, toxicChemicals, prop65 };

/** Section 15 (29 CFR 1910.1200 App. D, Table D.1, 15; not mandatory). */
export function regulation(input: SheetInput): SectionBodies {
  const { record, classification, exposure, regulatory } = input;
  const { regulations: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const otherHazards = paragraphs(record.sheet['other-hazards']).length > 0;
  const classes = [
    ...classification.hazards.map(({ hazardClass }) => hazardClass),
    ...(otherHazards ? ['HNOC'] : []),
  ];
  const product = { form: record.form, classes: [...new Set(classes)] };
  const facts = regulatory.facts(shares(input, secrets), product, exposure.carcinogens);
  const names = [...secrets.identity].map(secrets.name).join(', ');
  return {
    regulations: {
      text: paragraphs(record.sheet.regulatory),
      groups: words.groups(facts, editions),
      notes: names === '' ? [] : [fill(words.withheld, { names })],
      source: 'reference tables',
    },
  };
}

/**
 * The ingredients with the percent that may be told: of a withheld one the upper end of its prescribed range. One whose
 * identity is withheld is left out, for the entry of a list would name it.
 */
const shares = ({ classification }: SheetInput, { identity, percent }: Secrets): readonly Share[] =>
  classification.constituents.flatMap(({ name, cas, low, high, water }, at) => {
    if (water || identity.has(at)) return [];
    const told = percent.has(at) ? prescribedRange({ low: low.value, high: high.value }) : null;
    return [{ name, cas, percent: told?.high ?? high.value }];
  });
