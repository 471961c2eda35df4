/** Languages of documents beside English, by their tags of BCP 47: the one list of them. */
export const otherLanguages = ['es'] as const;
export type OtherLanguage = (typeof otherLanguages)[number];

/** Languages of documents, English first. */
export const languages = ['en', ...otherLanguages] as const;
export type Language = (typeof languages)[number];

/** Languages of a label: one, or English with another one added. */
export type LabelLanguages = Language | `en+${OtherLanguage}`;
export const labelLanguages: readonly LabelLanguages[] = [
  ...languages,
  ...otherLanguages.map(other => `en+${other}` as const),
];
