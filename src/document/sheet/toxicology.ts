import type { OtherClass } from '../../classify/classification.ts';
import type { Because } from '../../classify/facts/because.ts';
import type { Reasoned } from '../../words/words.ts';
import { carcinogens } from './carcinogens.ts';
import {
  bodyOf,
  firstBody,
  type ItemBody,
  nothing,
  paragraphs,
  type SectionBodies,
  type SheetValue,
  said,
} from './content.ts';
import { capitalized, figure, fill } from './fill.ts';
import { symptoms, undecidedHealth } from './first-aid.ts';
import { reactionWarnings } from './hazard-identification.ts';
import { classTitle, effectsOf, hazardTitle, isHealth } from './hazards.ts';
import { ateUnits, ingredientToxicity } from './ingredient-toxicity.ts';
import type { SheetInput } from './input.ts';
import { secretsOf, tellingOf } from './secrets.ts';

/** Section 11 (29 CFR 1910.1200 App. D, Table D.1, 11). */
export function toxicology(input: SheetInput): SectionBodies {
  const { record } = input;
  const { toxicology: words } = input.words.sheet;
  const reactions = reactionWarnings(input);
  return {
    'health-effects': healthEffects(input),
    routes: firstBody(
      bodyOf('product record', { text: paragraphs(record.sheet['toxicology.exposure-routes']) }),
      bodyOf('physical form', { text: [words.routesByForm[record.form]] }),
    ),
    'tox-symptoms': symptoms(
      input,
      record.sheet['toxicology.symptoms'] ?? record.sheet['first-aid.symptoms'],
    ),
    'delayed-effects': delayedEffects(input),
    numerical: estimates(input),
    'ingredient-toxicity': ingredientToxicity(input) ?? nothing,
    interactive: firstBody(
      bodyOf('calculation', { text: reactions.length > 0 ? [words.interactive] : [], list: reactions }),
      said('calculation', words.noInteractive),
    ),
    carcinogens: carcinogens(input),
    'alternative-information': alternatives(input),
  };
}

/** Every health class that the physical form admits, with its result and the reason. */
function healthEffects(input: SheetInput): ItemBody {
  const { classification } = input;
  const { toxicology: words } = input.words.sheet;
  const found = classification.hazards
    .filter(({ hazardClass }) => isHealth(hazardClass))
    .map(hazard => [
      hazardTitle({ ...hazard, category: '' }, input.words.sheet),
      hazard.category === '' ? hazard.code : fill(words.category, { category: hazard.category }),
      reasonText(input, told(input, hazard.because), [hazard.because]),
    ]);
  const examined = classification.otherClasses.filter(
    ({ class: name, outcome }) => isHealth(name) && outcome !== 'not-applicable',
  );
  const others = alike(input, examined).map(({ classes, reasoned }) => [
    classes.map(each => classTitle(each, input.words.sheet)).join('; '),
    words.outcomes[classes[0]!.outcome],
    reasonText(
      input,
      reasoned,
      classes.map(({ because }) => because),
    ),
  ]);
  return firstBody(
    bodyOf('calculation', {
      table: { columns: words.columns, rows: [...found, ...others] },
      notes: [words.paragraphs],
    }),
  );
}

const told = (input: SheetInput, because: Because): Reasoned =>
  input.words.because(because, { ...tellingOf(input), classNamed: true });

/** Classes with the same outcome for the same reason, in the order of the first of each. */
function alike(
  input: SheetInput,
  classes: readonly OtherClass[],
): readonly { readonly classes: readonly OtherClass[]; readonly reasoned: Reasoned }[] {
  const groups = new Map<string, { classes: OtherClass[]; reasoned: Reasoned }>();
  for (const each of classes) {
    const reasoned = told(input, each.because);
    const key = JSON.stringify([each.outcome, reasoned]);
    const group = groups.get(key);
    if (group) group.classes.push(each);
    else groups.set(key, { classes: [each], reasoned });
  }
  return [...groups.values()];
}

/** Rule, arithmetic and paragraphs; no arithmetic where it would tell concentrations that are withheld. */
function reasonText(
  input: SheetInput,
  { rule, working, saysRule }: Reasoned,
  reasons: readonly Because[],
): string {
  const { words: language, thresholds } = input;
  const text = !tellingOf(input).amounts ? [rule] : saysRule ? [working] : [rule, working];
  const known = [thresholds.instrument, thresholds.physicalInstrument];
  const cites = new Set(reasons.map(({ cites: each }) => language.cites(each, known)));
  return `${text.map(capitalized).join('. ')} [${[...cites].join('; ')}]`;
}

function delayedEffects(input: SheetInput): ItemBody {
  const { classification, record } = input;
  const { toxicology: words, measures } = input.words.sheet;
  const immediate = effectsOf(classification.hazards, 'acute', input.words.sheet);
  const later = effectsOf(classification.hazards, 'delayed', input.words.sheet);
  const sentence = (phrase: string, texts: readonly string[]) =>
    texts.length > 0 ? [fill(phrase, { texts: `${texts.join('; ')}.` })] : [];
  return firstBody(
    bodyOf('product record', { text: paragraphs(record.sheet['toxicology.delayed-effects']) }),
    bodyOf('hazard classes', {
      text: [...sentence(words.immediate, immediate), ...sentence(words.later, later)],
    }),
    said('hazard classes', undecidedHealth(input) ? measures.symptomsUndecided : measures.noSymptoms),
  );
}

function estimates(input: SheetInput): ItemBody {
  const { classification } = input;
  const { toxicology: words } = input.words.sheet;
  // A figure of three digits would tell a concentration that is withheld.
  const withheld = secretsOf(input).percent.size > 0;
  const routes = Object.keys(words.ate) as (keyof typeof words.ate)[];
  const title = (route: keyof typeof words.ate) => words.ate[route][0]!;
  const rows = routes.flatMap(route => {
    const value = classification.ateMix[route];
    return value === null
      ? []
      : [
          [
            title(route),
            fill(words.ate[route][1]!, { value: figure(value, withheld ? 1 : 3, input.words.decimalMark) }),
          ],
        ];
  });
  if (rows.length === 0) return { text: [words.noAteAtAll], source: 'calculation' };
  const values = routes.flatMap((route): SheetValue[] => {
    const value = withheld ? null : classification.ateMix[route];
    return value === null
      ? []
      : [{ property: `ateMix.${route}`, of: null, value, unit: ateUnits[route], source: null }];
  });
  const without = routes.filter(route => classification.ateMix[route] === null).map(title);
  return {
    table: {
      columns: words.ateColumns,
      rows: without.length > 0 ? [...rows, [without.join('; '), words.noAte]] : rows,
    },
    values,
    notes: [words.ateNote, ...(withheld ? [words.ateRounded] : [])],
    source: 'calculation',
  };
}

/** Where the data come from if not from tests of the mixture ((g) of Table D.1, 11). */
function alternatives({ record, classification, words: language }: SheetInput): ItemBody {
  const { toxicology: words } = language.sheet;
  const evidence = record.evidence.map(({ kind, method, source }) =>
    fill({ test: words.tested, bridging: words.bridging, reserve: words.reserve }[kind], { method, source }),
  );
  const harmonised = classification.constituents.some(({ data }) => data.source.kind === 'harmonised');
  return {
    text: [words.calculated, ...evidence, ...(harmonised ? [words.harmonised] : []), words.noSar],
    source: 'calculation',
  };
}
