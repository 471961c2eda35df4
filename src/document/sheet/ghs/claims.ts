import names from '../../../../hazard-data/eu-clp/sheet/alternative-names.json' with { type: 'json' };
import forbidden from '../../../../hazard-data/eu-clp/sheet/forbidden.json' with { type: 'json' };
import type { SheetKey } from '../../../record/sheet-keys.ts';
import type { Diagnostic } from '../../../report/diagnostic.ts';
import { sheetForm } from '../form.ts';
import { isPhysical } from '../hazards.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf } from '../secrets.ts';

type Where = (constituent: number) => Pick<Diagnostic, 'at'>;

/**
 * Findings on trade-secret claims outside 29 CFR 1910.1200(i). The European Union knows no such claim: a name may stand
 * in place of another where the Agency allowed it (CLP, Article 24), a range in place of a percent at the maker's
 * choice (Annex II, 3.2).
 */
export function ghsClaims(input: SheetInput, where: Where): readonly Diagnostic[] {
  const { secrets } = sheetForm(input.classification.basis.id);
  const { identity, percent } = secretsOf(input);
  if (secrets === 'alternative-name')
    return [
      ...[...identity].flatMap(at => nameFindings(input, at, where)),
      ...[...percent].map(at => rangeTold(input, at, where)),
    ];
  if (secrets === 'confidential')
    return [...new Set([...identity, ...percent])].map(at => confidential(input, at, where));
  return [];
}

function nameFindings(input: SheetInput, at: number, where: Where): readonly Diagnostic[] {
  const { name, data } = input.classification.constituents[at]!;
  const found = (message: string, hint: string): Diagnostic => ({
    code: 'trade-secret-eu',
    severity: 'error',
    message,
    hint,
    ...where(at),
  });
  const allowed = input.formula.constituents[at]!.tradeSecret?.alternativeName;
  const tooSevere = data.hazards.filter(
    ({ code, hazardClass }) => !isPhysical(hazardClass) && !names.hazards.includes(code),
  );
  const own = input.record.sheetIngredients.find(
    ({ of }) => of === name || of === input.classification.constituents[at]!.cas,
  );
  return [
    ...(allowed
      ? []
      : [
          found(
            `the identity of ${name} is claimed as a trade secret, which the European Union does not know: the sheet names every substance, or its alternative chemical name that the Agency allowed [CLP, Article 24]`,
            'give `trade-secret: {claim: [identity], alternative-name: {name: …, approval: …}}`, or drop the claim for this market',
          ),
        ]),
    ...(tooSevere.length > 0
      ? [
          found(
            `${name} is ${tooSevere.map(({ code }) => code).join(', ')}: no alternative chemical name is allowed for it [CLP Annex I, 1.4.1(III)]`,
            'drop the claim of its identity',
          ),
        ]
      : []),
    ...(own?.limits.some(({ union }) => union)
      ? [
          found(
            `${name} has a Union workplace exposure limit: no alternative chemical name is allowed for it [CLP Annex I, 1.4.1(I)]`,
            'drop the claim of its identity',
          ),
        ]
      : []),
  ];
}

const rangeTold = (input: SheetInput, at: number, where: Where): Diagnostic => ({
  code: 'trade-secret-eu',
  severity: 'warning',
  message: `the percent of ${input.classification.constituents[at]!.name} is claimed as a trade secret, which the European Union does not know; the sheet shows a range instead, as REACH Annex II, 3.2 lets every maker do`,
  hint: 'check that the range is what you want to show',
  ...where(at),
});

const confidential = (input: SheetInput, at: number, where: Where): Diagnostic => ({
  code: 'trade-secret-un',
  severity: 'warning',
  message: `${input.classification.constituents[at]!.name} is withheld in part; the GHS leaves confidential business information to the authority of each country [GHS 1.4.8]`,
  hint: 'check the rules of each country that the sheet goes to',
  ...where(at),
});

const PHRASES = [...forbidden.phrases, ...forbidden.others].map(phrase => ({
  phrase,
  severity: forbidden.phrases.includes(phrase) ? ('error' as const) : ('warning' as const),
  pattern: new RegExp(`(?<![\\p{L}-])${phrase.replace('-', '[- ]')}(?![\\p{L}])`, 'iu'),
}));

/** Texts of the record with a statement that the sheet may not make (Annex II, 0.2.4). */
export function forbiddenFindings({ record, classification }: SheetInput): readonly Diagnostic[] {
  if (!sheetForm(classification.basis.id).reach) return [];
  const own = record.sheetIngredients.flatMap(each =>
    [each.toxicity, each.ecotoxicity, each.persistence, each.bioaccumulation, each.mobility].map(
      text => [`sds.ingredients, ${each.of}`, text ?? ''] as const,
    ),
  );
  const texts = [
    ...Object.entries(record.sheet).map(([key, text]) => [`sds.${key}`, text] as const),
    ...own,
    ['name', record.name] as const,
    ['use', record.use] as const,
  ];
  return texts.flatMap(([key, text]) =>
    PHRASES.filter(({ pattern }) => pattern.test(text)).map(
      ({ phrase, severity }): Diagnostic => ({
        code: 'forbidden-statement',
        severity,
        message: `\`${key}\` says "${phrase}"; a data sheet may not say that the product is not hazardous [REACH Annex II, 0.2.4]`,
        hint: 'say what is known instead',
        at: record.sheetAt?.[key.replace(/^sds\./u, '') as SheetKey] ?? { file: record.file },
        path: key,
      }),
    ),
  );
}
