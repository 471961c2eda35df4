/** Routes of exposure that the law keeps apart. */
export type Route = 'oral' | 'dermal' | 'inhalation';

/** Physical forms in which an inhaled substance is judged; each has limits of its own. */
export type InhalationForm = 'gas' | 'vapour' | 'mist';

/** Effects of STOT SE 3. */
export type TransientEffect = 'respiratory irritation' | 'narcotic effects';

/** A hazard class and category in the notation of CLP Annex VI, with what may follow in brackets or after a semicolon. */
export interface Hazard {
  /** Class abbreviation: `Skin Corr.`, `Acute Tox.`, `STOT SE`, `Flam. Liq.`, `Press. Gas`. */
  readonly hazardClass: string;
  /** Category: `1`, `1B`, `2A`, `Comp.`; empty where the class has none (`Lact.`). */
  readonly category: string;
  /** Class and category as written in Annex VI, without brackets: `Skin Corr. 1B`. */
  readonly code: string;
  readonly route: Route | null;
  readonly form: InhalationForm | null;
  readonly effect: TransientEffect | null;
  /** Target organs named for STOT, empty where none is. */
  readonly organs: readonly string[];
  /** H-code where it was written or follows from the effect: `H360FD`, `H335`. */
  readonly statement: string | null;
  /** `*` of Annex VI 1.2.1: at least this category. */
  readonly minimum: boolean;
}
