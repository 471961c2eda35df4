import type { Classification } from '../classify/classification.ts';
import type { LabelData } from '../reference/label-data/load-label-data.ts';
import type { Omission, Statement } from './label-elements.ts';
import type { LabelledProduct } from './labelled-product.ts';
import { fillStatement } from './statement-text.ts';

/** Supplemental statements that the composition decides and that the record adds, each once, then the share of unknown acute toxicity (C.3.3; CLP Annex I 3.1.3.6.2.2)
 * and of unknown aquatic hazards. */
export function supplementalOf(
  classification: Classification,
  labelData: LabelData,
  { supplementalCodes = [] }: LabelledProduct,
): { readonly supplemental: readonly Statement[]; readonly missing: readonly Omission[] } {
  const { statements, precautions } = labelData;
  const missing: Omission[] = [];
  const called = [...classification.supplemental, ...supplementalCodes];
  const filledIn = called.flatMap(({ code, fields }): Statement[] => {
    const text = statements.supplemental?.[code] ?? statements.hazard[code];
    const filled = text && fillStatement(text, fields);
    if (filled && 'text' in filled) return [{ code, text: filled.text }];
    missing.push({ what: code, why: precautions.missing, cite: statements.instrument });
    return [];
  });
  const once = new Map(filledIn.map(statement => [statement.text, statement]));
  return {
    supplemental: [
      ...once.values(),
      ...unknownToxicity(classification, labelData),
      ...unknownAquatic(classification, labelData),
    ],
    missing,
  };
}

/** Share of components with unknown aquatic hazards (CLP Annex I 4.1.3.6.1; UN GHS 4.1.3.6). */
function unknownAquatic({ unknownAquatic: percent }: Classification, { rules }: LabelData): Statement[] {
  const statement = rules.unknownAquatic;
  if (!statement || !percent) return [];
  return [{ code: statement.code, text: statement.text.replace('{percent}', shown(percent)) }];
}

/** A percentage on a label: three significant digits. */
const shown = (percent: number): string => String(Number(percent.toPrecision(3)));

/** The statement on unknown acute toxicity: where the routes share a percentage once, as far as the basis has words. */
function unknownToxicity({ unknownAcuteToxicity }: Classification, { rules }: LabelData): Statement[] {
  const { code, one, several, between = '', all } = rules.unknownAcuteToxicity;
  const routes = new Map<number, string[]>();
  const shares = Object.entries(unknownAcuteToxicity);
  for (const [route, percent] of shares)
    if (percent > 0) routes.set(percent, [...(routes.get(percent) ?? []), route]);
  return [...routes].flatMap(([percent, of]) => {
    const said = (text: string, route: string) => ({
      code,
      text: text
        .replace('{percent}', shown(percent))
        .replace('{route}', route)
        .replace('{routes}', of.join(between)),
    });
    if (all && of.length === shares.length) return [said(all, '')];
    return several && of.length > 1 ? [said(several, '')] : of.map(route => said(one, route));
  });
}
