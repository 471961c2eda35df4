import { compare, reaches, show } from '../../quantity/sum.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citeHealth, plainHazard } from '../context.ts';
import { concerns, hazardsOf } from '../ingredient.ts';
import { becauseOfNone, becauseOfSum, genericTerm, reachesLimit } from '../sums.ts';

const CLASS = 'Asp. Tox.';

/** Aspiration hazard: A.10.3.3.1, A.10.3.3.2.1; CLP and UN 3.10.3.3. Needs the sum and the viscosity of the mixture. */
export function aspiration(context: Context): readonly ClassResult[] {
  const { basis, mixture } = context;
  if (concerns(mixture, CLASS)) return judge(context);
  return constant(basis, `${CLASS} ${mixture.form}`, () => judge(context));
}

function judge(context: Context): ClassResult[] {
  const { basis, mixture } = context;
  const { relevantFrom, categories } = basis.aspiration;
  const floor = relevantFrom.percent;
  if (mixture.form === 'solid' || mixture.form === 'gas') {
    const working = `aspiration is judged for liquids and aerosols, not for a ${mixture.form}`;
    const because = becauseOfNone('physical form', citeHealth(basis, categories[0]!.cite), working);
    return [{ class: CLASS, outcome: 'not-applicable', because }];
  }

  let undecided: ClassResult | null = null;
  let below: ClassResult | null = null;
  for (const { category, sum, viscosity, cite } of categories) {
    const terms = mixture.ingredients
      .filter(
        ingredient =>
          hazardsOf(ingredient, CLASS).some(hazard => hazard.category <= category) &&
          (ingredient.relevant || reaches(ingredient.percent, floor)),
      )
      .map(ingredient => genericTerm(ingredient, sum));
    if (terms.length === 0) continue;
    const because = becauseOfSum(terms, sum, 'sum of aspiration toxicants', citeHealth(basis, cite), '');
    const measured = mixture.properties.kinematicViscosity40C?.value;
    if (!reachesLimit(terms, sum)) {
      below ??= { class: CLASS, outcome: 'not-classified', because, floor };
      continue;
    }
    if (!measured) {
      undecided ??= {
        class: CLASS,
        outcome: 'insufficient-data',
        because: {
          ...because,
          working: `${because.working}; kinematic viscosity at 40 C is not given (limit ${show(viscosity)} mm2/s)`,
        },
        readings: ['aspiration-viscosity'],
      };
      continue;
    }
    const thin = compare(measured, viscosity) <= 0;
    const working = `${because.working}; viscosity ${show(measured.value)} mm2/s ${thin ? '<=' : '>'} ${show(viscosity)} mm2/s at 40 C`;
    if (thin)
      return [
        {
          class: CLASS,
          outcome: 'classified',
          hazard: plainHazard(CLASS, category, [category === '1' ? 'H304' : 'H305']),
          because: { ...because, working },
          floor,
        },
      ];
    below ??= { class: CLASS, outcome: 'not-classified', because: { ...because, working }, floor };
  }
  if (undecided) return [undecided];
  if (below) return [below];
  const because = becauseOfNone(
    'no relevant ingredient',
    citeHealth(basis, relevantFrom.cite),
    `no aspiration toxicant at ${show(floor)} % or more`,
  );
  return [{ class: CLASS, outcome: 'not-classified', because, floor }];
}
