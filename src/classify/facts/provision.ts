import type { Basis } from '../../reference/thresholds.ts';

/** A place in the law: instrument, paragraph, and since when the text read is in force. */
export interface Provision {
  /** `29 CFR 1910.1200 App. A` */
  readonly instrument: string;
  /** `A.2.3.3.3, Table A.2.3` */
  readonly paragraph: string;
  /** YYYY-MM-DD; null where the date is not held. */
  readonly inForce: string | null;
}

/** A paragraph of the instrument on health and environment of a basis. */
export const ofHealth = ({ instrument, inForce }: Basis, paragraph: string): Provision => ({
  instrument,
  paragraph,
  inForce,
});

/** A paragraph of the instrument on physical hazards of a basis, or of the instrument that is named. */
export const ofPhysical = (
  { physicalInstrument, inForce }: Basis,
  paragraph: string,
  instrument = physicalInstrument,
): Provision => ({ instrument, paragraph, inForce });

/** A source by itself, such as an agency's note, without a date. */
export const bySource = (source: string): Provision => ({ instrument: '', paragraph: source, inForce: null });
