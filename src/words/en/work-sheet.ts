import type { WorkSheetWords } from '../words.ts';

/** Titles and heads of the work sheet. */
export const workSheet: WorkSheetWords = {
  title: 'Work sheet',
  draft: (basis, asOf) =>
    `${basis}, as of ${asOf}. Draft for qualified review; local codes and licensed practice decide.`,
  blocks: {
    constituents: { title: 'Constituents', head: ['%', 'name', 'CAS', 'hazards', 'source'] },
    hazards: { title: 'Hazards', head: ['class', 'statement', 'worked', 'paragraph'] },
    elements: { title: 'Label elements', head: ['element', 'text'] },
    solutions: {
      title: 'Solutions in use, by calculation; not the product as sold',
      head: ['ratio', 'use and packs', 'signal word', 'hazards', 'not decided'],
    },
    warnings: { title: 'Warnings for the reviewer', head: ['warning', 'text', 'paragraph'] },
    otherClasses: { title: 'Other classes', head: ['class', 'outcome', 'worked', 'paragraph'] },
    notApplicable: { title: 'Not applicable', head: ['why', 'classes', 'paragraphs'] },
    ateMix: { title: 'Acute toxicity of the mixture, calculated', head: ['route or form', 'ATEmix'] },
    unknownToxicity: { title: 'Unknown acute toxicity', head: ['route', '% of the mixture'] },
    omitted: { title: 'Left off the label', head: ['element', 'why', 'paragraph'] },
    readings: {
      title: 'Readings of the law on which this rests',
      head: ['reading', 'taken', 'paragraph'],
    },
  },
  signalWord: 'signal word',
  pictograms: 'pictograms',
  none: 'none',
  unknown: endpoints => `unknown: ${endpoints.join(', ')}`,
  range: (low, high) => `${low} to ${high}`,
  replaced: (text, outcome, calculation) => `${text}; the calculation would give ${outcome} (${calculation})`,
  ranged: (text, ends, milder) =>
    `${text}; taken of ranges: ${ends.map(({ name, taken, low, high }) => `${taken} % ${name} of ${low} to ${high} %`).join(', ')}; at their milder ends ${milder}`,
};

/** Outcomes of a class. */
export const outcomes: Readonly<Record<string, string>> = {
  'not-classified': 'not classified',
  'insufficient-data': 'insufficient data',
  'not-applicable': 'not applicable',
};
