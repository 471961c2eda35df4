import type { InhalationForm } from '../../notation/hazard.ts';
import { acuteResults } from '../classes/acute-toxicity.ts';
import type { ClassResult, Context } from '../context.ts';
import { ofHealth } from '../facts/provision.ts';
import type { Warning } from '../facts/warning.ts';
import { hazardsOf, inhalationFormOf } from '../ingredient.ts';
import { isMoreSevere } from '../worst.ts';

const inhaled = (context: Context): ClassResult =>
  acuteResults(context).find(({ route }) => route === 'inhalation')!;

const codeOf = (result: ClassResult): string =>
  result.outcome === 'classified' ? result.hazard.code : result.outcome;

/**
 * Toxicity by inhalation whose form the ingredients leave open and that mist or vapour, whichever was not taken, would
 * make worse: a product that is sprayed, or a dissolved solid, is inhaled as mist (Tables A.1.1, A.1.2; CLP Tables 3.1.1,
 * 3.1.2; reading `inhalation-form`).
 * @param context at the upper ends of ranges.
 */
export function inhalationForm(context: Context): Warning[] {
  const { mixture, basis, take } = context;
  if (mixture.form === 'gas') return [];
  const open = mixture.ingredients.filter(
    ingredient =>
      !ingredient.data.ate.vapour &&
      !ingredient.data.ate.mist &&
      hazardsOf(ingredient, 'Acute Tox.').some(({ route, form }) => route === 'inhalation' && !form),
  );
  if (open.length === 0) return [];
  const chosen = take('inhalation-form');
  // A choice with its reason is an answer.
  if (chosen !== 'by-state') return [];
  const taken = inhalationFormOf(mixture.form);
  const other: InhalationForm = taken === 'mist' ? 'vapour' : 'mist';
  const now = inhaled(context);
  const within = inhaled({ ...context, take: id => (id === 'inhalation-form' ? other : take(id)) });
  if (!isMoreSevere(within, now)) return [];
  return [
    {
      id: 'inhalation-form-worse',
      taken,
      other,
      now: codeOf(now),
      within: codeOf(within),
      constituents: open.map(({ index }) => index),
      cites: [ofHealth(basis, basis.acuteToxicity.conversion.cite)],
    },
  ];
}
