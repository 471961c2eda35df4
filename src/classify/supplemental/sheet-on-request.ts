import { findClass } from '../../notation/classes.ts';
import type { Because, SheetReason } from '../facts/because.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { type Finding, isClassified, type SupplementalInput } from './_finding.ts';
import { ofAnnex, rules } from './_rules.ts';
import { elicitors } from './sensitizers.ts';

/**
 * EUH210, CLP Annex II 2.10 and 2.12: mixtures not classified and not for the general public. Substances that only
 * have a Community workplace exposure limit are not looked up.
 * @param titaniumDioxide whether EUH211 or EUH212 stands on the label.
 */
export function sheetOnRequest(input: SupplementalInput, titaniumDioxide: boolean): Finding[] {
  if (isClassified(input) || input.soldAs.generalPublic) return [];
  const { code, cite } = rules.sheetOnRequest;
  const reasons: SheetReason[] = [
    ...input.mixture.ingredients.flatMap(ingredient => reasonsOf(ingredient, input)),
    ...specific(input),
  ];
  if (titaniumDioxide) reasons.push({ kind: 'titanium-dioxide' });
  if (reasons.length === 0) return [];
  const because: Because = { kind: 'sheet-on-request', reasons, cites: [ofAnnex(cite)] };
  return [{ code, fields: {}, because, readings: ['euh210-scope'] }];
}

function reasonsOf(ingredient: Ingredient, { mixture, scale }: SupplementalInput): SheetReason[] {
  const { rows, otherHazards } = rules.sheetOnRequest;
  const { index, percent, data } = ingredient;
  const reason = (what: string, from: number): SheetReason[] => [
    { kind: 'ingredient', constituent: index, amount: percent, what, from },
  ];
  const row = rows.find(
    ({ hazardClass, categories, from }) =>
      hazardsOf(ingredient, hazardClass).some(({ category }) => categories.includes(category)) &&
      scale.reaches(percent, from),
  );
  if (row) return reason(row.hazardClass, row.from);
  const from = mixture.form === 'gas' ? otherHazards.fromGas : otherHazards.from;
  const other = data.hazards.find(({ hazardClass }) =>
    otherHazards.kinds.includes(findClass(hazardClass)?.kind ?? ''),
  );
  return other && scale.reaches(percent, from) ? reason(other.code, from) : [];
}

const specific = (input: SupplementalInput): SheetReason[] =>
  elicitors(input)
    .filter(({ tenth }) => tenth)
    .map(({ ingredient: { index, percent }, limit }) => ({
      kind: 'tenth',
      constituent: index,
      amount: percent,
      limit,
    }));
