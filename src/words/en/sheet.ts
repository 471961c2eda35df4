import composition from '../../../templates/sheets/phrases/composition.json' with { type: 'json' };
import effects from '../../../templates/sheets/phrases/effects.json' with { type: 'json' };
import exposure from '../../../templates/sheets/phrases/exposure.json' with { type: 'json' };
import frame from '../../../templates/sheets/phrases/frame.json' with { type: 'json' };
import further from '../../../templates/sheets/phrases/further.json' with { type: 'json' };
import identification from '../../../templates/sheets/phrases/identification.json' with { type: 'json' };
import measures from '../../../templates/sheets/phrases/measures.json' with { type: 'json' };
import other from '../../../templates/sheets/phrases/other.json' with { type: 'json' };
import properties from '../../../templates/sheets/phrases/properties.json' with { type: 'json' };
import toxicology from '../../../templates/sheets/phrases/toxicology.json' with { type: 'json' };
import { carcinogenWords, listingRows, setAsideTexts } from './carcinogens.ts';
import { averaged, limitRows, limitWords } from './exposure.ts';
import { regulatoryLists } from './regulatory.ts';
import { advice } from './sheet-advice.ts';
import { ghs } from './sheet-ghs.ts';
import { transport } from './sheet-transport.ts';
import { lawTerms } from './terms.ts';

/** Sentences of our own for the sheet; `{name}` is filled in. */
export const sheet = {
  terms: lawTerms,
  advice,
  composition,
  effects,
  exposure,
  frame,
  further,
  ghs,
  identification,
  measures,
  other,
  properties,
  toxicology,
  transport,
  limits: { ...limitWords, rows: limitRows, averaged },
  carcinogens: { ...carcinogenWords, rows: listingRows, setAside: setAsideTexts },
  regulations: {
    withheld: 'Not looked up for this copy, for their identity is withheld: {names}.',
    groups: regulatoryLists,
  },
};
