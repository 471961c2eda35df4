import type { SheetWords } from '../sheet-words.ts';
import { carcinogens } from './carcinogens.ts';
import { limits } from './exposure.ts';
import { regulatoryLists } from './regulatory.ts';
import { advice } from './sheet-advice.ts';
import { effects, measures, toxicology } from './sheet-effects.ts';
import { other, properties } from './sheet-findings.ts';
import { ghs } from './sheet-ghs.ts';
import { composition, exposure, frame, further, identification } from './sheet-phrases.ts';
import { transport } from './sheet-transport.ts';
import { lawTerms } from './terms.ts';

/** Sentences of our own for the sheet; `{name}` is filled in. */
export const sheet: SheetWords = {
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
  limits,
  carcinogens,
  regulations: {
    withheld: 'No consultado para esta copia, porque su identidad se reserva: {names}.',
    groups: regulatoryLists,
  },
};
