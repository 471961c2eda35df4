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
    left.length > 0 ? `; no pertinente: ${left.join(', ')}` : '',
    unknown.length > 0 ? `; el ${share} % de la mezcla es de toxicidad desconocida por esta vía (${of})` : '',
  ].join('');
}

/** No ingredient enters the additivity formula. */
export function nothingCounts(because: NothingCountsBecause, tell: Telling): Reasoned {
  const { key, upTo } = because;
  const bound = upTo === null ? '' : ` (hasta ${tell.style.show(upTo)} ${unitOf[key]})`;
  return {
    rule: 'ningún componente de toxicidad aguda conocida',
    working: `ningún componente pertinente tiene una categoría por esta vía ni una estimación que cuente${bound}${notes(because, tell)}`,
  };
}

/** Every ingredient lies in one category. */
export const sharedCategory = (
  { category, ateMix, key }: SharedCategoryBecause,
  { style }: Telling,
): Reasoned => ({
  rule: 'todos los componentes dentro de una categoría',
  working: `todos los componentes están en la categoría ${category} por esta vía, y por tanto también la mezcla (según la fórmula, ATEmix = ${style.show(ateMix)} ${unitOf[key]})`,
});

const quotient = ({ constituent, amount, over, converted }: EstimateTerm, tell: Telling): string =>
  `${tell.style.show(amount.value)}/${tell.style.show(over.value)} ${tell.names(constituent)}${converted ? ` (categoría ${converted})` : ''}`;

/** The additivity formula as worked on paper, with what it leaves out. */
export function additivity(because: AdditivityBecause, tell: Telling): Reasoned {
  const { key, terms, unknown, ateMix, limit, category, corrected } = because;
  const unit = unitOf[key];
  const left = corrected ? `(100 - ${tell.style.show(sumOf(unknown))})` : '100';
  const quotients = terms.map(term => quotient(term, tell)).join(' + ');
  const compared = `${tell.style.signs[category ? '<=' : '>']} ${tell.style.show(limit)} ${unit}${category ? ` (categoría ${category})` : ''}`;
  return {
    rule: corrected ? 'fórmula de adición corregida por componentes desconocidos' : 'fórmula de adición',
    working:
      `${left} / ATEmix = ${quotients} = ${tell.style.show(sumOf(terms))}; ` +
      `ATEmix = ${tell.style.beside(ateMix, limit)} ${unit} ${compared}${notes(because, tell)}`,
  };
}
