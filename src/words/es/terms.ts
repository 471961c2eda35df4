import statements from '../../../hazard-data/languages/es/statements.json' with { type: 'json' };
import terms from '../../../hazard-data/languages/es/terms.json' with { type: 'json' };
import type { SheetWords } from '../sheet-words.ts';

const { source: _, ...signalWords } = statements.signalWords;

/** Words of the law and of the tables that the data hold in English. */
export const lawTerms: SheetWords['terms'] = {
  headings: terms.headings,
  classes: terms.classes,
  pictograms: terms.pictograms,
  effects: terms.effects,
  bases: terms.bases,
  signalWords,
  organs: statements.fields.organs.options,
  mixing: statements.lines.notToMix.terms,
  names: terms.names,
};
