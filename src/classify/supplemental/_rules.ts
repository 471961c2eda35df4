import file from '../../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };

/** A substance that a rule names by its CAS number. */
export interface Member {
  readonly cas: string;
  readonly name: string;
}

/** The figures and lists of CLP Annex II on which statements rest, with their paragraphs. */
export const rules = file;

/** Instrument and paragraph, as printed. */
export const citeAnnex = (paragraph: string): string => `${file.instrument}, ${paragraph}`;
