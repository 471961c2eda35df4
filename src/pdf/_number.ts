/** Writes a number for a PDF: at most four decimals, no exponent, no negative zero. */
export const pdfNumber = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written in a PDF`);
  const rounded = Math.round(value * 10_000) / 10_000;
  // The shortest form of a number of this size has no more decimals than it was rounded to, and no exponent.
  if (Math.abs(rounded) < 1e9) return rounded === 0 ? '0' : String(rounded);
  return rounded.toFixed(4).replace(/\.?0+$/u, '');
};

/** Rounds as `pdfNumber` writes. */
export const snapped = (value: number): number => Number(pdfNumber(value));
