import type { Because } from '../../../classify/facts/because.ts';
import { marked } from '../../../quantity/print.ts';
import { bodyOf, firstBody, type ItemBody, nothing, paragraphs, type SectionBodies } from '../content.ts';
import { ingredients } from '../disclosure.ts';
import { capitalized, fill } from '../fill.ts';
import type { SheetInput } from '../input.ts';
import { secretsOf, tellingOf } from '../secrets.ts';
import { toxicology as common } from '../toxicology.ts';
import { hazardsOfKind, orderOf, othersOfKind, outcomeText, titleAndCode, titleOf } from './classes.ts';
import { identified } from './identified.ts';

/** Section 11 (Annex II, 11.1 and 11.2; GHS, Table 1.5.2, 11). */
export function toxicology(input: SheetInput): SectionBodies {
  const { record, classification } = input;
  const { ghs: words, toxicology: shared } = input.words.sheet;
  const known = common(input);
  const evidence = record.evidence.map(({ kind, method, source }) =>
    fill({ test: shared.tested, bridging: shared.bridging, reserve: shared.reserve }[kind], {
      method,
      source,
    }),
  );
  const harmonised = classification.constituents.some(({ data }) => data.source.kind === 'harmonised');
  return {
    ...known,
    'health-effects': healthEffects(input),
    numerical: known.numerical?.table
      ? { ...known.numerical, notes: [words.estimatesNote, ...(known.numerical.notes ?? []).slice(1)] }
      : known.numerical!,
    'ingredient-toxicity': ingredientToxicity(input),
    'alternative-information': {
      text: [words.calculated, ...evidence, ...(harmonised ? [words.harmonised] : [])],
      source: 'calculation',
    },
    'endocrine-health': identified(input, 'endocrine', ['assessment.endocrine-health']),
    'other-effects':
      bodyOf('product record', { text: paragraphs(record.sheet['toxicology.other']) }) ?? nothing,
  };
}

/** Each health class by its name, with the result and the reason; none is left out (11.1). */
function healthEffects(input: SheetInput): ItemBody {
  const { ghs: words } = input.words.sheet;
  const found = hazardsOfKind(input, 'health').map(hazard => ({
    order: orderOf(hazard.hazardClass),
    cells: [titleAndCode(hazard, input), words.met, reason(hazard.because, input)],
  }));
  // Endocrine disruption has its place in 11.2, and is not denied for want of a classified ingredient.
  const ten = othersOfKind(input, 'health').filter(other => other.class !== 'ED HH');
  const others = ten.map(other => ({
    order: orderOf(other.class),
    cells: [titleOf(other, input), outcomeText(other, input), reason(other.because, input)],
  }));
  const rows = [...found, ...others].sort((one, next) => one.order - next.order).map(({ cells }) => cells);
  return firstBody(bodyOf('calculation', { table: { columns: words.effectColumns, rows } }));
}

/** Rule, arithmetic and paragraphs; no arithmetic where it would tell concentrations that are withheld. */
function reason(because: Because, input: SheetInput): string {
  const telling = { ...tellingOf(input), classNamed: true };
  const { rule, working, saysRule } = input.words.because(because, telling);
  const text = !telling.amounts ? [rule] : saysRule ? [working] : [rule, working];
  const { instrument, physicalInstrument } = input.thresholds;
  const cites = input.words.cites(because.cites, [instrument, physicalInstrument]);
  return `${text.map(capitalized).join('. ')} [${cites}]`;
}

const ROUTES = ['oral', 'dermal', 'gas', 'vapour', 'mist'] as const;

/** What the data give of single ingredients that section 3 names. */
function ingredientToxicity(input: SheetInput): ItemBody {
  const { name } = secretsOf(input);
  const { ghs: words, toxicology: shared } = input.words.sheet;
  const rows = ingredients(input).flatMap(({ index, listed, own, classified: { data } }) => {
    if (!listed) return [];
    const estimates = ROUTES.flatMap(route => {
      const estimate = data.ate[route];
      const [title, phrase] = shared.ate[route] as readonly [string, string];
      return estimate
        ? [
            fill(words.estimate, {
              route: title,
              value: fill(phrase, { value: marked(String(estimate.value), input.words.decimalMark) }),
            }),
          ]
        : [];
    });
    const texts = [...estimates, ...paragraphs(own?.toxicity)];
    return texts.length > 0 ? [[name(index), texts.join('\n')]] : [];
  });
  return bodyOf('product record', { table: { columns: words.toxicityColumns, rows } }) ?? nothing;
}
