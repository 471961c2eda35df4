import file from '../../../hazard-data/eu-clp/supplemental.json' with { type: 'json' };
import type { Provision } from '../facts/provision.ts';

/** A substance that a rule names by its CAS number. */
export interface Member {
  readonly cas: string;
  readonly name: string;
}

/** The figures and lists of CLP Annex II on which statements rest, with their paragraphs. */
export const rules = file;

/** A paragraph of CLP Annex II. */
export const ofAnnex = (paragraph: string): Provision => ({
  instrument: file.instrument,
  paragraph,
  inForce: null,
});
