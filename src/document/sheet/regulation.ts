import cercla from '../../../hazard-data/regulatory/cercla.source.json' with { type: 'json' };
import toxicChemicals from '../../../hazard-data/regulatory/epcra-313.source.json' with { type: 'json' };
import prop65 from '../../../hazard-data/regulatory/prop65.source.json' with { type: 'json' };
import { paragraphs, type SectionBodies } from './content.ts';
import { fill } from './fill.ts';
import type { SheetInput } from './input.ts';
import { lookUps } from './look-ups.ts';
import { secretsOf } from './secrets.ts';

const editions = { cercla, toxicChemicals, prop65 };

/** Section 15 (29 CFR 1910.1200 App. D, Table D.1, 15; not mandatory). */
export function regulation(input: SheetInput): SectionBodies {
  const { regulations: words } = input.words.sheet;
  const secrets = secretsOf(input);
  const names = [...secrets.identity].map(secrets.name).join(', ');
  return {
    regulations: {
      text: paragraphs(input.record.sheet.regulatory),
      groups: words.groups(lookUps(input).regulations, editions),
      notes: names === '' ? [] : [fill(words.withheld, { names })],
      source: 'reference tables',
    },
  };
}
