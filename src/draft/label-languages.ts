/** Languages of a label: one, or English with another one added. */
export const labelLanguages = ['en', 'es', 'en+es'] as const;
export type LabelLanguages = (typeof labelLanguages)[number];
