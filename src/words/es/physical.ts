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
  liquid: ['un líquido', 'líquidos'],
  solid: ['un sólido', 'sólidos'],
  gas: ['un gas', 'gases'],
  aerosol: ['un aerosol', 'aerosoles'],
};

/** A class that is not for the physical form of the product. */
export const form = ({ forms: of, form: own, aspiration }: FormBecause): Reasoned => ({
  rule: 'forma física',
  working: aspiration
    ? `la aspiración se valora en líquidos y aerosoles, y el producto es ${forms[own][0]}`
    : `la clase es para ${of.map(each => forms[each][1]).join(', ')}; el producto es ${forms[own][0]}`,
});

/** Flash point against the bounds of a category. */
export function flashPoint(because: FlashPointBecause, { style }: Telling): Reasoned {
  const { found, measured, above, upTo, boiling } = because;
  if (found === 'missing')
    return {
      rule: 'punto de inflamación no indicado',
      working: 'el registro no da ningún punto de inflamación',
    };
  if (found === 'none')
    return {
      rule: 'punto de inflamación',
      working: withSource('el ensayo no encontró punto de inflamación', because),
    };
  const { signs: sign } = style;
  const degrees = (value: number): string => `${style.show(value)} ${style.celsius}`;
  const less =
    because.lessOpenCup === undefined ? '' : ` menos ${degrees(because.lessOpenCup)} por el vaso abierto`;
  const at = `${withSource(judgedAt('punto de inflamación', measured!, style, degrees), measured!)}${less}`;
  if (boiling) {
    const low = `${at} ${sign['<']} ${degrees(upTo!.limit)}`;
    const rule = 'punto de inflamación y punto inicial de ebullición';
    if (!boiling.measured) return { rule, working: `${low}; punto inicial de ebullición no indicado` };
    const value = withSource(
      judgedAt('punto inicial de ebullición', boiling.measured, style, degrees),
      boiling.measured,
    );
    return {
      rule,
      working: `${low}; ${value} ${sign[boiling.reached ? '<=' : '>']} ${degrees(boiling.limit)}`,
    };
  }
  if (!upTo)
    return {
      rule: 'punto de inflamación por encima de la última categoría',
      working: `${at} ${sign['>']} ${degrees(above!.limit)}`,
    };
  const lower = above ? `${degrees(above.limit)} ${sign[above.operator === '>=' ? '<=' : '<']} ` : '';
  const working = `${lower}${at} ${sign[upTo.operator]} ${degrees(upTo.limit)}`;
  return { rule: 'punto de inflamación', working, ...(!above && { saysRule: true }) };
}

/** Why the ingredients cannot show that a product is not of a class. */
const notFromIngredients: Readonly<Record<string, string>> = {
  'Press. Gas': 'depende de cómo se envasa el gas: comprimido, licuado, refrigerado o disuelto',
  'Comb. Dust':
    'depende del tamaño de las partículas y de un ensayo del polvo, y ninguna lista de sustancias la nombra',
  'Simple Asphyx.': 'ninguna lista de sustancias la nombra',
};

function sign(found: Sign, tell: Telling): string {
  if (found.kind === 'ph') return `pH ${tell.style.show(found.pH.value)}`;
  const share = `${tell.style.show(found.amount.value)} % ${tell.names(found.constituent)}`;
  return found.kind === 'corrosive'
    ? `${share}, corrosivo para la piel`
    : `${share}, por sí solo ${found.code}`;
}

/** What points to a class without deciding it. */
export const signs = (because: SignsBecause, tell: Telling): Reasoned => ({
  rule: 'hacen falta pruebas',
  working: [
    ...because.signs.map(each => sign(each, tell)),
    ...(because.notFromIngredients ? [notFromIngredients[because.class] ?? ''] : []),
    'ninguna prueba del registro decide',
  ].join('; '),
});

const byTests = (paragraph: string): string => `los tipos A a G resultan de ensayos (${paragraph})`;

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
  const besides = `peróxido de hidrógeno ${tell.style.beside(share, bound)} % ${tell.style.signs[reached ? '>' : '<=']} ${tell.style.show(bound)} %`;
  return {
    rule: 'oxígeno activo',
    working: `${tell.style.show(because.oxygen)} x (${products.join(' + ')}) = ${available} % de oxígeno activo${compared}; ${besides}${exempt ? '' : `; ${byTests(types.paragraph)}`}`,
  };
}

/** Organic peroxides without the data for available oxygen. */
export function peroxideData({ peroxides, without, types }: PeroxideDataBecause, tell: Telling): Reasoned {
  const told = peroxides.map(
    ({ constituent, amount, code }) =>
      `${tell.style.show(amount.value)} % ${tell.names(constituent)}${code ? `, por sí solo ${code}` : ''}`,
  );
  return {
    rule: 'hace falta el resultado de un ensayo',
    working: `contiene ${told.join(', ')}; no se conoce el oxígeno activo sin los grupos peróxido de ${without.map(tell.names).join(', ')}; ${byTests(types.paragraph)}`,
  };
}

/** Flammable components of an aerosol. */
export function aerosol(because: AerosolBecause, tell: Telling): Reasoned {
  const { terms, total, limit, above, category, otherwise, heatOfCombustion } = because;
  const sum = terms
    .map(({ amount, constituent }) => `${tell.style.show(amount.value)} % ${tell.names(constituent)}`)
    .join(' + ');
  const compared = `${sum ? `${sum} = ` : ''}${tell.style.beside(total, limit)} % de componentes inflamables ${tell.style.signs[above ? '>' : '<=']} ${tell.style.show(limit)} %`;
  const rest = above
    ? `ningún ensayo de inflamabilidad en el registro, por tanto categoría ${category}`
    : `categoría ${otherwise} si el calor de combustión es inferior a ${tell.style.show(heatOfCombustion)} kJ/g, si no categoría ${category} salvo ensayo; el registro no da ninguno de los dos`;
  return {
    rule: above ? 'componentes inflamables de un aerosol no ensayado' : 'hace falta el calor de combustión',
    working: `${compared}; ${rest}`,
  };
}
