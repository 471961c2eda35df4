import type { Pack } from '../record/product-record.ts';
import { basicDescription, nameWithParentheses, type TransportAnswer } from '../transport/answer.ts';
import { carriedLine } from '../words/en/case-transport.ts';
import type { ClassifiedProduct } from './classified-product.ts';
import { draftTransport } from './draft-transport.ts';

/** Identification number and name that a package bears; the number is null beside a limited-quantity mark. */
export interface PackageName {
  readonly id: string | null;
  readonly name: string;
}

/** Marks of a case by the answer of transport. */
export interface CaseMarks {
  readonly answer: TransportAnswer;
  readonly limitedQuantity: boolean;
  readonly arrows: boolean;
  readonly mark: PackageName | null;
  /** How the case is carried, as its label says it. */
  readonly carried: string;
}

/**
 * What a case bears for highway and rail: the mark of a limited quantity where the pack keeps its limits (49 CFR
 * 172.315), else number and name (172.301); RQ with the names of hazardous substances beside either (172.324); arrows on
 * liquids (172.312). Nothing where transport is not decided.
 */
export function caseMarks(product: ClassifiedProduct, pack: Pack): CaseMarks {
  const answer = draftTransport(product, pack);
  const { entry, reportable, limitedQuantity } = answer;
  // The label leaves the shop: where an identity is claimed as a trade secret, it tells class and group alone.
  const secret = product.formula.constituents.some(({ tradeSecret }) => tradeSecret?.identity);
  const carried = carriedLine(answer, secret ? null : basicDescription(answer, answer.reportable));
  const none = { answer, limitedQuantity: false, arrows: false, mark: null, carried };
  if (answer.answer !== 'regulated' || !entry) return none;
  const limited = limitedQuantity?.allowed === true;
  const name = [...(reportable.length > 0 ? ['RQ'] : []), nameWithParentheses(answer, reportable)].join(', ');
  return {
    answer,
    limitedQuantity: limited,
    carried,
    arrows: product.record.form === 'liquid',
    mark: limited ? (reportable.length > 0 ? { id: null, name } : null) : { id: entry.id, name },
  };
}
