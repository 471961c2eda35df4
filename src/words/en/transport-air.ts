import { classWord, text, type Values } from './_transport-values.ts';

const verdicts: Readonly<Record<string, string>> = {
  within: 'this package keeps it',
  over: 'this package is over it',
  'by-material': 'this package keeps it in metal or plastic, not in glass',
  open: 'contents or count are not known',
};

/** Words of what 49 CFR 173.27 and 171.22 ask beside the columns of the table. */
export const airWords: Readonly<Record<string, (values: Values) => string>> = {
  'aircraft-performance': v =>
    `by aircraft the packaging meets packing group ${text(v.level)}; packagings of limited quantities excepted`,
  'aircraft-pressure': v =>
    `by aircraft packagings of liquids withstand ${text(v.kilopascals)} kPa, or more by their vapor pressure; closures are held by a second means (173.27(d))`,
  'aircraft-limited': v =>
    `limited quantity by air (mark with Y, 172.315(b)): up to ${text(v.inner)} an inner packaging${
      v.glass === v.inner ? '' : ` (${text(v.glass)} in glass)`
    }, net ${text(v.outer)} a package, 30 kg gross: ${verdicts[String(v.verdict)]}`,
  'aircraft-limited-none': v =>
    `limited quantity by air: none, ${text(v.un)} is forbidden aboard passenger aircraft or has no exception`,
  'aircraft-limited-not-held': v =>
    `limited quantity by air: the row for ${classWord(v.class)} is not held, to be checked`,
  international: () =>
    'air and vessel shipments may follow the ICAO Technical Instructions or the IMDG Code instead, as a whole (171.22 to 171.26); their texts were not read',
};
