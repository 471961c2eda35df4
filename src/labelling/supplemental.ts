import type { Classification } from '../classify/classification.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { Omission, Proposed, Statement } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';
import { notToMix } from './not-to-mix.ts';
import { givenWords } from './precautions/given-words.ts';
import { fillStatement, spokenIn } from './statement-text.ts';

/** Supplemental statements that the composition decides and that the record adds, each once, then what the product must not be mixed with, the share of unknown acute toxicity (C.3.3; CLP Annex I 3.1.3.6.2.2)
 * and of unknown aquatic hazards. */
export function supplementalOf(
  classification: Classification,
  labelData: LabelData,
  product: LabelledProduct,
): {
  readonly supplemental: readonly Statement[];
  readonly missing: readonly Omission[];
  readonly proposed: readonly Proposed[];
  readonly omitted: readonly Omission[];
} {
  const { form, supplementalCodes = [], add = [], words = {} } = product;
  const { statements } = labelData;
  const missing: Omission[] = [];
  const added = add.filter(code => !code.startsWith('P')).map(code => ({ code, fields: undefined }));
  const called = [...classification.supplemental, ...supplementalCodes, ...added];
  const filledIn = called.flatMap(({ code, fields }): Statement[] => {
    const text = statements.supplemental?.[code] ?? statements.hazard[code];
    if (!text) {
      missing.push({ what: code, why: { kind: 'no-text' }, cite: statements.instrument });
      return [];
    }
    const filled = fillStatement(text, {
      ...givenWords(text, [code], labelData, { form, words }),
      ...fields,
    });
    if ('text' in filled) return [{ code, text: filled.text, ...spokenIn(text) }];
    const why = { kind: 'needs-words', key: `statements.words.${code}`, fields: filled.missing } as const;
    missing.push({ what: code, why, cite: statements.instrument });
    return [];
  });
  const codes = called.map(({ code }) => code);
  const { lines, proposed, omitted } = notToMix(classification, labelData.rules, product, codes);
  const once = new Map(filledIn.map(statement => [statement.text, statement]));
  return {
    supplemental: [
      ...once.values(),
      ...lines,
      ...unknownToxicity(classification, labelData),
      ...unknownAquatic(classification, labelData),
    ],
    missing,
    proposed,
    omitted,
  };
}

/** Share of components with unknown aquatic hazards (CLP Annex I 4.1.3.6.1; UN GHS 4.1.3.6). */
function unknownAquatic({ unknownAquatic: percent }: Classification, { rules }: LabelData): Statement[] {
  const statement = rules.unknownAquatic;
  if (!statement || !percent) return [];
  return [{ code: statement.code, text: statement.text.replace('{percent}', shown(percent, rules)) }];
}

/** A percentage on a label: three significant digits. */
const shown = (percent: number, { decimalMark = '.' }: LabelData['rules']): string =>
  String(Number(percent.toPrecision(3))).replace('.', decimalMark);

/** The statement on unknown acute toxicity: where the routes share a percentage once, as far as the basis has words. */
function unknownToxicity({ unknownAcuteToxicity }: Classification, { rules }: LabelData): Statement[] {
  const { code, one, several, between = '', all, routes: words = {} } = rules.unknownAcuteToxicity;
  const named = (route: string): string => words[route] ?? route;
  const routes = new Map<number, string[]>();
  const shares = Object.entries(unknownAcuteToxicity);
  for (const [route, percent] of shares)
    if (percent > 0) routes.set(percent, [...(routes.get(percent) ?? []), route]);
  return [...routes].flatMap(([percent, of]) => {
    const said = (text: string, route: string) => ({
      code,
      text: text
        .replace('{percent}', shown(percent, rules))
        .replace('{route}', named(route))
        .replace('{routes}', of.map(named).join(between)),
    });
    if (all && of.length === shares.length) return [said(all, '')];
    return several && of.length > 1 ? [said(several, '')] : of.map(route => said(one, route));
  });
}
