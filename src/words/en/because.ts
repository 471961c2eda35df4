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
      lacking ? `; no data on ${lacking.map(tell.names).join(', ')}` : '',
    ].join(''),
  };
}

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
      return { rule: 'test on the mixture itself', working: evidence(reason) };
    case 'bridging':
      return {
        rule: `bridging from a similar tested mixture by ${reason.principle}`,
        working: evidence(reason),
      };
    case 'form':
      return form(reason);
    case 'substance':
      return {
        rule: 'single substance',
        working: `the product is ${tell.names(reason.constituent)} alone, which is classified ${reason.code}`,
      };
    case 'signs':
      return signs(reason, tell);
    case 'screening':
      return {
        rule: 'screening by ingredients',
        working: `no ingredient is classified ${reason.classes.join(' or ')}; the record holds no test of the product`,
      };
    case 'oxygen':
      return oxygen(reason, tell);
    case 'peroxide-data':
      return peroxideData(reason, tell);
    case 'aerosol':
      return aerosol(reason, tell);
    case 'concluded':
      return {
        rule: 'corrosive to skin',
        working: `the mixture is classified ${reason.from}, so serious eye damage is concluded`,
      };
    case 'not-yet':
      return { rule: 'not yet in force', working: `mixtures are classified from ${reason.from}` };
    case 'elicitors':
      return elicitors(reason, tell);
    case 'sheet-on-request':
      return {
        rule: 'safety data sheet for a mixture that is not classified',
        working: reason.reasons.map(each => sheetReason(each, tell)).join('; '),
      };
    case 'classes':
      return reason.inhaled
        ? {
            rule: 'toxic by inhalation and corrosive to skin',
            working: 'Acute Tox. (inhalation) with Skin Corr.',
          }
        : { rule: 'corrosive to skin, no class by inhalation', working: 'Skin Corr.' };
  }
}

const evidence = (found: { method: string; source: string; reason: string | null }): string =>
  `${found.method}; ${found.source}${found.reason ? `; ${found.reason}` : ''}`;

function notRelevant(leftOut: readonly LeftOut[], tell: Telling): string {
  const each = leftOut.map(
    ({ constituent, amount, from }) =>
      `${tell.style.beside(amount.value, from)} % ${tell.names(constituent)}`,
  );
  return `; not relevant below ${tell.style.show(leftOut[0]!.from)} %: ${each.join(', ')}`;
}

/** `; above the specific range and not counted: 99 % glutaral >= 5 %` */
function rangeEnded(ended: readonly Ended[], { style, names }: Telling): string {
  const each = ended.map(
    ({ constituent, amount, upTo }) =>
      `${style.beside(amount.value, upTo.value)} % ${names(constituent)} ${style.signs['>=']} ${style.show(upTo.value)} %`,
  );
  return `; above the specific range and not counted: ${each.join(', ')}`;
}

/** `pH 12.6 >= 11.5` */
export const extremePhText = (
  { pH: value, operator, limit }: Pick<ReserveSetAside, 'pH' | 'operator' | 'limit'>,
  { style }: Telling,
): string => `pH ${style.show(value.value)} ${style.signs[operator]} ${style.show(limit)}`;

const setAsideText = (found: ReserveSetAside, tell: Telling): string =>
  `; ${extremePhText(found, tell)} is set aside by evidence on acid or alkaline reserve (${found.method}; ${found.source})`;

function pH({ side, measured, limit, sum: besides }: PhBecause, tell: Telling): Reasoned {
  const value = withSource(`pH ${tell.style.show(measured.value.value)}`, measured);
  const working = `${value} ${tell.style.signs[side === 'acid' ? '<=' : '>=']} ${tell.style.show(limit)}`;
  const rule = `extreme pH (${side})`;
  if (!besides) return { rule, working };
  const says = besides.category === '1' ? 'the same' : `sub-category ${besides.category}`;
  return { rule, working: `${working}; ${says} from the sum: ${because(besides.because, tell).working}` };
}

const ingredientRules: Readonly<Record<IngredientsBecause['rule'], string>> = {
  'at-cut-off': 'ingredient at or above its cut-off',
  'below-cut-off': 'ingredients below their cut-off',
  'specific-limit': 'specific concentration limit',
  'corrosive-alone': 'corrosive ingredient for which summing does not hold',
  'irritant-alone': 'irritant ingredient for which summing does not hold',
  'damaging-alone': 'damaging ingredient for which summing does not hold',
  'strong-without-ph': 'strong acid or base, and no pH to decide',
};

function ingredients({ rule, comparisons }: IngredientsBecause, tell: Telling): Reasoned {
  const compared = ({ constituent, amount, limit, reached, own, result }: Comparison): string => {
    const share = `${tell.style.beside(amount.value, limit.value)} % ${tell.names(constituent)}`;
    const against = `${tell.style.signs[reached ? '>=' : '<']} ${tell.style.show(limit.value)} %`;
    if (!own) return `${share} ${against}`;
    if (rule === 'specific-limit') return `${share} ${against} (Category ${own})`;
    return `${share} (Category ${own}${result === own ? '' : `, giving Category ${result}`}) ${against}`;
  };
  return {
    rule: ingredientRules[rule],
    working: [...new Set(comparisons.map(compared))].join('; '),
  };
}

function none({ rule, from, class: name, ended }: NoneBecause, tell: Telling): Reasoned {
  const [lowest, other] = from;
  const atLeast = ended ? 'within its limits' : `at ${tell.style.show(lowest!)} % or more`;
  const because = (working: string): Reasoned => ({ rule: 'no relevant ingredient', working });
  switch (rule) {
    case 'skin':
      return because(`no ingredient corrosive or irritating to skin ${atLeast}`);
    case 'eye':
      return because(`no ingredient damaging or irritating to the eye ${atLeast}`);
    case 'respiratory-irritation':
      return because(`no ingredient with respiratory irritation ${atLeast}`);
    case 'narcotic-effects':
      return because(`no ingredient with narcotic effects ${atLeast}`);
    case 'aspiration':
      return because(`no aspiration toxicant ${atLeast}`);
    case 'aquatic':
      return because(
        `no ingredient of this class at its cut-off (${tell.style.show(lowest!)} %, divided by M, or ${tell.style.show(other!)} %)`,
      );
    case 'not-classified-so':
      return {
        rule: 'cut-off of each ingredient',
        working: `no ingredient is classified ${tell.classNamed ? 'for this hazard' : name}; the lowest cut-off is ${tell.style.show(lowest!)} %`,
      };
  }
}

const elicitors = ({ elicitors: found }: ElicitorsBecause, tell: Telling): Reasoned => ({
  rule: 'sensitizer below its limit for classification',
  working: found
    .map(({ constituent, amount, class: name, limit, tenth }) => {
      const from = tenth
        ? `one tenth of ${tell.style.show(limit.value)} %`
        : `${tell.style.show(limit.value)} %`;
      return `${tell.style.show(amount.value)} % ${tell.names(constituent)} (${name}) ${tell.style.signs['>=']} ${from}`;
    })
    .join('; '),
});

function sheetReason(reason: SheetReason, tell: Telling): string {
  if (reason.kind === 'titanium-dioxide') return 'bears a statement on titanium dioxide (2.12)';
  const share = `${tell.style.show(reason.amount.value)} % ${tell.names(reason.constituent)}`;
  return reason.kind === 'tenth'
    ? `${share} ${tell.style.signs['>=']} one tenth of its specific limit of ${tell.style.show(reason.limit.value)} %`
    : `${share} (${reason.what}) ${tell.style.signs['>=']} ${tell.style.show(reason.from)} %`;
}
