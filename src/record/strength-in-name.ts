const figure = String.raw`\d\s*(?:%|percent\b|wt\b|°?\s*B(?:é|e|aum[eé])\b|proof\b|N\b)`;
const strengthInName = new RegExp(
  String.raw`${figure}|\b(?:solution|aqueous|aq\.?|muriatic|concentrated|dilute|diluted)\b`,
  'i',
);
const figureInName = new RegExp(figure, 'i');

/** Whether a name says a strength as delivered: its percentage may be of the solution or of the substance. */
export const namesStrength = (name: string): boolean => strengthInName.test(name);

/** Whether a name holds a figure of strength; without a CAS number only that is asked about. */
export const namesFigure = (name: string): boolean => figureInName.test(name);
