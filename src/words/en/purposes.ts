import type { LabelPurpose, PurposeDecision, WorkplaceStatement } from '../../labelling/purposes.ts';

const labels: Readonly<Record<PurposeDecision['purpose'], string>> = {
  'us-workplace': 'label for workplaces in the United States',
  'us-consumer': 'label for consumers in the United States',
  'eu-supply': 'label for supply in the European Union',
};

/** What a label is called. */
export const purposeName = (purpose: LabelPurpose): string => labels[purpose];

const outcomes: Readonly<Record<PurposeDecision['outcome'], string>> = {
  due: 'due',
  'not-due': 'not due',
  open: 'not decided',
};

const grounds: Readonly<Record<string, string>> = {
  'sale-unknown': 'the record does not say who buys the product and where; answer `sold-to`',
  market: 'the product is not sold there',
  'no-hazard': 'no hazard is classified',
  'shipped-to-workplaces': 'containers shipped to workplaces bear it',
  'consumer-labeling-instead':
    'a product sold to consumers alone is labelled under the consumer law, which stands in its place; use in a workplace as at home needs none either',
  'sold-both-ways':
    'containers sold to workplaces bear it; those packed for households bear the label for consumers, which stands in its place',
  'not-for-households':
    'as long as the product is neither intended for the household nor packaged in a form suitable for it',
  'tests-decide': 'no hazard is classified; the tests of the consumer law decide for themselves',
  'household-substance':
    'a hazardous substance packaged for the household bears it; whether it is one rests on the tests of that law',
  supplied: 'a hazardous mixture that is supplied bears it',
  'supplied-to-public':
    'a hazardous mixture that is supplied bears it, for the public with a statement on disposal',
};

/** Whether a label is due, and why. */
export const purpose = ({ purpose: of, outcome, ground, cites }: PurposeDecision): string =>
  `${labels[of]}: ${outcomes[outcome]}; ${grounds[ground] ?? ground} (${cites.join('; ')})`;

/** All decisions: what nobody has answered is one line. */
export function purposes(decisions: readonly PurposeDecision[]): string[] {
  const unknown = decisions.filter(({ ground }) => ground === 'sale-unknown');
  const told = decisions.filter(each => !unknown.includes(each)).map(purpose);
  const [first] = unknown;
  if (!first) return told;
  const cites = [...new Set(unknown.flatMap(each => each.cites))].join('; ');
  return [`which labels are due is not decided: ${grounds[first.ground]} (${cites})`, ...told];
}

const spared: Readonly<Record<string, string>> = {
  plant: 'it speaks of equipment for transfer in a plant, and a household pours from the bottle',
  'work-clothing': 'it speaks of clothing that stays at the workplace',
  respirator: 'it speaks of respiratory protection that households do not have',
  store: 'it speaks of stores and spills of a plant',
};

/** Statements that consumers are proposed to be spared, a line a ground. */
export function workplaceWords(statements: readonly WorkplaceStatement[]): string[] {
  const byGround = new Map<string, WorkplaceStatement[]>();
  for (const each of statements) byGround.set(each.ground, [...(byGround.get(each.ground) ?? []), each]);
  return [...byGround].map(
    ([ground, all]) =>
      `left off the label for consumers: ${all.map(({ code }) => code).join(', ')}: ${spared[ground] ?? ground}; \`statements.omit\` takes them off every label with that reason (${all[0]!.cite})`,
  );
}
