/** Millimetres. */
export type Millimetres = number & { readonly unit?: 'mm' };

/** PostScript points, 1/72 inch. */
export type Points = number & { readonly unit?: 'pt' };

/** One inch is 25.4 mm by definition (NIST SP 811, Appendix B.8). */
export const MM_PER_INCH = 25.4;
export const POINTS_PER_INCH = 72;

export const toPoints = (mm: Millimetres): Points => (mm * POINTS_PER_INCH) / MM_PER_INCH;
export const toMillimetres = (pt: Points): Millimetres => (pt * MM_PER_INCH) / POINTS_PER_INCH;
