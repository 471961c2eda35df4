import type {
  Because,
  Comparison,
  ElicitorsBecause,
  IngredientsBecause,
  NoneBecause,
  PhBecause,
  SheetReason,
} from '../../classify/facts/because.ts';
import type { Ended, LeftOut, ReserveSetAside } from '../../classify/facts/reason-base.ts';
import type { BridgingPrinciple } from '../../record/product-record.ts';
import type { Reasoned, Telling } from '../words.ts';
import { additivity, nothingCounts, sharedCategory } from './acute.ts';
import { withSource } from './measured.ts';
import { aerosol, flashPoint, form, oxygen, peroxideData, signs } from './physical.ts';
import { ratios, sum } from './sums.ts';

/** A reason as worked on paper, with what was left out, set aside or not known. */
export function because(reason: Because, tell: Telling): Reasoned {
  const { working, ...told } = bare(reason, tell);
  const { leftOut, ended, setAside, lacking } = reason;
  const isAcute = 'key' in reason;
  return {
    ...told,
    working: [
      working,
      leftOut && !isAcute ? notRelevant(leftOut, tell) : '',
      ended ? rangeEnded(ended, tell) : '',
      setAside ? setAsideText(setAside, tell) : '',
      lacking ? `; sin datos de ${lacking.map(tell.names).join(', ')}` : '',
    ].join(''),
  };
}

const principles: Readonly<Record<BridgingPrinciple, string>> = {
  dilution: 'dilución',
  batching: 'lotes de fabricación',
  concentration: 'concentración de mezclas muy peligrosas',
  interpolation: 'interpolación dentro de una categoría',
  'substantially-similar': 'mezclas esencialmente similares',
  aerosols: 'aerosoles',
};

function bare(reason: Because, tell: Telling): Reasoned {
  switch (reason.kind) {
    case 'sum':
      return sum(reason, tell);
    case 'ratios':
      return ratios(reason, tell);
    case 'ingredients':
      return ingredients(reason, tell);
    case 'none':
      return none(reason, tell);
    case 'additivity':
      return additivity(reason, tell);
    case 'shared-category':
      return sharedCategory(reason, tell);
    case 'nothing-counts':
      return nothingCounts(reason, tell);
    case 'ph':
      return pH(reason, tell);
    case 'flash-point':
      return flashPoint(reason, tell);
    case 'test':
      return { rule: 'ensayo de la propia mezcla', working: evidence(reason) };
    case 'bridging':
      return {
        rule: `extrapolación de una mezcla similar sometida a ensayo (${principles[reason.principle]})`,
        working: evidence(reason),
      };
    case 'form':
      return form(reason);
    case 'substance':
      return {
        rule: 'sustancia única',
        working: `el producto es solo ${tell.names(reason.constituent)}, que está clasificado ${reason.code}`,
      };
    case 'signs':
      return signs(reason, tell);
    case 'screening':
      return {
        rule: 'examen por componentes',
        working: `ningún componente está clasificado ${reason.classes.join(' o ')}; el registro no contiene ningún ensayo del producto`,
      };
    case 'oxygen':
      return oxygen(reason, tell);
    case 'peroxide-data':
      return peroxideData(reason, tell);
    case 'aerosol':
      return aerosol(reason, tell);
    case 'concluded':
      return {
        rule: 'corrosivo para la piel',
        working: `la mezcla está clasificada ${reason.from}, de lo que se deducen lesiones oculares graves`,
      };
    case 'not-yet':
      return { rule: 'todavía no está en vigor', working: `las mezclas se clasifican desde ${reason.from}` };
    case 'elicitors':
      return elicitors(reason, tell);
    case 'sheet-on-request':
      return {
        rule: 'ficha de datos de seguridad para una mezcla no clasificada',
        working: reason.reasons.map(each => sheetReason(each, tell)).join('; '),
      };
    case 'classes':
      return reason.inhaled
        ? {
            rule: 'tóxico por inhalación y corrosivo para la piel',
            working: 'Acute Tox. (por inhalación) con Skin Corr.',
          }
        : { rule: 'corrosivo para la piel, sin clase por inhalación', working: 'Skin Corr.' };
  }
}

const evidence = (found: { method: string; source: string; reason: string | null }): string =>
  `${found.method}; ${found.source}${found.reason ? `; ${found.reason}` : ''}`;

function notRelevant(leftOut: readonly LeftOut[], tell: Telling): string {
  const each = leftOut.map(
    ({ constituent, amount, from }) =>
      `${tell.style.beside(amount.value, from)} % ${tell.names(constituent)}`,
  );
  return `; no pertinente por debajo del ${tell.style.show(leftOut[0]!.from)} %: ${each.join(', ')}`;
}

function rangeEnded(ended: readonly Ended[], { style, names }: Telling): string {
  const each = ended.map(
    ({ constituent, amount, upTo }) =>
      `${style.beside(amount.value, upTo.value)} % ${names(constituent)} ${style.signs['>=']} ${style.show(upTo.value)} %`,
  );
  return `; por encima del intervalo específico y sin contar: ${each.join(', ')}`;
}

const setAsideText = (
  { pH: value, operator, limit, method, source }: ReserveSetAside,
  { style }: Telling,
): string =>
  `; pH ${style.show(value.value)} ${style.signs[operator]} ${style.show(limit)} se descarta por las pruebas de reserva ácida o alcalina (${method}; ${source})`;

function pH({ side, measured, limit, sum: besides }: PhBecause, tell: Telling): Reasoned {
  const value = withSource(`pH ${tell.style.show(measured.value.value)}`, measured);
  const working = `${value} ${tell.style.signs[side === 'acid' ? '<=' : '>=']} ${tell.style.show(limit)}`;
  const rule = `pH extremo (${side === 'acid' ? 'ácido' : 'álcali'})`;
  if (!besides) return { rule, working };
  const says = besides.category === '1' ? 'lo mismo' : `subcategoría ${besides.category}`;
  return { rule, working: `${working}; ${says} según la suma: ${because(besides.because, tell).working}` };
}

const ingredientRules: Readonly<Record<IngredientsBecause['rule'], string>> = {
  'at-cut-off': 'componente en su valor de corte o por encima',
  'below-cut-off': 'componentes por debajo de su valor de corte',
  'specific-limit': 'límite de concentración específico',
  'corrosive-alone': 'componente corrosivo para el que la suma no vale',
  'irritant-alone': 'componente irritante para el que la suma no vale',
  'damaging-alone': 'componente que causa lesiones oculares para el que la suma no vale',
  'strong-without-ph': 'ácido o base fuerte, y ningún pH que decida',
};

function ingredients({ rule, comparisons }: IngredientsBecause, tell: Telling): Reasoned {
  const compared = ({ constituent, amount, limit, reached, own, result }: Comparison): string => {
    const share = `${tell.style.beside(amount.value, limit.value)} % ${tell.names(constituent)}`;
    const against = `${tell.style.signs[reached ? '>=' : '<']} ${tell.style.show(limit.value)} %`;
    if (!own) return `${share} ${against}`;
    if (rule === 'specific-limit') return `${share} ${against} (categoría ${own})`;
    return `${share} (categoría ${own}${result === own ? '' : `, da la categoría ${result}`}) ${against}`;
  };
  return { rule: ingredientRules[rule], working: [...new Set(comparisons.map(compared))].join('; ') };
}

function none({ rule, from, class: name, ended }: NoneBecause, tell: Telling): Reasoned {
  const [lowest, other] = from;
  const atLeast = ended ? 'dentro de sus límites' : `con el ${tell.style.show(lowest!)} % o más`;
  const said = (working: string): Reasoned => ({ rule: 'ningún componente pertinente', working });
  switch (rule) {
    case 'skin':
      return said(`ningún componente corrosivo o irritante para la piel ${atLeast}`);
    case 'eye':
      return said(`ningún componente que cause lesiones o irritación oculares ${atLeast}`);
    case 'respiratory-irritation':
      return said(`ningún componente que irrite las vías respiratorias ${atLeast}`);
    case 'narcotic-effects':
      return said(`ningún componente con efectos narcóticos ${atLeast}`);
    case 'aspiration':
      return said(`ningún componente tóxico por aspiración ${atLeast}`);
    case 'aquatic':
      return said(
        `ningún componente de esta clase en su valor de corte (${tell.style.show(lowest!)} %, dividido por M, o ${tell.style.show(other!)} %)`,
      );
    case 'not-classified-so':
      return {
        rule: 'valor de corte de cada componente',
        working: `ningún componente está clasificado ${tell.classNamed ? 'para este peligro' : name}; el valor de corte más bajo es el ${tell.style.show(lowest!)} %`,
      };
  }
}

const elicitors = ({ elicitors: found }: ElicitorsBecause, tell: Telling): Reasoned => ({
  rule: 'sensibilizante por debajo de su límite de clasificación',
  working: found
    .map(({ constituent, amount, class: name, limit, tenth }) => {
      const from = tenth
        ? `la décima parte del ${tell.style.show(limit.value)} %`
        : `${tell.style.show(limit.value)} %`;
      return `${tell.style.show(amount.value)} % ${tell.names(constituent)} (${name}) ${tell.style.signs['>=']} ${from}`;
    })
    .join('; '),
});

function sheetReason(reason: SheetReason, tell: Telling): string {
  if (reason.kind === 'titanium-dioxide') return 'lleva una indicación sobre el dióxido de titanio (2.12)';
  const share = `${tell.style.show(reason.amount.value)} % ${tell.names(reason.constituent)}`;
  return reason.kind === 'tenth'
    ? `${share} ${tell.style.signs['>=']} la décima parte de su límite específico del ${tell.style.show(reason.limit.value)} %`
    : `${share} (${reason.what}) ${tell.style.signs['>=']} ${tell.style.show(reason.from)} %`;
}
