import type { ProductRecord } from '../record/product-record.ts';
import {
  type Alternative,
  basicDescription,
  type LimitedQuantity,
  type Outcome,
  type TransportAnswer,
} from '../transport/answer.ts';
import type { Fact } from '../transport/fact.ts';
import { transportWorking } from '../words/en/transport.ts';
import { transportCondition, transportNeed } from '../words/en/transport-cases.ts';

const rules = '49 CFR 171-180';

/** The answer in the fixed JSON form `labelwright/transport/1`. */
export function shipJson(
  { name, code }: Pick<ProductRecord, 'name' | 'code'>,
  pack: string,
  asOf: string,
  transport: TransportAnswer,
) {
  return {
    schema: 'labelwright/transport/1',
    product: { name, code },
    pack,
    rules,
    asOf,
    ...outcomeJson(transport, transport),
    hazardousSubstances: transport.reportable,
    because: transport.because.map(workingOf),
    missing: transport.missing.map(item => `${transportNeed(item)} [${item.cite}]`),
    alternatives: transport.alternatives.map(({ when, ...alternative }) => ({
      when: when.map(transportCondition).join('; '),
      cite: [...new Set(when.map(({ cite }) => cite))].join('; '),
      ...outcomeJson(alternative, transport),
      because: alternative.because.map(workingOf),
    })),
  };
}

const workingOf = (fact: Fact) => ({ cite: fact.cite, working: transportWorking(fact) });

const outcomeJson = (
  outcome: Outcome & Pick<Alternative, 'limitedQuantity' | 'hazardLabels'>,
  { marinePollutant, reportable }: Pick<TransportAnswer, 'marinePollutant' | 'reportable'>,
) => ({
  answer: outcome.answer,
  description: basicDescription(outcome, reportable),
  un: outcome.entry?.id ?? null,
  name: outcome.name,
  technical: outcome.technical,
  class: outcome.class,
  subsidiary: outcome.subsidiary,
  packingGroup: outcome.packingGroup,
  marinePollutant,
  limitedQuantity: outcome.limitedQuantity && limitedJson(outcome.limitedQuantity),
  hazardLabels: outcome.hazardLabels,
});

const limitedJson = ({ allowed, innerLimit, grossLimit, cite }: LimitedQuantity) => ({
  allowed,
  innerLimit,
  grossLimit,
  cite,
});
