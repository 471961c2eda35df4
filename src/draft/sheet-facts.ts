import type { SheetInput } from '../document/sheet.ts';
import type { StatementText } from '../reference/label-data/statements.ts';
import type { ClassifiedProduct } from './classified-product.ts';

/** What the sheet looks up beside the classification: numbers of the harmonised table and texts of statements. */
export function sheetFacts({
  record,
  classification,
  reference,
}: Pick<ClassifiedProduct, 'record' | 'classification' | 'reference'>): Pick<
  SheetInput,
  'entries' | 'statementText'
> {
  const { statements } = reference.labelData;
  return {
    entries: classification.constituents.map(({ name, cas, high, water, data: { source } }) => {
      if (water) return null;
      const found = reference.lookup({ name, cas, percent: high.value, form: record.form });
      // The entry that the record chose, where it chose one.
      const taken = source.kind === 'harmonised' ? source.index : found.entry?.index;
      const entry = [found.entry, ...found.others].find(each => each?.index === taken) ?? found.entry;
      return entry && { index: entry.index, ec: entry.ec };
    }),
    statementText: code => statementOf(statements.hazard[code]),
  };
}

/** The text with what the law prints where nobody says more: `organs`, no route. */
const statementOf = (statement: StatementText | undefined): string | null =>
  statement
    ? statement.text.replace(/\{([^}]+)\}/gu, (_, name: string) => {
        const field = statement.fields?.[name];
        const shown = field?.options.filter(({ key }) => field.default.includes(key)) ?? [];
        return shown.map(({ text }) => text).join(field?.between ?? ' ');
      })
    : null;
