import groups from '../../../hazard-data/reactivity/groups.json' with { type: 'json' };
import data from '../../../hazard-data/sheet/advice.json' with { type: 'json' };
import type { Words } from '../../words/words.ts';
import { ingredients } from './disclosure.ts';
import { fill } from './fill.ts';
import { sheetForm } from './form.ts';
import { classesOf } from './hazards.ts';
import type { SheetInput } from './input.ts';
import { secretsOf } from './secrets.ts';

type AdviceId = keyof Words['sheet']['advice'];

/** What must hold together for a sentence. */
interface Condition {
  readonly classes?: readonly string[];
  readonly noneOf?: readonly string[];
  readonly undecided?: readonly string[];
  readonly notClassified?: readonly string[];
  readonly form?: readonly string[];
  readonly group?: string;
  readonly cas?: readonly string[];
  readonly supplemental?: string;
  readonly hazard?: string;
  readonly water?: string;
  readonly fate?: string;
  readonly phUpTo?: number;
  readonly phFrom?: number;
}

interface Rule {
  readonly id: string;
  readonly place: string;
  readonly when: readonly Condition[];
  readonly unlabelled?: boolean;
  readonly otherwise?: boolean;
  /** Classes that the sentence denies. */
  readonly denies?: readonly string[];
}

/** A sentence that holds for a product, with the constituents it speaks of. */
export interface Advice {
  readonly id: AdviceId;
  readonly constituents: readonly number[];
  readonly denies: readonly string[];
}

const RULES = data.rules as readonly Rule[];

/**
 * The sentences for a place of the sheet that class, form, pH and ingredients call for (hazard-data/sheet/advice.json).
 * @param labelled whether statements of the label stand there already
 * @param derived whether sentences that follow from the classification do, so that none may say that there is nothing
 */
export function adviceFor(
  input: SheetInput,
  place: string,
  labelled: boolean,
  derived = false,
): readonly Advice[] {
  const rules = RULES.filter(rule => rule.place === place && !(labelled && rule.unlabelled));
  const held = rules.flatMap(rule => {
    const found = rule.when.map(condition => holds(input, condition)).filter(each => each !== null);
    if (found.length === 0) return [];
    const constituents = [...new Set(found.flat())];
    return [{ rule, advice: { id: rule.id as AdviceId, constituents, denies: rule.denies ?? [] } }];
  });
  const first = held.filter(({ rule }) => !rule.otherwise);
  return (first.length > 0 || derived ? first : held).map(({ advice }) => advice);
}

/** Sentences of advice; under another basis than 29 CFR 1910.1200 without its paragraphs. */
const adviceOf = ({ classification, words: { sheet } }: SheetInput): Words['sheet']['advice'] =>
  sheetForm(classification.basis.id).outline === 'appendix-d'
    ? sheet.advice
    : { ...sheet.advice, ...sheet.ghs.advice };

/** The same as text. */
export function adviceTexts(
  input: SheetInput,
  place: string,
  labelled = false,
  derived = false,
): readonly string[] {
  const { name } = secretsOf(input);
  return adviceFor(input, place, labelled, derived).map(({ id, constituents }) =>
    fill(adviceOf(input)[id], { names: constituents.map(name).join(', ') }),
  );
}

/** The constituents by which a condition holds; null where it does not hold. */
function holds(input: SheetInput, condition: Condition): readonly number[] | null {
  const { record, classification } = input;
  const pH = record.properties.pH?.value.value;
  const classified = (names: readonly string[]) =>
    classification.hazards.some(({ hazardClass, code, route }) =>
      names.some(name => [hazardClass, code, `${hazardClass} (${route})`].includes(name)),
    );
  const undecided = (names: readonly string[]) =>
    classification.otherClasses.some(
      ({ outcome, class: name }) =>
        outcome === 'insufficient-data' && classesOf(name).some(each => names.includes(each)),
    );
  const { classes, noneOf, form, group, cas: numbers, phUpTo, phFrom } = condition;
  const fits =
    (!classes || classified(classes)) &&
    (!noneOf || (!classified(noneOf) && !undecided(noneOf))) &&
    (!condition.undecided || undecided(condition.undecided)) &&
    (!condition.notClassified || !classified(condition.notClassified)) &&
    (!form || form.includes(record.form)) &&
    (phUpTo === undefined || (pH !== undefined && pH <= phUpTo)) &&
    (phFrom === undefined || (pH !== undefined && pH >= phFrom));
  if (!fits) return null;
  if (numbers) return some(constituentsOf(input, ({ cas }) => cas !== null && numbers.includes(cas)));
  if (group) return some(constituentsOf(input, isOfGroup(group)));
  const told = (is: (each: Constituent) => boolean) => {
    const found = constituentsOf(input, is);
    if (found.length === 0) return null;
    const disclosed = new Set(ingredients(input).flatMap(({ listed, index }) => (listed ? [index] : [])));
    return some(found.filter(at => disclosed.has(at)));
  };
  const { supplemental, hazard, water, fate } = condition;
  if (supplemental) return told(({ data: own }) => own.supplemental.includes(supplemental));
  if (hazard) return told(({ data: own }) => own.hazards.some(({ hazardClass }) => hazardClass === hazard));
  if (water) return told(({ cas }) => input.properties.of(cas)?.water === water);
  if (fate) return told(({ cas }) => input.properties.of(cas)?.fate === fate);
  return [];
}

const some = (found: readonly number[]): readonly number[] | null => (found.length > 0 ? found : null);

type Constituent = SheetInput['classification']['constituents'][number];

const constituentsOf = (
  { classification }: SheetInput,
  is: (each: Constituent) => boolean,
): readonly number[] =>
  classification.constituents.flatMap((each, at) =>
    each.high.value >= data.from.percent && is(each) ? [at] : [],
  );

function isOfGroup(id: string): (each: Constituent) => boolean {
  const group = groups.groups.find(each => each.id === id);
  const numbers = new Set(group?.members?.map(({ cas }) => cas));
  const classes: readonly string[] = group?.hazardClasses ?? [];
  return ({ cas, data: { hazards } }) =>
    (cas !== null && numbers.has(cas)) || hazards.some(({ hazardClass }) => classes.includes(hazardClass));
}
