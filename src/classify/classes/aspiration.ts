import { always, type ClassRule } from '../class-rule.ts';
import { constant, keysByForm } from '../constant.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import type { Because } from '../facts/because.ts';
import { ofHealth } from '../facts/provision.ts';
import { hazardsOf } from '../ingredient.ts';
import { measurementOf } from '../measured.ts';
import { type Objective, objective, objectives } from '../ranges/objective.ts';
import type { ReadingId } from '../readings.ts';
import { becauseOfSum, genericTerm, reachesLimit } from '../sums.ts';

const CLASS = 'Asp. Tox.';
const byForm = keysByForm(CLASS);

/** Which way the sum of each category gets worse. */
const aspirationObjectives = ({ mixture, basis }: Context): readonly Objective[] =>
  objectives(
    ...basis.aspiration.categories.map(({ category }) =>
      objective(mixture, ingredient =>
        hazardsOf(ingredient, CLASS).some(hazard => hazard.category <= category) ? 1 : 0,
      ),
    ),
  );

/**
 * Aspiration hazard: A.10.3.3.1, A.10.3.3.2.1; CLP and UN 3.10.3.3. Needs the sum and the viscosity of the mixture.
 * Layers (A.10.3.3.2.2) are not judged apart (reading `aspiration-layers`).
 */
export const aspiration: ClassRule = {
  listed: CLASS,
  isOf: always,
  judge: context => {
    const { basis, mixture } = context;
    if (mixture.classes.has(CLASS)) return judge(context);
    return constant(basis, byForm[mixture.form], () => judge(context));
  },
  objectives: aspirationObjectives,
  limitedBy: [],
  cutOff: figures => figures.aspiration.relevantFrom.percent,
};

function judge({ basis, mixture, scale }: Context): ClassResult[] {
  const { relevantFrom, categories, forms } = basis.aspiration;
  const floor = relevantFrom.percent;
  if (mixture.form === 'solid' || mixture.form === 'gas') {
    const because: Because = {
      kind: 'form',
      forms: ['liquid', 'aerosol'],
      form: mixture.form,
      aspiration: true,
      cites: [ofHealth(basis, forms.cite)],
    };
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
    const relevant = toxicants.filter(({ relevant, percent }) => relevant || scale.reaches(percent, floor));
    if (relevant.length < toxicants.length) used.add('below-cut-off');
    if (relevant.length === 0) continue;
    used.add(mixture.form === 'aerosol' ? 'aspiration-aerosol' : 'aspiration-layers');
    const terms = relevant.map(ingredient => genericTerm(ingredient, sum));
    const reached = reachesLimit(scale, terms, sum);
    const of = { rule: 'aspiration', limit: sum, reached, cite: ofHealth(basis, cite) } as const;
    const because = becauseOfSum(terms, of);
    if (!reached) {
      below ??= { ...result, outcome: 'not-classified', because };
      continue;
    }
    const measured = mixture.properties.kinematicViscosity40C;
    const thin = measured !== undefined && scale.compare(measured.value, viscosity) <= 0;
    const fact = { measured: measured ? measurementOf(measured) : null, limit: viscosity, reached: thin };
    const why = { ...because, viscosity: fact } as Because;
    const only = relevant.find(({ percent }) => scale.compare(percent, 100) >= 0);
    if (!measured && only) {
      const code = `${CLASS} ${category}`;
      const why: Because = {
        kind: 'substance',
        constituent: only.index,
        code,
        cites: [ofHealth(basis, cite)],
      };
      const hazard = hazardIn(CLASS, category);
      return [{ ...result, outcome: 'classified', hazard, because: why }];
    }
    if (!measured) {
      used.add('aspiration-viscosity');
      undecided ??= { class: CLASS, outcome: 'insufficient-data', because: why };
      continue;
    }
    if (thin) {
      const hazard = hazardIn(CLASS, category);
      return [{ ...result, outcome: 'classified', hazard, because: why, readings: [...used] }];
    }
    below ??= { ...result, outcome: 'not-classified', because: why };
  }
  const because: Because = {
    kind: 'none',
    rule: 'aspiration',
    from: [floor],
    cites: [ofHealth(basis, relevantFrom.cite)],
  };
  const found = undecided ?? below ?? { ...result, outcome: 'not-classified' as const, because };
  return [{ ...found, readings: [...used] }];
}
