import type {
  AdditivityBecause,
  EstimateTerm,
  NothingCountsBecause,
  SharedCategoryBecause,
} from '../../classify/facts/because.ts';
import { unitOf } from '../../classify/facts/figure.ts';
import { sumOf } from '../../quantity/sum.ts';
import type { Reasoned, Telling } from '../words.ts';

type OfRoute = AdditivityBecause | SharedCategoryBecause | NothingCountsBecause;

/** What the sum leaves out, and what is unknown. */
function notes({ unknown, leftOut = [] }: OfRoute, tell: Telling): string {
  const left = leftOut.map(
    ({ constituent, amount, from }) =>
      `${tell.style.beside(amount.value, from)} % ${tell.names(constituent)} < ${tell.style.show(from)} %`,
  );
  const share = tell.style.show(sumOf(unknown));
  const of = unknown.map(({ constituent }) => tell.names(constituent)).join(', ');
  return [
    left.length > 0 ? `; not relevant: ${left.join(', ')}` : '',
    unknown.length > 0 ? `; ${share} % of the mixture is of unknown toxicity by this route (${of})` : '',
  ].join('');
}

/** No ingredient enters the additivity formula. */
export function nothingCounts(because: NothingCountsBecause, tell: Telling): Reasoned {
  const { key, upTo } = because;
  const bound = upTo === null ? '' : ` (up to ${tell.style.show(upTo)} ${unitOf[key]})`;
  return {
    rule: 'no ingredient of known acute toxicity',
    working: `no relevant ingredient has a category by this route or an estimate that counts${bound}${notes(because, tell)}`,
  };
}

/** Every ingredient lies in one category. */
export const sharedCategory = (
  { category, ateMix, key }: SharedCategoryBecause,
  { style }: Telling,
): Reasoned => ({
  rule: 'all ingredients within one category',
  working: `every ingredient is in Category ${category} by this route, so the mixture is too (by the formula ATEmix = ${style.show(ateMix)} ${unitOf[key]})`,
});

const quotient = ({ constituent, amount, over, converted }: EstimateTerm, tell: Telling): string =>
  `${tell.style.show(amount.value)}/${tell.style.show(over.value)} ${tell.names(constituent)}${converted ? ` (Category ${converted})` : ''}`;

/** The additivity formula as worked on paper, with what it leaves out. */
export function additivity(because: AdditivityBecause, tell: Telling): Reasoned {
  const { key, terms, unknown, ateMix, limit, category, corrected } = because;
  const unit = unitOf[key];
  const left = corrected ? `(100 - ${tell.style.show(sumOf(unknown))})` : '100';
  const quotients = terms.map(term => quotient(term, tell)).join(' + ');
  const compared = `${tell.style.signs[category ? '<=' : '>']} ${tell.style.show(limit)} ${unit}${category ? ` (Category ${category})` : ''}`;
  return {
    rule: corrected ? 'additivity formula corrected for unknown ingredients' : 'additivity formula',
    working:
      `${left} / ATEmix = ${quotients} = ${tell.style.show(sumOf(terms))}; ` +
      `ATEmix = ${tell.style.beside(ateMix, limit)} ${unit} ${compared}${notes(because, tell)}`,
  };
}
