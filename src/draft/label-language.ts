import type { ForeignText } from '../document/foreign.ts';
import type { LabelLanguage } from '../document/label.ts';
import type { LabelLanguages, Language } from '../notation/languages.ts';
import { type Diagnostic, fail, type Outcome, succeed } from '../report/diagnostic.ts';
import type { Words } from '../words/words.ts';
import { wordsOf } from '../words/words-of.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { inLanguage } from './in-language.ts';
import type { Purpose } from './purposes/purpose.ts';

/** The product in the language that is added to another. */
export interface AddedLanguage {
  readonly product: ClassifiedProduct;
  readonly words: Words;
  readonly said: LabelLanguage;
}

/** A label in its language. */
export interface LabelSaid {
  readonly product: ClassifiedProduct;
  /** Words of the label. */
  readonly words: Words;
  readonly said: LabelLanguage;
  readonly foreign: readonly ForeignText[];
  readonly added: AddedLanguage | null;
  readonly findings: readonly Diagnostic[];
}

const CITES: Readonly<Record<Purpose['id'], string>> = {
  'us-workplace': '29 CFR 1910.1200(f)(2)',
  'us-consumer': '15 U.S.C. 1261(p)(2) (from memory)',
  'eu-supply': 'CLP Article 17(2)',
  tank: '29 CFR 1910.1200(f)(10)',
};

/** @param tag of English labels of the United States, whose spelling is their own */
const languageOf = (words: Words, tag = words.language): LabelLanguage => ({
  language: tag,
  words: words.label,
  terms: words.sheet.terms,
  decimalMark: words.decimalMark,
});

/**
 * The product in the language of the label, with what is added in another one. A label of the United States is in
 * English (29 CFR 1910.1200(f)(2), which lets other languages be added); one of the Union is in the language of the
 * market, or in several (CLP Article 17(2)).
 * @param words of the reviewer
 * @returns an error where the purpose has no label in the language.
 */
export async function labelInLanguage(
  product: ClassifiedProduct,
  { id, languages }: Purpose,
  asked: LabelLanguages,
  words: Words,
): Promise<Outcome<LabelSaid>> {
  const english: LabelSaid = {
    product,
    words,
    said: languageOf(words, languages === 'market' ? words.language : 'en-US'),
    foreign: [],
    added: null,
    findings: [],
  };
  const other = asked.split('+').find(each => each !== 'en') as Language | undefined;
  if (other === undefined) return succeed(english);
  const { spoken } = words;
  const at = { file: product.record.file };
  const cite = CITES[id];
  if (languages === 'alone')
    return fail({
      code: 'label-language',
      severity: 'error',
      message: spoken.noLabel(other, words.purposeName(id)),
      cite,
      at,
    });
  const say = await wordsOf(other);
  const { product: said, foreign, findings } = await inLanguage(product, say, 'label');
  if (languages === 'market' && asked === other)
    return succeed({ product: said, words: say, said: languageOf(say), foreign, added: null, findings });
  return succeed({
    ...english,
    added: { product: said, words: say, said: languageOf(say) },
    findings: [
      { code: 'label-language', severity: 'note', message: spoken.labelInEnglish(other), cite, at },
      ...findings.filter(({ code }) => code !== 'untranslated-text'),
    ],
  });
}
