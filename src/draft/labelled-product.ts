import type { LabelledProduct } from '../labelling/labelled-product.ts';
import type { ProductRecord } from '../record/product-record.ts';

/** What the record says of statements and their conditions, as labelling asks for it. */
export function labelledProduct({ form, choices, statements, soldTo }: ProductRecord): LabelledProduct {
  return {
    form,
    choice: id => choices.find(({ reading }) => reading === id)?.take ?? null,
    ...(soldTo && { consumer: soldTo.users.includes('consumers') }),
    ...(statements && {
      ...statements.conditions,
      words: statements.words,
      choose: statements.choose,
      keep: statements.keep,
      omit: statements.omit,
      add: statements.add,
    }),
  };
}
