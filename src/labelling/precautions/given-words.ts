import type { LabelData } from '../../reference/label-data/load-label-data.ts';
import type { StatementText } from '../../reference/label-data/statements.ts';
import type { LabelledProduct } from '../labelled-product.ts';
import type { FieldWords } from '../statement-text.ts';

/** Fields that the law leaves to the maker: without words the statement is incomplete. */
export const fieldsOfMaker = (
  { fields = {} }: StatementText,
  { precautions }: LabelData,
): readonly string[] =>
  Object.entries(fields)
    .filter(([name, { required }]) => required || precautions.ofMaker.includes(name))
    .map(([name]) => name);

/**
 * What the record gives for the fields of a piece of a statement: alternatives that it chooses (C.2.4.2), and words
 * (C.2.4.3). A field without a name is the only one, or the only one that the law leaves to the maker.
 * @param codes under which the record may speak of it, the whole statement first
 */
export function givenWords(
  text: StatementText,
  codes: readonly string[],
  labelData: LabelData,
  { words = {}, choose = {} }: LabelledProduct,
): FieldWords {
  const { fields = {} } = text;
  const chosen = codes.map(code => choose[code]).find(each => each);
  const own = codes.map(code => words[code]).find(each => each);
  const field = chosen && fieldWith(text, chosen);
  const { '*': unnamed, ...named } = own ?? {};
  const single = unnamed && unnamedField(text, labelData);
  const known = Object.fromEntries(Object.entries(named).filter(([name]) => name in fields));
  return {
    ...(field && chosen && { [field]: chosen }),
    ...(single && { [single]: unnamed }),
    ...known,
  };
}

/** The field that offers all of the alternatives; undefined where none does. */
export const fieldWith = ({ fields = {} }: StatementText, chosen: readonly string[]): string | undefined =>
  Object.entries(fields).find(([, { options }]) =>
    chosen.every(key => options.some(each => each.key === key)),
  )?.[0];

/** The field that words without a name are for; undefined where they could be for several. */
export function unnamedField(text: StatementText, labelData: LabelData): string | undefined {
  const all = Object.keys(text.fields ?? {});
  const open = fieldsOfMaker(text, labelData);
  return all.length === 1 ? all[0] : open.length === 1 ? open[0] : undefined;
}
