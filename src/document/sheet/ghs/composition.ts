import { printLimit } from '../../../notation/print-limit.ts';
import { marked } from '../../../quantity/print.ts';
import type { Words } from '../../../words/words.ts';
import { concentrations } from '../composition.ts';
import { percentText, prescribedRange } from '../concentration.ts';
import { bodyOf, type ItemBody, type SectionBodies, said } from '../content.ts';
import { type Ingredient, ingredients } from '../disclosure.ts';
import { fill } from '../fill.ts';
import { sheetForm } from '../form.ts';
import type { SheetInput } from '../input.ts';
import { type Secrets, secretsOf } from '../secrets.ts';
import { hazardAndCode } from './classes.ts';

/** Section 3 (Annex II, 3.2; GHS, Table 1.5.2, 3). */
export function composition(input: SheetInput): SectionBodies {
  const { ghs: words } = input.words.sheet;
  const all = ingredients(input);
  const secrets = secretsOf(input);
  // In descending order (Annex II, 3.2).
  const listed = all
    .filter(ingredient => ingredient.listed)
    .sort((one, other) => other.classified.high.value - one.classified.high.value);
  const gas = input.record.form === 'gas';
  const columns = [
    words.columns.name,
    words.columns.numbers,
    gas ? words.columns.byVolume : words.columns.byWeight,
    words.columns.classification,
  ];
  const rows = listed.map(ingredient => [
    secrets.name(ingredient.index),
    numbers(ingredient, secrets, input),
    concentration(ingredient, secrets, input.words),
    [...ingredient.hazards.map(hazard => hazardAndCode(hazard, input)), ...notes(ingredient, input)].join(
      '\n',
    ) || words.unclassified,
  ]);
  const unjudged = all.filter(
    ({ classified, listed: named }) => !named && classified.data.noData && !classified.water,
  );
  return {
    ingredients: {
      ...(bodyOf('product record', { table: { columns, rows } }) ?? said('calculation', words.noneListed)),
      notes: [
        words.statementsBelow,
        ...(unjudged.length > 0
          ? [fill(words.unjudged, { names: unjudged.map(({ index }) => secrets.name(index)).join('; ') })]
          : []),
      ],
    },
    values: values(listed, secrets, input),
    concentrations: concentrations(input, listed, secrets, words.rangeShown),
    ...claims(input, secrets),
  };
}

function concentration(
  { classified, index }: Ingredient,
  { percent }: Secrets,
  { sheet, decimalMark }: Words,
): string {
  const { to } = sheet.composition;
  const { low, high } = classified;
  if (!percent.has(index)) return percentText(low, high, to, decimalMark);
  const range = prescribedRange({ low: low.value, high: high.value });
  return range ? marked(fill(to, { ...range }), decimalMark) : '–';
}

/** EC, CAS, index and registration number, each with what is known (3.2.4). */
function numbers({ index, classified, own }: Ingredient, { identity }: Secrets, input: SheetInput): string {
  const { numbers: words } = input.words.sheet.ghs;
  if (identity.has(index)) return words.withheld;
  const entry = input.entries[index] ?? null;
  const ec = own?.ec ?? entry?.ec ?? null;
  const cas = classified.cas;
  return [
    fill(words.ec, { number: ec ?? words.open }),
    ...(cas ? [fill(words.cas, { number: cas })] : []),
    ...(entry ? [fill(words.index, { number: entry.index })] : []),
    fill(words.registration, { number: own?.registration ?? words.open }),
  ].join('\n');
}

/** Why an ingredient is there that no hazard class puts there (3.2.3). */
function notes({ reasons, own, hazards, listed }: Ingredient, input: SheetInput): readonly string[] {
  const { listedFor: words } = input.words.sheet.ghs;
  if (!listed) return [];
  return [
    ...reasons.flatMap(reason => (reason === 'hazard' ? [] : [words[reason]])),
    ...(reasons.length === 0 && hazards.length === 0 && own?.list ? [words.own] : []),
  ];
}

const ROUTES = ['oral', 'dermal', 'gas', 'vapour', 'mist'] as const;

/** Limits, M-factors and estimates of each ingredient, as far as they are given (3.2.3). */
function values(listed: readonly Ingredient[], secrets: Secrets, input: SheetInput): ItemBody {
  const { ghs: words, toxicology } = input.words.sheet;
  const local = (text: string | number): string => marked(String(text), input.words.decimalMark);
  const rows = listed.flatMap(({ index, classified: { data } }) => {
    const limits = data.limits.map(limit => local(`${printLimit(limit)} %`));
    const factors = [...data.mFactors.given].map(kind =>
      fill(words.factors[kind], { value: local(data.mFactors[kind]) }),
    );
    const estimates = ROUTES.flatMap(route => {
      const estimate = data.ate[route];
      const [title, phrase] = toxicology.ate[route] as readonly [string, string];
      return estimate
        ? [fill(words.estimate, { route: title, value: fill(phrase, { value: local(estimate.value) }) })]
        : [];
    });
    if (limits.length + factors.length + estimates.length === 0) return [];
    const cell = (texts: readonly string[]) => texts.join('\n') || '–';
    return [[secrets.name(index), cell(limits), cell(factors), cell(estimates)]];
  });
  return (
    bodyOf('reference tables', { table: { columns: words.valueColumns, rows } }) ??
    said('reference tables', words.noValues)
  );
}

/** Names that stand in place of others, and under what (CLP, Article 24; GHS, 1.4.8). */
function claims(input: SheetInput, { identity, name }: Secrets): SectionBodies {
  const { ghs: words } = input.words.sheet;
  const eu = sheetForm(input.classification.basis.id).secrets === 'alternative-name';
  const text = [...identity].map(at => {
    const approval = input.formula.constituents[at]!.tradeSecret?.alternativeName?.approval;
    return eu && approval
      ? fill(words.alternative, { name: name(at), approval })
      : fill(words.confidential, { name: name(at) });
  });
  const body = bodyOf('product record', { text });
  if (body) return { 'trade-secret': body };
  return eu ? { 'trade-secret': said('product record', words.noAlternative) } : {};
}
