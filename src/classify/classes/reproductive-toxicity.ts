import type { Hazard } from '../../notation/hazard.ts';
import type { SpecificLimit } from '../../notation/limit.ts';
import type { CutOffTable } from '../../reference/thresholds.ts';
import { always, type ClassRule } from '../class-rule.ts';
import type { ClassifiedHazard } from '../classification.ts';
import { type ClassResult, type Context, hazardIn } from '../context.ts';
import { hazardsOf, type Ingredient, limitsOf } from '../ingredient.ts';
import {
  becauseOfCandidates,
  byIngredient,
  type Candidate,
  cutOffOf,
  floorOf,
  genericLimit,
  noneOf,
  overLow,
  readingsOf,
} from './by-ingredient.ts';

type Effect = 'F' | 'D' | 'plain';

/** One effect of one ingredient: fertility, development or unspecified, with the category it has for that effect. */
interface EffectClass {
  readonly effect: Effect;
  /** `1A`, `1B` or `2`. */
  readonly category: string;
}

/** Effects by the letters after H360 and H361 (CLP Annex VI 1.1.2.1.2): capitals Category 1, small letters Category 2. */
export function effectsOf(statement: string | null, category: string): EffectClass[] {
  const letters = statement?.slice(4) ?? '';
  if (letters === '') return [{ effect: 'plain', category }];
  return [...letters].map(letter => ({
    effect: letter.toUpperCase() as Effect,
    category: letter === letter.toUpperCase() ? category : '2',
  }));
}

const sameGroup = (a: { readonly category: string }, b: { readonly category: string }): boolean =>
  a.category[0] === b.category[0];

/**
 * Effects that a limit speaks of: those of its H-code, else those of the entry in the limit's category group; in the
 * category that the entry has for the effect, where the limit names another of the group.
 */
function limitedEffects(limit: SpecificLimit, hazards: readonly Hazard[]): EffectClass[] {
  const own = hazards
    .flatMap(({ statement, category }) => effectsOf(statement, category))
    .filter(effect => sameGroup(effect, limit));
  if (!limit.statement && own.length > 0) return own;
  return effectsOf(limit.statement, limit.category).map(
    named => own.find(({ effect }) => effect === named.effect) ?? named,
  );
}

interface EffectTrigger extends Candidate {
  readonly effect: Effect;
}

/** Effects that reach their own limit: a specific limit for the effect, else the table's for its category. */
function triggersOf(context: Context, ingredient: Ingredient, table: CutOffTable): EffectTrigger[] {
  const found: EffectTrigger[] = [];
  const hazards = hazardsOf(ingredient, 'Repr.');
  const limits = context.applyLimits ? limitsOf(ingredient, 'Repr.').filter(({ low }) => low !== null) : [];
  const limited = limits.flatMap(limit => limitedEffects(limit, hazards).map(entry => ({ ...entry, limit })));
  for (const { effect, category, limit } of limited)
    found.push({
      ingredient,
      own: category,
      result: category,
      limit: limit.low!,
      specific: true,
      statement: limit.statement,
      effect,
      reached: overLow(context.scale, ingredient.percent, limit),
    });
  for (const hazard of hazards)
    for (const { effect, category } of effectsOf(hazard.statement, hazard.category)) {
      if (
        limited.some(
          entry => sameGroup(entry, { category }) && (entry.effect === effect || entry.effect === 'plain'),
        )
      )
        continue;
      const row = table.rows.find(({ ingredient: own }) => own === category);
      if (!row) continue;
      found.push({
        ingredient,
        own: category,
        result: row.result,
        ...genericLimit(context, ingredient, row.from),
        specific: false,
        statement: hazard.statement,
        effect,
      });
    }
  return found;
}

/** H360 or H361 with the letters of the effects that trigger; plain beside a plain trigger. */
function statementOf(context: Context, triggers: readonly EffectTrigger[], category: string): string {
  const [base] = hazardIn('Repr.', category).statements as [string];
  if (!context.basis.letteredStatements || triggers.some(({ effect }) => effect === 'plain')) return base;
  const letter = (effect: 'F' | 'D'): string => {
    const own = triggers.filter(trigger => trigger.effect === effect);
    if (own.length === 0) return '';
    return category !== '2' && own.some(({ result }) => result !== '2') ? effect : effect.toLowerCase();
  };
  const f = letter('F');
  const d = letter('D');
  return base + (f === 'f' && d === 'D' ? 'Df' : f + d);
}

/** What the statement without letters may name (C.2.2.1): the effects of all that reach a limit, if each names its own. */
function harmsOf(reached: readonly EffectTrigger[]): ClassifiedHazard['harms'] {
  const effects = new Set(reached.map(({ effect }) => effect));
  if (effects.has('plain')) return undefined;
  return effects.size > 1 ? 'both' : effects.has('F') ? 'fertility' : 'development';
}

/**
 * Reproductive toxicity: A.7.3.1.1 with Table A.7.1; CLP 3.7.3.1.1 with Table 3.7.2. Not additive; fertility and
 * development are judged apart.
 */
export const reproductiveToxicity: ClassRule = {
  listed: 'Repr.',
  isOf: always,
  judge: context => [judge(context)],
  limitedBy: ['Repr.'],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables['Repr.'], category),
};

/** Effects on or via lactation: A.7.3.1.2 with Table A.7.1; CLP 3.7.3.1.2 with Table 3.7.2. */
export const lactation: ClassRule = {
  listed: 'Lact.',
  isOf: always,
  judge: context => [byIngredient(context, 'Lact.', context.basis.byIngredient['Lact.']!).result],
  limitedBy: ['Lact.'],
  cutOff: ({ byIngredient: tables }, category) => cutOffOf(tables['Lact.'], category),
};

function judge(context: Context): ClassResult {
  const table = context.basis.byIngredient['Repr.']!;
  if (!context.mixture.classes.has('Repr.')) return noneOf(context, 'Repr.', table).result;
  const all = context.mixture.ingredients.flatMap(ingredient => triggersOf(context, ingredient, table));
  const reached = all
    .filter(({ reached }) => reached)
    .sort((a, b) => (a.result < b.result ? -1 : a.result > b.result ? 1 : 0));
  const readings = [
    ...readingsOf(table),
    ...(context.basis.letteredStatements && all.length > 0 ? (['reproductive-effects'] as const) : []),
  ];
  const floor = floorOf(table);
  const worst = reached[0]?.result;
  if (worst === undefined) {
    const because = becauseOfCandidates(context, 'Repr.', table, all);
    return { class: 'Repr.', outcome: 'not-classified', because, readings, floor };
  }
  // Effects of a milder category add their letters.
  const deciding = context.basis.letteredStatements
    ? reached
    : reached.filter(({ result }) => result === worst);
  const harms = context.basis.letteredStatements ? undefined : harmsOf(reached);
  const hazard = hazardIn('Repr.', worst, {
    statements: [statementOf(context, reached, worst)],
    ...(harms && { harms }),
  });
  const because = becauseOfCandidates(context, 'Repr.', table, deciding);
  return { class: 'Repr.', outcome: 'classified', hazard, because, readings, floor };
}
