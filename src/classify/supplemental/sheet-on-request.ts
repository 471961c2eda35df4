import { findClass } from '../../notation/classes.ts';
import { reaches, show } from '../../quantity/sum.ts';
import { hazardsOf, type Ingredient } from '../ingredient.ts';
import { type Finding, isClassified, type SupplementalInput } from './_finding.ts';
import { citeAnnex, rules } from './_rules.ts';
import { elicitors } from './sensitizers.ts';

/**
 * EUH210, CLP Annex II 2.10 and 2.12: mixtures not classified and not for the general public. Substances that only
 * have a Community workplace exposure limit are not looked up.
 * @param titaniumDioxide whether EUH211 or EUH212 stands on the label.
 */
export function sheetOnRequest(input: SupplementalInput, titaniumDioxide: boolean): Finding[] {
  if (isClassified(input) || input.soldAs.generalPublic) return [];
  const { code, cite } = rules.sheetOnRequest;
  const reasons = [
    ...input.mixture.ingredients.flatMap(ingredient => reasonsOf(ingredient, input)),
    ...specific(input),
  ];
  if (titaniumDioxide) reasons.push({ text: 'bears a statement on titanium dioxide (2.12)', name: null });
  if (reasons.length === 0) return [];
  const names = new Set(reasons.flatMap(({ name }) => name ?? []));
  const terms = input.mixture.ingredients
    .filter(({ name }) => names.has(name))
    .map(({ name, percent }) => ({ name, percent: percent.value, weight: 1 }));
  const working = reasons.map(({ text }) => text).join('; ');
  const because = {
    rule: 'safety data sheet for a mixture that is not classified',
    cite: citeAnnex(cite),
    working,
    terms,
  };
  return [{ code, fields: {}, because, readings: ['euh210-scope'] }];
}

interface Reason {
  readonly text: string;
  readonly name: string | null;
}

function reasonsOf(ingredient: Ingredient, { mixture }: SupplementalInput): Reason[] {
  const { rows, otherHazards } = rules.sheetOnRequest;
  const { name, percent, data } = ingredient;
  const reason = (what: string, from: number): Reason => ({
    text: `${show(percent.value)} % ${name} (${what}) >= ${show(from)} %`,
    name,
  });
  const row = rows.find(
    ({ hazardClass, categories, from }) =>
      hazardsOf(ingredient, hazardClass).some(({ category }) => categories.includes(category)) &&
      reaches(percent, from),
  );
  if (row) return [reason(row.hazardClass, row.from)];
  const from = mixture.form === 'gas' ? otherHazards.fromGas : otherHazards.from;
  const other = data.hazards.find(({ hazardClass }) =>
    otherHazards.kinds.includes(findClass(hazardClass)?.kind ?? ''),
  );
  return other && reaches(percent, from) ? [reason(other.code, from)] : [];
}

const specific = (input: SupplementalInput): Reason[] =>
  elicitors(input)
    .filter(({ tenth }) => tenth)
    .map(({ ingredient: { name, percent }, limit }) => ({
      text: `${show(percent.value)} % ${name} >= one tenth of its specific limit of ${show(limit.value)} %`,
      name,
    }));
