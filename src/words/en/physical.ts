import type {
  AerosolBecause,
  FlashPointBecause,
  FormBecause,
  OxygenBecause,
  PeroxideDataBecause,
  Sign,
  SignsBecause,
} from '../../classify/facts/physical.ts';
import type { PhysicalForm } from '../../record/product-record.ts';
import type { Reasoned, Telling } from '../words.ts';
import { judgedAt, withSource } from './measured.ts';

const forms: Readonly<Record<PhysicalForm, readonly [one: string, many: string]>> = {
  liquid: ['a liquid', 'liquids'],
  solid: ['a solid', 'solids'],
  gas: ['a gas', 'gases'],
  aerosol: ['an aerosol', 'aerosols'],
};

/** A class that is not for the physical form of the product. */
export const form = ({ forms: of, form: own, aspiration }: FormBecause): Reasoned => ({
  rule: 'physical form',
  working: aspiration
    ? `aspiration is judged for liquids and aerosols, not for ${forms[own][0]}`
    : `the class is for ${of.map(each => forms[each][1]).join(', ')}; the product is ${forms[own][0]}`,
});

/** Flash point against the bounds of a category. */
export function flashPoint(because: FlashPointBecause, { style }: Telling): Reasoned {
  const { found, measured, above, upTo, boiling } = because;
  if (found === 'missing')
    return {
      rule: 'flash point not given',
      working: 'the record gives no flash point; write `flash-point: none` where a test found none',
    };
  if (found === 'none')
    return { rule: 'flash point', working: withSource('no flash point was found by test', because) };
  const { signs: sign } = style;
  const degrees = (value: number): string => `${style.show(value)} ${style.celsius}`;
  const less =
    because.lessOpenCup === undefined ? '' : ` less ${degrees(because.lessOpenCup)} for the open cup`;
  const at = `${withSource(judgedAt('flash point', measured!, style, degrees), measured!)}${less}`;
  if (boiling) {
    const low = `${at} ${sign['<']} ${degrees(upTo!.limit)}`;
    const rule = 'flash point and initial boiling point';
    if (!boiling.measured) return { rule, working: `${low}; initial boiling point not given` };
    const value = withSource(
      judgedAt('initial boiling point', boiling.measured, style, degrees),
      boiling.measured,
    );
    const compared = `${sign[boiling.reached ? '<=' : '>']} ${degrees(boiling.limit)}`;
    return { rule, working: `${low}; ${value} ${compared}` };
  }
  if (!upTo)
    return {
      rule: 'flash point above the last category',
      working: `${at} ${sign['>']} ${degrees(above!.limit)}`,
    };
  const lower = above ? `${degrees(above.limit)} ${sign[above.operator === '>=' ? '<=' : '<']} ` : '';
  const working = `${lower}${at} ${sign[upTo.operator]} ${degrees(upTo.limit)}`;
  return { rule: 'flash point', working, ...(!above && { saysRule: true }) };
}

/** Why the ingredients cannot show that a product is not of a class. */
const notFromIngredients: Readonly<Record<string, string>> = {
  'Press. Gas': 'it follows from how the gas is packed: under pressure, liquefied, refrigerated or dissolved',
  'Comb. Dust':
    'it follows from the particle size and a test of the dust, and no list of substances names it',
  'Simple Asphyx.': 'no list of substances names it',
};

function sign(found: Sign, tell: Telling): string {
  if (found.kind === 'ph') return `pH ${tell.style.show(found.pH.value)}`;
  const share = `${tell.style.show(found.amount.value)} % ${tell.names(found.constituent)}`;
  return found.kind === 'corrosive' ? `${share}, corrosive to skin` : `${share}, itself ${found.code}`;
}

/** What points to a class without deciding it. */
export const signs = (because: SignsBecause, tell: Telling): Reasoned => ({
  rule: 'evidence needed',
  working: [
    ...because.signs.map(each => sign(each, tell)),
    ...(because.notFromIngredients ? [notFromIngredients[because.class] ?? ''] : []),
    'no evidence in the record decides',
  ].join('; '),
});

const byTests = (paragraph: string): string => `types A to G follow from tests (${paragraph})`;

/** Available oxygen of organic peroxides. */
export function oxygen(because: OxygenBecause, tell: Telling): Reasoned {
  const { terms, total, limit, exempt, hydrogenPeroxide, types } = because;
  const products = terms.map(
    ({ groups, amount, over, constituent }) =>
      `${groups} x ${tell.style.show(amount.value)} / ${tell.style.show(over.value)} ${tell.names(constituent)}`,
  );
  const available = limit === null ? tell.style.show(total) : tell.style.beside(total, limit);
  const compared =
    limit === null ? '' : ` ${tell.style.signs[exempt ? '<=' : '>']} ${tell.style.show(limit)} %`;
  const { total: share, limit: bound, reached } = hydrogenPeroxide;
  const besides = `hydrogen peroxide ${tell.style.beside(share, bound)} % ${tell.style.signs[reached ? '>' : '<=']} ${tell.style.show(bound)} %`;
  return {
    rule: 'available oxygen',
    working: `${tell.style.show(because.oxygen)} x (${products.join(' + ')}) = ${available} % available oxygen${compared}; ${besides}${exempt ? '' : `; ${byTests(types.paragraph)}`}`,
  };
}

/** Organic peroxides without the data for available oxygen. */
export function peroxideData({ peroxides, without, types }: PeroxideDataBecause, tell: Telling): Reasoned {
  const told = peroxides.map(
    ({ constituent, amount, code }) =>
      `${tell.style.show(amount.value)} % ${tell.names(constituent)}${code ? `, itself ${code}` : ''}`,
  );
  return {
    rule: 'test result needed',
    working: `contains ${told.join(', ')}; available oxygen is not known without \`peroxide\` of ${without.map(tell.names).join(', ')}; ${byTests(types.paragraph)}`,
  };
}

/** Flammable components of an aerosol. */
export function aerosol(because: AerosolBecause, tell: Telling): Reasoned {
  const { terms, total, limit, above, category, otherwise, heatOfCombustion } = because;
  const sum = terms
    .map(({ amount, constituent }) => `${tell.style.show(amount.value)} % ${tell.names(constituent)}`)
    .join(' + ');
  const compared = `${sum ? `${sum} = ` : ''}${tell.style.beside(total, limit)} % flammable components ${tell.style.signs[above ? '>' : '<=']} ${tell.style.show(limit)} %`;
  const rest = above
    ? `no flammability test in the record, so Category ${category}`
    : `Category ${otherwise} if the heat of combustion is below ${tell.style.show(heatOfCombustion)} kJ/g, else Category ${category} unless tested; the record gives neither as evidence`;
  return {
    rule: above ? 'flammable components of an untested aerosol' : 'heat of combustion needed',
    working: `${compared}; ${rest}`,
  };
}
