import { compare, reaches, show } from '../../quantity/sum.ts';
import type { Because } from '../classification.ts';
import { constant } from '../constant.ts';
import { type ClassResult, type Context, citeHealth, plainHazard } from '../context.ts';
import { concerns, hazardsOf } from '../ingredient.ts';
import { withSource } from '../measured.ts';
import type { ReadingId } from '../readings.ts';
import { reason, retold } from '../reasons.ts';
import { becauseOfNone, becauseOfSum, genericTerm, reachesLimit } from '../sums.ts';

const CLASS = 'Asp. Tox.';

/**
 * Aspiration hazard: A.10.3.3.1, A.10.3.3.2.1; CLP and UN 3.10.3.3. Needs the sum and the viscosity of the mixture.
 * Layers (A.10.3.3.2.2) are not judged apart (reading `aspiration-layers`).
 */
export function aspiration(context: Context): readonly ClassResult[] {
  const { basis, mixture } = context;
  if (concerns(mixture, CLASS)) return judge(context);
  return constant(basis, `${CLASS} ${mixture.form}`, () => judge(context));
}

function judge(context: Context): ClassResult[] {
  const { basis, mixture } = context;
  const { relevantFrom, categories, forms } = basis.aspiration;
  const floor = relevantFrom.percent;
  if (mixture.form === 'solid' || mixture.form === 'gas') {
    const working = `aspiration is judged for liquids and aerosols, not for a ${mixture.form}`;
    const because = becauseOfNone('physical form', citeHealth(basis, forms.cite), working);
    return [{ class: CLASS, outcome: 'not-applicable', because }];
  }

  const used = new Set<ReadingId>();
  const result = { class: CLASS, floor };
  let undecided: ClassResult | null = null;
  let below: ClassResult | null = null;
  for (const { category, sum, viscosity, cite } of categories) {
    const toxicants = mixture.ingredients.filter(ingredient =>
      hazardsOf(ingredient, CLASS).some(hazard => hazard.category <= category),
    );
    const relevant = toxicants.filter(({ relevant, percent }) => relevant || reaches(percent, floor));
    if (relevant.length < toxicants.length) used.add('below-cut-off');
    if (relevant.length === 0) continue;
    used.add(mixture.form === 'aerosol' ? 'aspiration-aerosol' : 'aspiration-layers');
    const terms = relevant.map(ingredient => genericTerm(ingredient, sum));
    const because = becauseOfSum(terms, sum, 'sum of aspiration toxicants', citeHealth(basis, cite), '');
    const measured = mixture.properties.kinematicViscosity40C;
    if (!reachesLimit(terms, sum)) {
      below ??= { ...result, outcome: 'not-classified', because };
      continue;
    }
    const withViscosity = (text: string): Because =>
      reason(() => retold(because, `${because.working}; ${text}`));
    if (!measured) {
      used.add('aspiration-viscosity');
      undecided ??= {
        class: CLASS,
        outcome: 'insufficient-data',
        because: withViscosity(`kinematic viscosity at 40 C is not given (limit ${show(viscosity)} mm2/s)`),
      };
      continue;
    }
    const thin = compare(measured.value, viscosity) <= 0;
    const why = withViscosity(
      `${withSource(`kinematic viscosity at 40 C ${show(measured.value.value)} mm2/s`, measured)} ${thin ? '<=' : '>'} ${show(viscosity)} mm2/s`,
    );
    if (thin) {
      const hazard = plainHazard(CLASS, category, [category === '1' ? 'H304' : 'H305']);
      return [{ ...result, outcome: 'classified', hazard, because: why, readings: [...used] }];
    }
    below ??= { ...result, outcome: 'not-classified', because: why };
  }
  const because = becauseOfNone(
    'no relevant ingredient',
    citeHealth(basis, relevantFrom.cite),
    `no aspiration toxicant at ${show(floor)} % or more`,
  );
  const found = undecided ?? below ?? { ...result, outcome: 'not-classified' as const, because };
  return [{ ...found, readings: [...used] }];
}
