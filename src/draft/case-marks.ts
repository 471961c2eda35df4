import { type MarinePollutantMark, marinePollutantMark } from '../logistics/package-marks.ts';
import type { Pack } from '../record/product-record.ts';
import { basicDescription, nameWithParentheses, type TransportAnswer } from '../transport/answer.ts';
import { packAmounts } from '../transport/from-classification.ts';
import type { HazardLabels } from '../transport/hazard-label.ts';
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
  /** Constituents that the mark tells and whose identity is claimed as a trade secret. */
  readonly secrets: readonly string[];
  /** How the case is carried, as its label says it. */
  readonly carried: string;
  /** Hazard labels that the case bears, or would bear; null where transport decides none. */
  readonly hazardLabels: HazardLabels | null;
  /** The mark of a marine pollutant by vessel; null where it is none. */
  readonly marinePollutant: MarinePollutantMark | null;
}

/**
 * What a case bears for highway and rail: the mark of a limited quantity where the pack keeps its limits (49 CFR
 * 172.315), else number and name (172.301); RQ with the names of hazardous substances beside either (172.324); arrows on
 * liquids (172.312); hazard labels (172.400) are named, not drawn. Nothing where transport is not decided.
 */
export function caseMarks(product: ClassifiedProduct, pack: Pack): CaseMarks {
  const answer = draftTransport(product, pack);
  const { entry, reportable, limitedQuantity } = answer;
  // The label leaves the shop: where an identity is claimed as a trade secret, it tells class and group alone.
  const secret = product.formula.constituents.some(({ tradeSecret }) => tradeSecret?.identity);
  const carried = carriedLine(answer, secret ? null : basicDescription(answer, answer.reportable));
  const marinePollutant = answer.marinePollutant
    ? marinePollutantMark(
        packAmounts(pack),
        product.record.form === 'solid',
        limitedQuantity?.allowed === true,
      )
    : null;
  const none = {
    answer,
    limitedQuantity: false,
    arrows: false,
    mark: null,
    secrets: [],
    carried,
    hazardLabels: answer.hazardLabels,
    marinePollutant,
  };
  if (answer.answer !== 'regulated' || !entry) return none;
  const limited = limitedQuantity?.allowed === true;
  const name = [...(reportable.length > 0 ? ['RQ'] : []), nameWithParentheses(answer, reportable)].join(', ');
  const mark = limited ? (reportable.length > 0 ? { id: null, name } : null) : { id: entry.id, name };
  return {
    answer,
    limitedQuantity: limited,
    carried,
    arrows: product.record.form === 'liquid',
    mark,
    secrets: mark ? secretsTold(product, answer, name) : [],
    hazardLabels: answer.hazardLabels,
    marinePollutant,
  };
}

/** Facts that name the one constituent whose entry is taken: its shipping name may be another than that of the record. */
const BY_ENTRY = ['listed-by-name', 'listed-by-concentration', 'named-entry'];

/** Constituents, place by place, whose claimed identity a shipping name tells. */
function secretsTold({ formula }: ClassifiedProduct, { because }: TransportAnswer, mark: string): string[] {
  const taken = because.flatMap(({ id, values }) => (BY_ENTRY.includes(id) ? [String(values.name)] : []));
  const said = mark.toLowerCase();
  return formula.constituents.flatMap(({ name, tradeSecret }) =>
    tradeSecret?.identity && (taken.includes(name) || said.includes(name.toLowerCase())) ? [name] : [],
  );
}
