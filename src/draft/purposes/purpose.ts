import type { LabelSections } from '../../document/label.ts';
import type { TypeRules } from '../../document/type-rules.ts';
import type { LabelElements } from '../../labelling/label-elements.ts';
import type { LabelPurpose } from '../../labelling/purposes.ts';
import type { LabelFacts } from '../../layout/label/facts.ts';
import type { Die } from '../../layout/stock.ts';
import type { LengthUnit } from '../../quantity/length-text.ts';
import type { Pack } from '../../record/product-record.ts';
import type { BasisId } from '../../reference/basis.ts';
import type { Diagnostic } from '../../report/diagnostic.ts';
import type { Words } from '../../words/words.ts';
import type { ClassifiedProduct } from '../classified-product.ts';

/** A label that is no label of a pack. */
export interface OwnDie extends Die {
  readonly unit: LengthUnit;
}

/** What a purpose makes of a product and a pack. */
export interface PreparedLabel {
  readonly elements: LabelElements;
  /** What its template asks for beside the elements. */
  readonly sections?: LabelSections;
  /** Least heights of type that its law sets, and how its panel is laid out; none where the press decides. */
  readonly type?: TypeRules;
  /** What is left out, and how that is told, where the whole finds no room; without it the label is refused. */
  readonly shorter?: {
    readonly sections: LabelSections;
    readonly type: TypeRules;
    readonly finding: Diagnostic;
  };
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
  /**
   * Which languages its law has: `market`, that of the country; `english`, to which others may be added; `alone`, where
   * none is drafted beside English.
   */
  readonly languages: 'market' | 'english' | 'alone';
  /** Size of the label where the call gives none; absent where that is the die of the pack. */
  readonly die?: OwnDie;
  /**
   * @param product classified under the basis of the purpose, in the language of the label
   * @param words of the reviewer
   * @param said words of the label; those of the reviewer where absent
   */
  prepare(product: ClassifiedProduct, pack: Pack, words: Words, said?: Words): PreparedLabel;
}
