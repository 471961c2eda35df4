import type { LabelSections } from '../../document/label.ts';
import type { TypeRules } from '../../document/type-rules.ts';
import type { LabelElements } from '../../labelling/label-elements.ts';
import type { LabelPurpose } from '../../labelling/purposes.ts';
import type { LabelFacts } from '../../layout/label/facts.ts';
import type { Die } from '../../layout/stock.ts';
import type { Pack } from '../../record/product-record.ts';
import type { BasisId } from '../../reference/basis.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';

/** What a purpose makes of a product and a pack. */
export interface PreparedLabel {
  readonly elements: LabelElements;
  /** What its template asks for beside the elements. */
  readonly sections?: LabelSections;
  /** Least heights of type that its law sets, and how its panel is laid out; none where the press decides. */
  readonly type?: TypeRules;
  /** What is to be said of the label once it is laid out. */
  examine?(facts: LabelFacts, die: Die): readonly Diagnostic[];
  /** What a reviewer must look at; with an error the label is not made. */
  readonly findings: readonly Diagnostic[];
}

/** A label purpose: whose classification its hazards come from, and what stands on it. */
export interface Purpose {
  /** Also the name of its template in `templates/labels/`. */
  readonly id: LabelPurpose;
  readonly basis: BasisId;
  /** @param product classified under the basis of the purpose */
  prepare(product: ClassifiedProduct, pack: Pack, words: Words): PreparedLabel;
}
